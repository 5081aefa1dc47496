using Dewstone.Model.Quantities;

namespace Dewstone.Jobs.Comparison;

/// <summary>A position whose dose changed.</summary>
/// <param name="Tip">Where the water comes out, metres, unit frame.</param>
/// <param name="OldMillilitres">Dose before, mL; 0 for none.</param>
/// <param name="NewMillilitres">Dose now.</param>
public readonly record struct DoseChange(Point3 Tip, double OldMillilitres, double NewMillilitres);
