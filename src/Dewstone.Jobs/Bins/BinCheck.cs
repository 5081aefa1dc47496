using Dewstone.Compute.Sequencing;
using Dewstone.Model.Diagnostics;
using Dewstone.Model.Lattices;
using Dewstone.Model.Quantities;

namespace Dewstone.Jobs.Bins;

/// <summary>Checks that units can stand in a bin as asked, before any dose is placed.</summary>
internal static class BinCheck
{
    private const double MicrometreMetres = 1e-6;

    /// <summary>Checks a bin.</summary>
    /// <param name="question">The bin.</param>
    /// <param name="units">Its units as they would stand.</param>
    /// <returns>DW7026, DW7022, DW7021 and DW7020, unit by unit.</returns>
    public static IReadOnlyList<Diagnostic> Check(BinQuestion question, IReadOnlyList<StandingUnit> units)
    {
        List<Diagnostic> findings = [];
        Raster raster = Raster.Over(question.Conditions.Printer);
        SolvedUnit first = units[0].Placed.Solved;
        foreach (StandingUnit unit in units)
        {
            SolvedUnit solved = unit.Placed.Solved;
            if (solved.Held)
            {
                Diagnostic why = solved.Findings.First(f => f.Severity == Severity.Error && f.AcceptedBecause is null);
                findings.Add(BinFindings.HeldUnit.At(
                    $"{unit.Placed.Mark} (`{solved.Unit.Name}`) is held back by {why.Code}: {why.Message}", "leave it out of the bin, or mend it"));
            }

            if (!IsOf(raster, question, solved) || solved.Lattice.ShiftedLayers != first.Lattice.ShiftedLayers || solved.Cells.CellsPerPitch != first.Cells.CellsPerPitch)
            {
                findings.Add(BinFindings.OtherBin.At(
                    $"{unit.Placed.Mark} was solved for {Words(solved)}; the others of `{question.Name}` for {Words(first)}, on a grid of {raster.PitchMicrometres / 1000.0:0.###} mm and layers of {raster.LayerMicrometres / 1000.0:0.###} mm",
                    "plan the order anew, so that the units of a bin are solved alike"));
            }
            else if (unit.Doses().Count(dose => !Reaches(raster, solved.Lattice, dose.Column, dose.Row, dose.Layer)) is var lost and > 0)
            {
                findings.Add(BinFindings.BeyondNeedles.At(
                    $"{unit.Placed.Mark} in columns {unit.Move.To.Column + 1} to {unit.Move.To.Column + unit.Move.To.Columns} and rows {unit.Move.To.Row + 1} to {unit.Move.To.Row + unit.Move.To.Rows}: {lost} of its doses lie where `{question.Conditions.Printer.Name}` has no needle",
                    "move it inwards by whole pitches"));
            }
        }

        findings.AddRange(Gaps(question, units));
        return findings;
    }

    private static IEnumerable<Diagnostic> Gaps(BinQuestion question, IReadOnlyList<StandingUnit> units)
    {
        for (int a = 0; a < units.Count; a++)
        {
            for (int b = a + 1; b < units.Count; b++)
            {
                double apart = Apart(units[a].Binned.Placement, units[b].Binned.Placement);
                if (apart < question.Gap.Metres - MicrometreMetres)
                {
                    yield return BinFindings.TooNear.At(
                        $"{units[a].Placed.Mark} and {units[b].Placed.Mark} stand {apart * 1000.0:0.#} mm apart; the gap is {question.Gap.Millimetres:0.#} mm",
                        "move one of them by whole pitches");
                }
            }
        }
    }

    // Distance of the two boxes seen from above, m; 0 when they touch or overlap.
    private static double Apart(UnitPlacement a, UnitPlacement b)
    {
        double x = Between(a.Corner.X, a.TurnedBox.X, b.Corner.X, b.TurnedBox.X), y = Between(a.Corner.Y, a.TurnedBox.Y, b.Corner.Y, b.TurnedBox.Y);
        return Math.Sqrt(x * x + y * y);
    }

    private static double Between(double a, double lengthA, double b, double lengthB) => Math.Max(0.0, Math.Max(b - (a + lengthA), a - (b + lengthB)));

    private static bool IsOf(Raster raster, BinQuestion question, SolvedUnit solved) =>
        Same(solved.Lattice.PitchMetres, raster.PitchMicrometres) && Same(solved.Lattice.LayerMetres, raster.LayerMicrometres)
        && Same(solved.Lattice.OriginXMetres, raster.OriginXMicrometres) && Same(solved.Lattice.OriginYMetres, raster.OriginYMicrometres)
        && Same(solved.Lattice.TipDepthMetres, Raster.Micrometres(question.Conditions.Printer.Needle.TipDepth))
        && Same(solved.Lattice.BinXMetres, Raster.Micrometres(question.Conditions.Printer.Bin.SizeX))
        && Same(solved.Lattice.BinYMetres, Raster.Micrometres(question.Conditions.Printer.Bin.SizeY))
        && solved.Lattice.UnderLayers == question.Conditions.Printer.Grid.UnderLayers;

    private static bool Same(double metres, long micrometres) => Raster.Micrometres(new Length(metres)) == micrometres;

    private static bool Reaches(Raster raster, Lattice lattice, int column, int row, int layer) =>
        column >= raster.FirstColumn && row >= raster.FirstRow && column < raster.Columns && row < raster.Rows
        && lattice.IsUsable(column - lattice.FirstColumn, row - lattice.FirstRow, layer);

    private static string Words(SolvedUnit solved) =>
        $"{(solved.Lattice.ShiftedLayers ? "shifted" : "straight")} layers of {solved.Lattice.LayerMetres * 1000.0:0.###} mm, a pitch of {solved.Lattice.PitchMetres * 1000.0:0.###} mm and {solved.Cells.CellsPerPitch} cells a voxel";
}
