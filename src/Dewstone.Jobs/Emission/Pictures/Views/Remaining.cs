using System.Numerics;
using Dewstone.Model.Lattices;
using Dewstone.Model.Results;

namespace Dewstone.Jobs.Emission.Pictures.Views;

/// <summary>The level field of the solid with the quarter towards the viewer taken away, so that what is gone throws no shade.</summary>
internal static class Remaining
{
    /// <summary>The field.</summary>
    /// <param name="solid">The predicted solid.</param>
    /// <param name="camera">Where the viewer stands.</param>
    /// <param name="parallelism">Threads; the result does not depend on them.</param>
    /// <returns>The level in steps, the lowest in the quarter taken away; index order of the grid.</returns>
    public static sbyte[] Of(Body solid, ViewCamera camera, Parallelism parallelism)
    {
        CellGrid grid = solid.Grid;
        Vector3 middle = (camera.BoxLow + camera.BoxHigh) / 2f;
        int splitX = Math.Clamp((int)MathF.Round(middle.X), 0, grid.Nx), splitY = Math.Clamp((int)MathF.Round(middle.Y), 0, grid.Ny);
        (int fromX, int toX) = camera.Forward.X < 0f ? (splitX, grid.Nx) : (0, splitX);
        (int fromY, int toY) = camera.Forward.Y < 0f ? (splitY, grid.Ny) : (0, splitY);
        sbyte[] level = (sbyte[])solid.Level.Clone();
        Parallel.For(0, grid.Nz, new ParallelOptions { MaxDegreeOfParallelism = parallelism.Threads }, z =>
        {
            for (int y = fromY; y < toY; y++)
            {
                level.AsSpan((z * grid.Ny + y) * grid.Nx + fromX, toX - fromX).Fill(-sbyte.MaxValue);
            }
        });
        return level;
    }
}
