using Dewstone.Compute.Numerics;
using Dewstone.Model.Description;
using Dewstone.Model.Diagnostics;
using Dewstone.Model.Results;

namespace Dewstone.Compute.Inspection;

/// <summary>Finds loose mix that cannot be got out of the unit, and judges <c>require.trapped_mix</c>.</summary>
/// <remarks>
/// The tool is a ball of <see cref="ToolMetres"/> led in from the grid's edge; its centre steps between cells by faces. Loose mix within
/// <see cref="BristleMetres"/> of the ball is brushed out: the grooves between needles on open faces are narrower than the ball and shallower than
/// that. All beyond is trapped, and so is every pocket that no way of loose cells joins with the outside. Bristles are measured straight, through a
/// wall thinner than they are long too: a thin-walled pocket with a way in too narrow for the tool counts too little by so much.
/// </remarks>
internal static class TrappedMixCheck
{
    /// <summary>Diameter of the clean-out tool, metres: a bent rod or hose; common practice, no source.</summary>
    public const double ToolMetres = 0.025;

    /// <summary>How far beyond the tool loose mix is brushed out, metres: the bristles of a wire brush; common practice, no source.</summary>
    public const double BristleMetres = 0.0125;

    private const int CellsTogether = 1 << 14;

    /// <summary>Checks.</summary>
    /// <param name="job">The unit.</param>
    /// <param name="solid">Predicted solid.</param>
    /// <returns>The trapped mix, the requirement, and finding DW3023.</returns>
    public static Checked<TrappedMixReport> Check(JobDescription job, PredictedSolid solid)
    {
        ComponentMap trapped = Components.Label(Trapped(solid), solid.Field.Cells, Phase.Set, Connectivity.Faces, solid.Threads);
        bool[] all = new bool[trapped.Pieces.Count];
        Array.Fill(all, true);
        IReadOnlyList<SolidPiece> pockets = solid.Heaviest(trapped, all);
        TrappedMixReport report = new(ToolMetres, pockets.Sum(pocket => pocket.Kilograms), pockets);
        List<RequirementResult> results = [];
        if (job.Unit.Require.MaxTrappedMix is { } most)
        {
            results.Add(new RequirementResult
            {
                Id = RequirementIds.MaxTrappedMix,
                Key = Wording.Require("trapped_mix.max"),
                Quantity = "loose mix that cannot be got out",
                Op = "<=",
                Limit = most.Kilograms,
                Value = report.Kilograms,
                Unit = "kg",
            });
        }

        bool isError = results.Count > 0 && !results[0].Met;
        if (!isError && (pockets.Count == 0 || results.Count > 0))
        {
            return new Checked<TrappedMixReport>(report, results, []);
        }

        string limit = isError ? $"; at most {results[0].Limit:0.##} kg is required" : "";
        Diagnostic finding = InspectionFindings.TrappedMix.At(
            $"{report.Kilograms:0.###} kg of loose mix cannot be got out with a tool {ToolMetres * 1e3:0} mm across{limit}: {Wording.Pieces(pockets)}",
            "open the pocket to a face, widen the way in, or give more water where dry pockets stay inside a wall",
            isError ? results[0].Key : new KeyPath(DescriptionKind.Unit, "box")) with
        {
            Severity = isError ? Severity.Error : Severity.Warning,
            Where = pockets[0].Centre,
        };
        return new Checked<TrappedMixReport>(report, results, [finding]);
    }

    private static byte[] Trapped(PredictedSolid solid)
    {
        SolidField field = solid.Field;
        bool[] open = TouchingEdge(solid.Voids, field.Cells);
        byte[] reach = Reach(field, solid.Threads);
        float most = (float)Square(0.5 * ToolMetres + BristleMetres + field.Size.HalfMeanEdge);
        float[] squared = DistanceTransform.SquaredWithin(
            reach, field.Cells, field.Size, MathF.BitIncrement(most), Phase.Set, OutsideCells.Ignored, solid.Threads);
        byte[] trapped = new byte[squared.Length];
        Chunks.Run(trapped.Length, CellsTogether, solid.Threads, (first, end) =>
        {
            for (int cell = first; cell < end; cell++)
            {
                int region = solid.Voids.Labels[cell];
                trapped[cell] = region > 0 && (!open[region - 1] || squared[cell] > most) ? (byte)1 : (byte)0;
            }
        });
        return trapped;
    }

    // 1 where the tool's centre can come.
    private static byte[] Reach(SolidField field, Parallelism threads)
    {
        byte[] fits = new byte[field.Distances.Length];
        const float Radius = (float)(0.5 * ToolMetres);
        float within = (float)(Math.Sqrt(3.0) * field.Size.HalfLongerEdge);
        Chunks.Run(fits.Length, CellsTogether, threads, (first, end) =>
        {
            for (int cell = first; cell < end; cell++)
            {
                float room = field.Distances[cell];
                bool isFree = room >= Radius
                    || (room > 0f && room > Radius - within && room + RidgePeak.Gain(field.Distances, 1f, field.Cells, field.Size, cell) >= Radius);
                fits[cell] = isFree ? (byte)1 : (byte)0;
            }
        });
        ComponentMap map = Components.Label(fits, field.Cells, Phase.Set, Connectivity.Faces, threads);
        bool[] fromOutside = TouchingEdge(map, field.Cells);
        Chunks.Run(fits.Length, CellsTogether, threads, (first, end) =>
        {
            for (int cell = first; cell < end; cell++)
            {
                fits[cell] = fits[cell] != 0 && fromOutside[map.Labels[cell] - 1] ? (byte)1 : (byte)0;
            }
        });
        return fits;
    }

    private static bool[] TouchingEdge(ComponentMap map, GridShape cells) => [.. map.Pieces.Select(piece => piece.Box.TouchesEdge(cells))];

    private static double Square(double x) => x * x;
}
