using Dewstone.Model.Results;

namespace Dewstone.Compute.Numerics;

/// <summary>Signed distance of every cell centre to the surface on which a field has a level, placed between the cells.</summary>
/// <remarks>
/// The surface is stood for by the points at which it crosses the edges between neighbouring cell centres, the corners of the mesh of
/// <see cref="IsoSurface"/>; the distance to the nearest of these points is exact. All points on edges along one axis lie in rows of cell
/// centres along the other two, so each of the three families has a separable squared distance (Saito and Toriwaki 1994, as in
/// <see cref="DistanceTransform"/>). Points stand about a cell apart, so a distance d reads up to h^2 / (8 d) too long for h the cell edge:
/// a hundredth of a cell from a dozen cells off, and up to half a cell on the surface itself. Single precision; the same bits for any
/// number of threads.
/// </remarks>
public static class SurfaceDistance
{
    private const int PieceLength = 4;

    /// <summary>Measures.</summary>
    /// <param name="field">Values at the cell centres, finite; shape <paramref name="shape"/>.</param>
    /// <param name="shape">Cells along each axis.</param>
    /// <param name="size">Edges of a cell.</param>
    /// <param name="level">A cell is set when its value is at or above this; beyond the grid all is empty, the surface half a cell off.</param>
    /// <param name="farthest">Greatest distance told, in the unit of the edges.</param>
    /// <param name="parallelism">Threads; no result depends on them.</param>
    /// <returns>Distance in the unit of the edges, negative in set cells, at most <paramref name="farthest"/> from 0; index order of the grid.</returns>
    public static float[] Of(float[] field, GridShape shape, CellSize size, float level, double farthest, Parallelism parallelism)
    {
        ArgumentNullException.ThrowIfNull(field);
        shape.Require(field.Length, nameof(field));
        size.Require(nameof(size));
        float none = (float)(farthest * farthest);
        float[] across = Squares(Math.Max(shape.Nx, shape.Ny), size.Width, none), up = Squares(shape.Nz, size.Height, none);
        float[] near = new float[field.Length], upright = new float[field.Length];
        Chunks.Run(shape.Ny, PieceLength, parallelism, (first, end) =>
        {
            SurfaceScan scan = new(level, (float)size.Height, none, shape.Nx);
            for (int y = first; y < end; y++)
            {
                scan.Lines(field, upright, y * shape.Nx, shape.Plane, shape.Nz);
            }
        });
        Chunks.Run(shape.Nz, PieceLength, parallelism, (first, end) =>
        {
            SurfacePlane plane = new(shape, new SurfaceScan(level, (float)size.Width, none, shape.Nx), across);
            for (int z = first; z < end; z++)
            {
                plane.Run(field, near, upright, z * shape.Plane);
            }
        });
        Chunks.Run(shape.Ny, PieceLength, parallelism, (first, end) =>
        {
            AxisSweep<float> sweep = new(up, shape.Nz, false);
            for (int y = first; y < end; y++)
            {
                sweep.Run(near, y * shape.Nx, shape.Plane, shape.Nx);
            }
        });
        Chunks.Run(shape.Nz, PieceLength, parallelism, (first, end) =>
        {
            for (int i = first * shape.Plane; i < end * shape.Plane; i++)
            {
                float distance = MathF.Sqrt(Math.Min(near[i], upright[i]));
                near[i] = field[i] >= level ? -distance : distance;
            }
        });
        return near;
    }

    private static float[] Squares(int longest, double edge, float none)
    {
        float[] squares = new float[longest + 1];
        for (int k = 0; k <= longest; k++)
        {
            squares[k] = Math.Min((float)(k * edge * (k * edge)), none);
        }

        return squares;
    }
}
