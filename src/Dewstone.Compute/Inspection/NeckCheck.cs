using Dewstone.Compute.Geometry;
using Dewstone.Model.Description;
using Dewstone.Model.Diagnostics;
using Dewstone.Model.Results;

namespace Dewstone.Compute.Inspection;

/// <summary>Judges <c>require.wall</c>, the least neck, and measures the thickness of the walls.</summary>
internal static class NeckCheck
{
    // Walls tried beyond the one asked for, as multiples of it: each costs an opening of the whole solid.
    private static readonly double[] Beyond = [1.25, 1.5];

    /// <summary>Checks.</summary>
    /// <param name="job">Unit and printer.</param>
    /// <param name="solid">Predicted solid.</param>
    /// <returns>The walls, the requirement, and finding DW3022.</returns>
    public static Checked<WallReport> Check(JobDescription job, PredictedSolid solid)
    {
        double[] thickness = WallThickness.Percentiles(solid, 0.05, 0.5, 0.95);
        WallReport report = new()
        {
            Percentile5Metres = thickness[0],
            MedianMetres = thickness[1],
            Percentile95Metres = thickness[2],
            WantedMetres = job.Unit.Require.MinWall?.Metres,
            ThinPlaces = [],
        };
        if (report.WantedMetres is not { } wall)
        {
            return new Checked<WallReport>(report, [], []);
        }

        (RequirementResult result, IReadOnlyList<ThinPlace> places) = Judge(job, solid, wall);
        report = report with { LeastNeckMetres = result.Value, ThinPlaces = places };
        return new Checked<WallReport>(report, [result], places.Count == 0 ? [] : [Thin(places, result)]);
    }

    /// <summary>Judges the wall alone.</summary>
    /// <param name="job">Unit and printer.</param>
    /// <param name="solid">Predicted solid.</param>
    /// <param name="wall">The wall asked for, metres.</param>
    /// <returns>The requirement, and the places thinner than the wall.</returns>
    public static (RequirementResult Result, IReadOnlyList<ThinPlace> Places) Judge(JobDescription job, PredictedSolid solid, double wall)
    {
        double crumb = LoosePieceCheck.Crumb(job.Printer.Needle, solid.Moisture);
        IReadOnlyList<ThinPlace> places = ThinPlaces.Of(solid, wall, crumb);
        double least = places.Count > 0 ? places[0].ThicknessMetres : wall;
        for (int i = 0; i < Beyond.Length && places.Count == 0 && ThinPlaces.Of(solid, Beyond[i] * wall, crumb).Count == 0; i++)
        {
            least = Beyond[i] * wall;
        }

        RequirementResult result = new()
        {
            Id = RequirementIds.MinWall,
            Key = Wording.Require("wall.min"),
            Quantity = "least neck",
            Op = ">=",
            Limit = wall,
            Value = least,
            Unit = "m",
        };
        return (result, places);
    }

    private static Diagnostic Thin(IReadOnlyList<ThinPlace> places, RequirementResult result)
    {
        ThinPlace worst = places[0];
        string what = worst.IsNeck ? "a neck of" : "a part no thicker than";
        string hangs = worst.IsNeck ? "by it hangs" : "in all";
        string others = places.Count > 1 ? $"; {places.Count - 1} more such places" : "";
        return InspectionFindings.ThinWall.At(
            $"{what} {UnitKeys.Millimetres(worst.ThicknessMetres)} at {Wording.Place(worst.Where)}, {UnitKeys.Millimetres(result.Limit)} is required; {hangs} {Wording.Piece(worst.Piece)}{others}",
            "thicken the wall there, move the openings beside it apart, or lower wall.min if it carries nothing",
            result.Key) with
        { Where = worst.Where };
    }
}
