using Dewstone.Model.Description;
using Dewstone.Model.Diagnostics;
using Dewstone.Model.Results;

namespace Dewstone.Compute.Geometry;

/// <summary>
/// Finds what is impossible or doubtful about a unit's shape on a printer's grid: findings DW2xxx but the scatter's own, which its builder
/// raises.
/// </summary>
/// <remarks>
/// What can be told from single values, such as names used twice and roundings larger than half a side, is found when the text is read.
/// </remarks>
public static class ShapeCheck
{
    /// <summary>Checks a shape.</summary>
    /// <param name="unit">The description.</param>
    /// <param name="shape">The shape built from it.</param>
    /// <param name="pitchMetres">Distance between needle positions, metres, above 0.</param>
    /// <param name="layerMetres">Layer height, metres, above 0.</param>
    /// <returns>Findings: sizes, then places, then walls.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A pitch or layer that is not above 0.</exception>
    public static IReadOnlyList<Diagnostic> Check(ReefUnit unit, ReefShape shape, double pitchMetres, double layerMetres)
    {
        ArgumentNullException.ThrowIfNull(unit);
        ArgumentNullException.ThrowIfNull(shape);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(pitchMetres);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(layerMetres);
        DiagnosticBag findings = new();
        FeatureSizeCheck.Check(unit, pitchMetres, layerMetres, findings);
        BlendCheck.Check(unit, pitchMetres, findings);
        OpeningGaps gaps = new(shape);
        FeaturePlaceCheck.Check(unit, shape, gaps, findings);
        WallCheck.Check(shape, gaps, 2.0 * pitchMetres, findings);
        if (IsEmpty(shape))
        {
            findings.Add(ShapeFindings.NothingLeft.At(
                "the openings take away the whole body", "make the openings smaller, or name what must stay under keep",
                UnitKeys.Top("box")));
        }
        return findings.Items;
    }

    // On 24 cells along the smallest edge a rest that a printer could make shows up.
    private static bool IsEmpty(ReefShape shape)
    {
        double smallest = Math.Min(shape.Box.X, Math.Min(shape.Box.Y, shape.Box.Z));
        return smallest <= 0.0 || Voxelizer.Volume(shape, smallest / 24.0, new Parallelism(1), CancellationToken.None) <= 0.0;
    }
}
