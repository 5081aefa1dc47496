using Dewstone.Model.Diagnostics;

namespace Dewstone.Orders.Batches;

/// <summary>One draw of a unit.</summary>
/// <param name="Draw">Its number, from 0.</param>
/// <param name="Seeds">What it was drawn with; none when the unit's line does not vary.</param>
/// <param name="Passed">Whether it passed all checks.</param>
/// <param name="Errors">Errors that spoke against it.</param>
public sealed record DrawRecord(int Draw, IReadOnlyList<DrawnSeed> Seeds, bool Passed, IReadOnlyList<Diagnostic> Errors);
