using Dewstone.Model.Results;

namespace Dewstone.Compute.Numerics;

/// <summary>Takes away, adds or rounds by a ball: erosion, dilation, opening and closing of a field of cells.</summary>
/// <remarks>
/// A cell is eroded when an empty cell's centre lies within r + h/2 of its own, dilated when a set one does; h is the mean cell edge. The
/// half cell is the way from the centre of the neighbour's cell to the surface; without it a box opened by a ball loses 3 to 6 % of its
/// volume. Both steps use one and the same structuring ball, so that opening is anti-extensive, closing extensive and both are
/// idempotent, exactly and not only nearly (Serra, "Image analysis and mathematical morphology", 1982; from memory). Two distance
/// transforms each for opening and closing, whatever the radius.
/// </remarks>
public static class BallOpening
{
    /// <summary>Cells that one piece of work compares.</summary>
    private const int CellsTogether = 1 << 16;

    /// <summary>What is left when every set cell less than a radius deep is taken away.</summary>
    /// <param name="cells">0 empty, else set; shape <paramref name="shape"/>.</param>
    /// <param name="shape">Cells along each axis.</param>
    /// <param name="size">Edges of a cell.</param>
    /// <param name="radius">Radius of the ball, in the unit of the edges, 0 or more.</param>
    /// <param name="outside">What lies beyond the grid's edge.</param>
    /// <param name="parallelism">Threads; no result depends on them.</param>
    /// <returns>1 where set, else 0; index order of the grid.</returns>
    public static byte[] Erode(
        byte[] cells, GridShape shape, CellSize size, double radius, OutsideCells outside, Parallelism parallelism) =>
        Keep(cells, shape, size, radius, Phase.Empty, outside, parallelism);

    /// <summary>The set cells and everything within a radius of them.</summary>
    /// <param name="cells">0 empty, else set; shape <paramref name="shape"/>.</param>
    /// <param name="shape">Cells along each axis.</param>
    /// <param name="size">Edges of a cell.</param>
    /// <param name="radius">Radius of the ball, in the unit of the edges, 0 or more.</param>
    /// <param name="outside">What lies beyond the grid's edge.</param>
    /// <param name="parallelism">Threads; no result depends on them.</param>
    /// <returns>1 where set, else 0; index order of the grid.</returns>
    public static byte[] Dilate(
        byte[] cells, GridShape shape, CellSize size, double radius, OutsideCells outside, Parallelism parallelism) =>
        Keep(cells, shape, size, radius, Phase.Set, outside, parallelism);

    /// <summary>All of the set cells that a ball moving inside them can cover: thin parts vanish, outer edges get round.</summary>
    /// <param name="cells">0 empty, else set; shape <paramref name="shape"/>.</param>
    /// <param name="shape">Cells along each axis.</param>
    /// <param name="size">Edges of a cell.</param>
    /// <param name="radius">Radius of the ball, in the unit of the edges, 0 or more.</param>
    /// <param name="outside">What lies beyond the grid's edge.</param>
    /// <param name="parallelism">Threads; no result depends on them.</param>
    /// <returns>1 where set, else 0; index order of the grid.</returns>
    public static byte[] Open(
        byte[] cells, GridShape shape, CellSize size, double radius, OutsideCells outside, Parallelism parallelism) =>
        Dilate(Erode(cells, shape, size, radius, outside, parallelism), shape, size, radius, WithoutSet(outside), parallelism);

    /// <summary>
    /// The set cells and all empty ones that no ball moving in the empty cells can reach: narrow gaps fill, inner edges get round.
    /// </summary>
    /// <param name="cells">0 empty, else set; shape <paramref name="shape"/>.</param>
    /// <param name="shape">Cells along each axis.</param>
    /// <param name="size">Edges of a cell.</param>
    /// <param name="radius">Radius of the ball, in the unit of the edges, 0 or more.</param>
    /// <param name="outside">What lies beyond the grid's edge.</param>
    /// <param name="parallelism">Threads; no result depends on them.</param>
    /// <returns>1 where set, else 0; index order of the grid.</returns>
    public static byte[] Close(
        byte[] cells, GridShape shape, CellSize size, double radius, OutsideCells outside, Parallelism parallelism) =>
        Erode(Dilate(cells, shape, size, radius, outside, parallelism), shape, size, radius, WithoutEmpty(outside), parallelism);

    // The second step sees only what the first left inside the grid: set cells beyond the edge are no eroded ones that could grow back in,
    // empty ones there might have been dilated.
    private static OutsideCells WithoutSet(OutsideCells outside) => outside == OutsideCells.Set ? OutsideCells.Ignored : outside;

    private static OutsideCells WithoutEmpty(OutsideCells outside) => outside == OutsideCells.Empty ? OutsideCells.Ignored : outside;

    private static byte[] Keep(
        byte[] cells, GridShape shape, CellSize size, double radius, Phase nearest, OutsideCells outside, Parallelism parallelism)
    {
        if (!(radius >= 0.0) || double.IsInfinity(radius))
        {
            throw new ArgumentOutOfRangeException(nameof(radius), radius, "The radius of a ball is 0 or more.");
        }

        ArgumentNullException.ThrowIfNull(cells);
        shape.Require(cells.Length, nameof(cells));
        size.Require(nameof(size));

        // Eroded: everything farther than the reach from any empty cell. Dilated: everything not farther than it from a set one.
        double reach = radius + size.HalfMeanEdge;
        float limit = (float)(reach * reach);
        float[] squared = DistanceTransform.SquaredWithin(cells, shape, size, MathF.BitIncrement(limit), nearest, outside, parallelism);
        byte[] kept = new byte[cells.Length];
        byte far = nearest == Phase.Empty ? (byte)1 : (byte)0;
        byte near = (byte)(1 - far);
        Chunks.Run(cells.Length, CellsTogether, parallelism, (first, end) =>
        {
            for (int i = first; i < end; i++)
            {
                kept[i] = squared[i] > limit ? far : near;
            }
        });
        return kept;
    }
}
