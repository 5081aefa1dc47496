using Dewstone.Compute.Numerics;
using Dewstone.Model.Description;
using Dewstone.Model.Diagnostics;
using Dewstone.Model.Results;

namespace Dewstone.Compute.Inspection;

/// <summary>Finds where the hardened solid lies outside the water/cement band, and looks at the outermost 10 mm on their own.</summary>
/// <remarks>
/// The share of the whole is judged with the other figures (<see cref="RequirementCheck"/>). The skin is what lies within <see cref="SkinMetres"/> of loose mix
/// that hangs together with the outside; walls of closed pockets do not wear.
/// </remarks>
internal static class WaterCementCheck
{
    /// <summary>Depth of the skin that wears, metres; common practice, no source.</summary>
    public const double SkinMetres = 0.01;

    /// <summary>Checks.</summary>
    /// <param name="job">The unit.</param>
    /// <param name="solid">Predicted solid.</param>
    /// <returns>Where it is outside, and finding DW3026; a report of null when no band is asked for.</returns>
    public static Checked<WaterCementReport?> Check(JobDescription job, PredictedSolid solid)
    {
        if (job.Unit.Require.WaterCement is not { } band)
        {
            return new Checked<WaterCementReport?>(null, [], []);
        }

        byte[] outside = new byte[solid.Field.Distances.Length];
        WaterCementReport report = Tally(solid, band, outside);
        ComponentMap regions = Components.Label(outside, solid.Field.Cells, Phase.Set, Connectivity.Faces, solid.Threads);
        if (regions.Pieces.Count > 0)
        {
            bool[] largest = new bool[regions.Pieces.Count];
            largest[regions.Pieces.Index().MaxBy(piece => piece.Item.Cells).Index] = true;
            SolidPiece region = solid.Heaviest(regions, largest)[0];
            report = report with { LargestCubicMetres = region.CubicMetres, Largest = region.Centre };
        }

        if (report.SkinShareOutside <= 1.0 - band.Share)
        {
            return new Checked<WaterCementReport?>(report, [], []);
        }

        string where = report.Largest is { } place ? $"; the largest region outside it, {Wording.Volume(report.LargestCubicMetres)}, lies about {Wording.Place(place)}" : "";
        Diagnostic finding = InspectionFindings.SkinOutside.At(
            $"{100.0 * (1.0 - report.SkinShareOutside):0.#} % of the outermost {SkinMetres * 1e3:0} mm has water/cement {band.Min:0.###} to {band.Max:0.###} (mean {report.SkinMean:0.###}); {100.0 * band.Share:0.#} % is asked of the whole{where}",
            "correct the doses near the surface, or allow for the wear when walls are drawn",
            Wording.Require("water_cement")) with
        { Where = report.Largest };
        return new Checked<WaterCementReport?>(report, [], [finding]);
    }

    // Marks the hardened cells outside the band and adds up the shares, cell by cell in their order.
    private static WaterCementReport Tally(PredictedSolid solid, WaterCementBand band, byte[] outside)
    {
        byte[] openVoid = new byte[outside.Length];
        bool[] open = [.. solid.Voids.Pieces.Select(piece => piece.Box.TouchesEdge(solid.Field.Cells))];
        for (int cell = 0; cell < openVoid.Length; cell++)
        {
            int region = solid.Voids.Labels[cell];
            openVoid[cell] = region > 0 && open[region - 1] ? (byte)1 : (byte)0;
        }

        float skin = (float)((SkinMetres + solid.Field.Size.HalfMeanEdge) * (SkinMetres + solid.Field.Size.HalfMeanEdge));
        float[] squared = DistanceTransform.SquaredWithin(
            openVoid, solid.Field.Cells, solid.Field.Size, MathF.BitIncrement(skin), Phase.Set, OutsideCells.Empty, solid.Threads);
        long all = 0, below = 0, above = 0, skinAll = 0, skinOutside = 0;
        double sum = 0.0, skinSum = 0.0;
        for (int cell = 0; cell < outside.Length; cell++)
        {
            if (solid.Moisture.Hardened[cell] == 0)
            {
                continue;
            }

            double ratio = solid.Moisture.WaterCement(cell);
            bool isBelow = ratio < band.Min, isAbove = ratio > band.Max, isSkin = squared[cell] <= skin;
            outside[cell] = isBelow || isAbove ? (byte)1 : (byte)0;
            (all, below, above, sum) = (all + 1, below + (isBelow ? 1 : 0), above + (isAbove ? 1 : 0), sum + ratio);
            (skinAll, skinOutside, skinSum) = isSkin ? (skinAll + 1, skinOutside + outside[cell], skinSum + ratio) : (skinAll, skinOutside, skinSum);
        }

        return new WaterCementReport
        {
            ShareBelow = Share(below, all),
            ShareAbove = Share(above, all),
            Mean = Share(sum, all),
            SkinShareOutside = Share(skinOutside, skinAll),
            SkinMean = Share(skinSum, skinAll),
            LargestCubicMetres = 0.0,
        };
    }

    private static double Share(double part, long all) => all == 0 ? 0.0 : part / all;
}
