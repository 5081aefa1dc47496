using System.Globalization;
using Dewstone.Jobs.Compilation;
using Dewstone.Model.Diagnostics;
using Dewstone.Model.Results;

namespace Dewstone.Jobs.Surveys;

/// <summary>Gauge balls through openings and calipers over walls, against the solid as planned.</summary>
/// <remarks>
/// Tolerance: 5 mm or one cell of the job, whichever is more (common practice, no source). A ball is passed through the narrowest of a scatter's hollows, so
/// a scatter is held against its narrowest. A wall is held against the least neck predicted, where a wall is required.
/// </remarks>
internal static class GaugeSurvey
{
    private const double LeastTolerance = 0.005;

    /// <summary>Runs.</summary>
    /// <param name="job">The job.</param>
    /// <param name="planned">Its solid as planned.</param>
    /// <param name="gauges">The readings.</param>
    /// <param name="findings">Takes DW3085, DW3086, and DW8344 for what the unit has not.</param>
    /// <returns>The readings that belong to the unit, in order.</returns>
    public static IReadOnlyList<GaugedPlace> Run(SurveyedJob job, JudgedSolid planned, Measured<GaugeReading> gauges, DiagnosticBag findings)
    {
        double tolerance = Math.Max(LeastTolerance, job.Core.Cells.CellMetres);
        List<GaugedPlace> places = [];
        foreach (GaugeReading reading in gauges.Rows)
        {
            SourceLocation line = new(gauges.File, reading.Line, 1);
            if (Predicted(planned.Inspection, reading) is not { } predicted)
            {
                string what = reading.Kind == GaugeKind.Wall ? "no wall is required of this unit, so its necks were not measured" : $"the unit has no opening `{reading.Name}`";
                string names = string.Join(", ", planned.Inspection.ClearOpenings.Select(o => o.Name).Distinct());
                findings.Add(SurveyFileFindings.NotOfThisJob.At(
                    what, reading.Kind == GaugeKind.Wall ? "take the row out, or require a wall in the unit's description" : names.Length == 0 ? "it has none" : $"its openings are {names}", location: line));
                continue;
            }

            GaugedPlace place = new(reading, predicted.Metres, predicted.Required, tolerance);
            places.Add(place);
            if (!place.IsMet)
            {
                findings.Add(Missed(place, line));
            }
        }

        return places;
    }

    private static (double Metres, double? Required)? Predicted(InspectionReport inspection, GaugeReading reading)
    {
        if (reading.Kind == GaugeKind.Wall)
        {
            return inspection.Wall.LeastNeckMetres is { } neck ? (neck, inspection.Wall.WantedMetres) : null;
        }

        ClearOpening? narrowest = inspection.ClearOpenings.Where(o => o.Name == reading.Name).MinBy(o => o.PredictedMetres);
        return narrowest is null ? null : (narrowest.PredictedMetres, narrowest.RequiredMetres);
    }

    private static Diagnostic Missed(GaugedPlace place, SourceLocation line)
    {
        bool isWall = place.Reading.Kind == GaugeKind.Wall;
        string who = isWall ? (place.Reading.Name.Length == 0 ? "a wall measures" : $"the wall `{place.Reading.Name}` measures") : $"the largest ball through `{place.Reading.Name}` is";
        string required = place.RequiredMetres is { } least ? string.Create(CultureInfo.InvariantCulture, $", {1000.0 * least:0.#} mm are required") : "";
        return (isWall ? SurveyFindings.WallThin : SurveyFindings.OpeningNarrow).At(
            string.Create(
                CultureInfo.InvariantCulture,
                $"{who} {1000.0 * place.Reading.Metres:0.#} mm; {1000.0 * place.PredictedMetres:0.#} mm are predicted, tolerance {1000.0 * place.ToleranceMetres:0.#} mm{required}"),
            isWall ? "measure again at sound places, and have the unit judged" : "brush it out and gauge it again", location: line);
    }
}
