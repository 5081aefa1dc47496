using Dewstone.Jobs.Emission;
using Dewstone.Jobs.Emission.Report;
using Dewstone.Model.Lattices;

namespace Dewstone.Jobs.Bins;

/// <summary>Writes <c>report.html</c> of a bin: the sheet for the shop, then its units with their verdicts, the plates and the figures.</summary>
internal static class BinReport
{
    /// <summary>The report of a bin.</summary>
    /// <param name="bin">The bin.</param>
    /// <param name="subject">Its job.</param>
    /// <returns>The file.</returns>
    public static EmittedFile Emit(BinResult bin, ReportSubject subject) => ReportEmitter.Page(
        subject,
        [
            ("units", "Units of the bin", (html, _) => Units(html, bin)),
            ("verdict", "What was found", VerdictSection.Write),
            ("plates", "Plates", PlatesSection.Write),
            ("materials", "Materials, time, carbon and cost", MaterialsSection.Write),
            ("conditions", "Tonight's conditions", ConditionsSection.Write),
            ("model", "The model and its limits", ModelSection.Write),
        ],
        html => ShopSheet.Write(html, subject));

    private static void Units(HtmlWriter html, BinResult bin)
    {
        html.Add($"<p>Each unit was solved and checked alone; here it is held against itself as it comes out of this bin. At least {ReportFigures.Share(BinVerdict.LeastOverlap)} must overlap, and the volume be within {ReportFigures.Share(BinVerdict.MostVolumeError)}.</p>");
        ReportTable.Write(
            html, "Units", ["mark", "unit", "turn and corner", "design", "#on the hook", "#dig out", "#lift", "#overlap", "#volume", "result"],
            bin.Units.Select(unit => (string[])
            [
                unit.Binned.Mark, unit.Binned.Unit.Name, Place(unit.Binned.Placement), unit.Placed.Solved.Design.Grouped(),
                ReportFigures.Mass(unit.Placed.Solved.Estimate.LiftKilograms), StrengthWords.Age(DigOut.Days(bin.Question, unit.Placed.Solved)),
                StrengthWords.Age(unit.Placed.Solved.LiftDays), Percent(unit.Overlap), ReportFigures.SignedShare(unit.VolumeError), unit.Serves ? "as designed" : "NOT\u00a0AS\u00a0DESIGNED",
            ]));
        html.Add($"<p>Ages count from the last layer; {(bin.Question.SetBeforeDig is { } set ? $"a bin sets {ReportFigures.Duration(set.Seconds)} at least" : "the order states no time of its own")}. They are predictions: break cubes of this bed first, and a licensed engineer decides on lifting.</p>");
    }

    private static string Place(UnitPlacement placement) =>
        $"{90 * placement.QuarterTurns}°, x {ReportFigures.Millimetres(placement.Corner.X)}, y {ReportFigures.Millimetres(placement.Corner.Y)} mm";

    private static string Percent(double share) => $"{share * 100.0:0.00} %";
}
