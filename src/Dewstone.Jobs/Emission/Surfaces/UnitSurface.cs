using Dewstone.Compute.Numerics;
using Dewstone.Model.Lattices;
using Dewstone.Model.Quantities;
using Dewstone.Model.Results;

namespace Dewstone.Jobs.Emission.Surfaces;

/// <summary>A closed surface in the unit frame, with shared corners.</summary>
internal sealed class UnitSurface
{
    /// <summary>A surface.</summary>
    /// <param name="positions">Corners, x y z one after another, metres, unit frame.</param>
    /// <param name="triangles">Three corner numbers a triangle, counter-clockwise seen from outside.</param>
    public UnitSurface(float[] positions, int[] triangles)
    {
        Positions = positions;
        Triangles = triangles;
    }

    /// <summary>Corners, x y z one after another, metres, unit frame.</summary>
    public float[] Positions { get; }

    /// <summary>Three corner numbers a triangle, counter-clockwise seen from outside.</summary>
    public int[] Triangles { get; }

    /// <summary>Number of corners.</summary>
    public int Corners => Positions.Length / 3;

    /// <summary>A mesh of the cells, moved to the unit frame.</summary>
    /// <param name="mesh">The mesh, metres from the grid's lower corner.</param>
    /// <param name="grid">The cells.</param>
    /// <param name="placement">Where the unit stands.</param>
    /// <param name="parallelism">Threads; the result does not depend on them.</param>
    /// <returns>The surface; it shares the mesh's triangles.</returns>
    public static UnitSurface Of(SurfaceMesh mesh, CellGrid grid, UnitPlacement placement, Parallelism parallelism)
    {
        float[] from = mesh.Positions, to = new float[from.Length];
        Stretches.Run(from.Length / 3, parallelism, (first, end) =>
        {
            for (int i = 3 * first; i < 3 * end; i += 3)
            {
                Point3 unit = placement.ToUnit(new Point3(grid.Origin.X + from[i], grid.Origin.Y + from[i + 1], grid.Origin.Z + from[i + 2]));
                (to[i], to[i + 1], to[i + 2]) = ((float)unit.X, (float)unit.Y, (float)unit.Z);
            }
        });
        return new UnitSurface(to, mesh.Triangles);
    }
}
