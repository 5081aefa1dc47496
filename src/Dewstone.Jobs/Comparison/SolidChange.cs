using Dewstone.Model.Quantities;

namespace Dewstone.Jobs.Comparison;

/// <summary>What changed of a solid.</summary>
/// <param name="AddedLitres">Solid that is now there, litres.</param>
/// <param name="RemovedLitres">Solid that is there no more, litres.</param>
/// <param name="Low">Lower corner of the box around all changes, metres, unit frame; null when there is none.</param>
/// <param name="High">Upper corner.</param>
/// <param name="Slabs">Changes by layer height from the unit's foot, lowest first, those without a change left out.</param>
public sealed record SolidChange(double AddedLitres, double RemovedLitres, Point3? Low, Point3? High, IReadOnlyList<SlabChange> Slabs);
