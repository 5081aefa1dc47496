using Dewstone.Compute.Numerics;
using Dewstone.Model.Lattices;
using Dewstone.Model.Quantities;

namespace Dewstone.Compute.Habitat;

/// <summary>The solid on the seabed with water around it, on cells made of whole cells of the job's.</summary>
internal sealed class WaterField
{
    /// <summary>Level of the surface in <see cref="Values"/>.</summary>
    public const float Level = 1f;

    private const float Solid = 2f;

    private WaterField(GridShape shape, CellSize size, float[] values, int bedPlanes)
    {
        (Shape, Size, Values, BedPlanes) = (shape, size, values, bedPlanes);
    }

    /// <summary>Cells along each axis, margin included.</summary>
    public GridShape Shape { get; }

    /// <summary>Edges of a cell, m.</summary>
    public CellSize Size { get; }

    /// <summary>At or above <see cref="Level"/> in the solid, 0 to 2; the seabed is empty here. Index order of the grid.</summary>
    public float[] Values { get; }

    /// <summary>Planes of the seabed at the foot of the grid.</summary>
    public int BedPlanes { get; }

    /// <summary>Share of each column of cells along x that lies in the unit's box.</summary>
    public double[] InBoxX { get; private init; } = [];

    /// <summary>The same along y.</summary>
    public double[] InBoxY { get; private init; } = [];

    /// <summary>The same along z.</summary>
    public double[] InBoxZ { get; private init; } = [];

    /// <summary>Builds the field.</summary>
    /// <param name="front">Field whose level 0 is the hardened surface, -1 where it is dry.</param>
    /// <param name="grid">Its cells.</param>
    /// <param name="placement">Where the unit stands.</param>
    /// <param name="together">Cells along each axis that make one.</param>
    /// <param name="marginMetres">Water around the solid, m.</param>
    /// <returns>The field; null when nothing hardened.</returns>
    public static WaterField? Of(float[] front, CellGrid grid, UnitPlacement placement, int together, double marginMetres)
    {
        if (Solids(front, grid) is not { } box)
        {
            return null;
        }

        CellSize size = new(grid.CellMetres * together, grid.CellHeightMetres * together);
        int margin = (int)Math.Ceiling(marginMetres / size.Width) + 2, above = (int)Math.Ceiling(marginMetres / size.Height) + 2;
        const int Bed = 2;
        GridShape shape = new(
            Count(box.FirstX, box.LastX, together) + 2 * margin, Count(box.FirstY, box.LastY, together) + 2 * margin,
            Count(box.FirstZ, box.LastZ, together) + Bed + above);
        float[] values = new float[shape.Count];
        // One cell more on every side: the surface lies between it and the outermost of the solid.
        for (int z = Math.Max(0, box.FirstZ - together); z < Math.Min(grid.Nz, box.LastZ + 1 + 2 * together); z++)
        {
            for (int y = Math.Max(0, box.FirstY - together); y < Math.Min(grid.Ny, box.LastY + 1 + 2 * together); y++)
            {
                int from = (z * grid.Ny + y) * grid.Nx;
                int to = shape.Index(margin - 1, margin - 1 + (y - box.FirstY + together) / together, Bed - 1 + (z - box.FirstZ + together) / together);
                for (int x = Math.Max(0, box.FirstX - together); x < Math.Min(grid.Nx, box.LastX + 1 + 2 * together); x++)
                {
                    values[to + (x - box.FirstX + together) / together] += Math.Min(front[from + x] + 1f, Solid);
                }
            }
        }

        float share = 1f / (together * together * together);
        for (int i = 0; together > 1 && i < values.Length; i++)
        {
            values[i] *= share;
        }

        Point3 corner = grid.Origin + new Point3(
            box.FirstX * grid.CellMetres - margin * size.Width, box.FirstY * grid.CellMetres - margin * size.Width,
            box.FirstZ * grid.CellHeightMetres - Bed * size.Height);
        Point3 low = placement.Corner, high = placement.Corner + new Point3(placement.TurnedBox.X, placement.TurnedBox.Y, placement.TurnedBox.Z);
        return new WaterField(shape, size, values, Bed)
        {
            InBoxX = Shares(shape.Nx, corner.X, size.Width, low.X, high.X),
            InBoxY = Shares(shape.Ny, corner.Y, size.Width, low.Y, high.Y),
            InBoxZ = Shares(shape.Nz, corner.Z, size.Height, Math.Max(low.Z, corner.Z + Bed * size.Height), high.Z),
        };
    }

    /// <summary>The same values with the seabed as solid.</summary>
    /// <returns>Index order of the grid.</returns>
    public float[] OnSeabed()
    {
        float[] values = [.. Values];
        values.AsSpan(0, BedPlanes * Shape.Plane).Fill(Solid);
        return values;
    }

    /// <summary>Sums a share of each cell over the unit's box.</summary>
    /// <param name="shares">Share of each cell, 0 to 1; index order of the grid.</param>
    /// <returns>m3.</returns>
    public double CubicMetres(float[] shares)
    {
        double cells = 0.0;
        for (int z = 0; z < Shape.Nz; z++)
        {
            double plane = 0.0;
            for (int y = 0; y < Shape.Ny && InBoxZ[z] > 0.0; y++)
            {
                double row = 0.0;
                for (int x = 0; x < Shape.Nx && InBoxY[y] > 0.0; x++)
                {
                    row += InBoxX[x] > 0.0 ? InBoxX[x] * shares[Shape.Index(x, y, z)] : 0.0;
                }

                plane += InBoxY[y] * row;
            }

            cells += InBoxZ[z] * plane;
        }

        return cells * Size.Width * Size.Width * Size.Height;
    }

    private static int Count(int first, int last, int together) => (last - first) / together + 1;

    private static double[] Shares(int cells, double corner, double edge, double low, double high)
    {
        double[] shares = new double[cells];
        for (int i = 0; i < cells; i++)
        {
            double from = corner + i * edge;
            shares[i] = Math.Clamp((Math.Min(high, from + edge) - Math.Max(low, from)) / edge, 0.0, 1.0);
        }

        return shares;
    }

    private static CellBox? Solids(float[] front, CellGrid grid)
    {
        int firstX = grid.Nx, firstY = grid.Ny, firstZ = grid.Nz, lastX = -1, lastY = -1, lastZ = -1;
        for (int z = 0; z < grid.Nz; z++)
        {
            for (int y = 0; y < grid.Ny; y++)
            {
                int at = (z * grid.Ny + y) * grid.Nx;
                for (int x = 0; x < grid.Nx; x++)
                {
                    if (front[at + x] >= 0f)
                    {
                        (firstX, lastX) = (Math.Min(firstX, x), Math.Max(lastX, x));
                        (firstY, lastY) = (Math.Min(firstY, y), Math.Max(lastY, y));
                        (firstZ, lastZ) = (Math.Min(firstZ, z), Math.Max(lastZ, z));
                    }
                }
            }
        }

        return lastX < 0 ? null : new CellBox(firstX, firstY, firstZ, lastX, lastY, lastZ);
    }
}
