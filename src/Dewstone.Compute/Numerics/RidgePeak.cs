namespace Dewstone.Compute.Numerics;

/// <summary>Largest clearance within a cell, from clearances at cell centres: what a centre line between the centres would give.</summary>
/// <remarks>
/// Along the steepest of the 26 ways to a neighbour (and those all but as steep) the clearance rises from the cell on one side and falls to
/// those on the other, with slopes of at most 1; the two straight lines meet at the ridge. The ridge counts when it lies within the cell. Exact for slabs along the axes and for
/// round channels whose centre line lies on the ways; derived here. A ball about the middle of a narrow place has walls on opposite sides
/// at its radius r, so no point v away from it is farther than sqrt(r^2 + v^2) from the walls: a cell of edge h beside the narrowest
/// place cannot pretend more than 3 h^2 / (2 r) of width that is not there.
/// </remarks>
internal static class RidgePeak
{
    private const int Ways = 27;

    /// <summary>Slopes that differ by no more are taken for equally steep, 1.</summary>
    private const float Alike = 0.03f;

    /// <summary>How much more than at a cell's centre the clearance gets within the cell.</summary>
    /// <param name="distances">Signed distances; shape <paramref name="shape"/>.</param>
    /// <param name="sign">1 when the clearance is the distance, -1 when it is its opposite.</param>
    /// <param name="shape">Cells along each axis.</param>
    /// <param name="size">Edges of a cell.</param>
    /// <param name="cell">Flat index.</param>
    /// <returns>Edge unit, 0 or more, less than the way from a cell's centre to its corner.</returns>
    public static float Gain(ReadOnlySpan<float> distances, float sign, GridShape shape, CellSize size, int cell)
    {
        int x = cell % shape.Nx, y = cell / shape.Nx % shape.Ny, z = cell / shape.Plane;
        if (x == 0 || y == 0 || z == 0 || x == shape.Nx - 1 || y == shape.Ny - 1 || z == shape.Nz - 1)
        {
            return 0f;
        }

        float steepest = 0f, best = 0f;
        for (int way = 0; way < Ways; way++)
        {
            steepest = MathF.Max(steepest, Rise(distances, sign, shape, size, cell, way).Slope);
        }

        for (int way = 0; way < Ways && steepest > 0f; way++)
        {
            (float slope, int step, float length) = Rise(distances, sign, shape, size, cell, way);
            if (slope < steepest - Alike || step == 0)
            {
                continue;
            }

            (int dx, int dy, int dz) = (way % 3 - 1, way / 3 % 3 - 1, way / 9 - 1);
            bool ends = x + 2 * dx < 0 || x + 2 * dx >= shape.Nx || y + 2 * dy < 0 || y + 2 * dy >= shape.Ny || z + 2 * dz < 0 || z + 2 * dz >= shape.Nz;
            float next = sign * distances[cell + step];
            float fall = ends ? -slope : MathF.Min(1f, (next - sign * distances[cell + 2 * step]) / length);
            best = MathF.Max(best, Along(sign * distances[cell], next, MathF.Min(1f, slope), fall, length));
        }

        return best;
    }

    // Slope at which the clearance rises from the cell behind to this one, the way to the cell ahead, and its length.
    private static (float Slope, int Step, float Length) Rise(
        ReadOnlySpan<float> distances, float sign, GridShape shape, CellSize size, int cell, int way)
    {
        (int dx, int dy, int dz) = (way % 3 - 1, way / 3 % 3 - 1, way / 9 - 1);
        int step = dz * shape.Plane + dy * shape.Nx + dx;
        float level = (float)size.Width, upright = (float)size.Height * dz;
        float length = MathF.Sqrt((dx * dx + dy * dy) * level * level + upright * upright);
        return (step == 0 ? 0f : sign * (distances[cell] - distances[cell - step]) / length, step, length);
    }

    // Rising from here with one slope, falling to the next with the other: the height gained where they meet, at most half way.
    private static float Along(float here, float next, float rise, float fall, float length)
    {
        float meet = rise + fall > 1e-6f ? (next + fall * length - here) / (rise + fall) : length;
        return rise * Math.Clamp(meet, 0f, 0.5f * length);
    }
}
