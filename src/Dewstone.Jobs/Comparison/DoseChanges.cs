using Dewstone.Model.Lattices;
using Dewstone.Model.Quantities;
using Dewstone.Model.Results;

namespace Dewstone.Jobs.Comparison;

/// <summary>What changed of the doses, position by position in the unit frame.</summary>
/// <param name="Positions">Positions that differ by more than the tolerance, largest change first.</param>
/// <param name="Layers">Heights (layers) with such a position.</param>
/// <param name="OldMillilitres">All water before, mL.</param>
/// <param name="NewMillilitres">All water now.</param>
public sealed record DoseChanges(IReadOnlyList<DoseChange> Positions, int Layers, double OldMillilitres, double NewMillilitres)
{
    private const double Tenth = 1e4;

    /// <summary>Compares two jobs' doses.</summary>
    /// <param name="old">Before.</param>
    /// <param name="now">Now.</param>
    /// <param name="toleranceMillilitres">Change that does not count, mL.</param>
    /// <returns>What changed; null when either has no doses.</returns>
    internal static DoseChanges? Compare(ComparedJob old, ComparedJob now, double toleranceMillilitres)
    {
        if (old.Doses is not { } before || now.Doses is not { } after)
        {
            return null;
        }

        Dictionary<(long X, long Y, long Z), double> was = ByPlace(old.Placement, before), isNow = ByPlace(now.Placement, after);
        DoseChange[] changes =
        [
            .. was.Keys.Union(isNow.Keys).Select(at => new DoseChange(new Point3(at.X / Tenth, at.Y / Tenth, at.Z / Tenth), was.GetValueOrDefault(at), isNow.GetValueOrDefault(at)))
                .Where(c => Math.Abs(c.NewMillilitres - c.OldMillilitres) > toleranceMillilitres)
                .OrderByDescending(c => Math.Abs(c.NewMillilitres - c.OldMillilitres)).ThenBy(c => c.Tip.Z).ThenBy(c => c.Tip.Y).ThenBy(c => c.Tip.X),
        ];
        return new DoseChanges(
            changes, changes.Select(c => c.Tip.Z).Distinct().Count(), before.TotalCentiMillilitres / 100.0, after.TotalCentiMillilitres / 100.0);
    }

    // Tenths of a millimetre name a position; doses are exact in hundredths of a millilitre.
    private static Dictionary<(long X, long Y, long Z), double> ByPlace(UnitPlacement placement, DosePlan doses)
    {
        Dictionary<(long, long, long), double> byPlace = [];
        Lattice lattice = doses.Lattice;
        for (int index = 0; index < lattice.Count; index++)
        {
            if (doses.CentiMillilitres[index] > 0)
            {
                Point3 tip = placement.ToUnit(lattice.Tip(index % lattice.Columns, index / lattice.Columns % lattice.Rows, index / (lattice.Columns * lattice.Rows)));
                byPlace[((long)Math.Round(tip.X * Tenth), (long)Math.Round(tip.Y * Tenth), (long)Math.Round(tip.Z * Tenth))] = doses.Millilitres(index);
            }
        }

        return byPlace;
    }
}
