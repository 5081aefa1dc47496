using Dewstone.Model.Quantities;

namespace Dewstone.Compute.Numerics;

/// <summary>
/// The surface at which a field of cells crosses a level, placed between the cells: trilinear interpolation, between cell centres, of the
/// field less its floor, raised to a whole power. Outside the outermost centres the field is constant.
/// </summary>
/// <remarks>
/// The front of a wetted body is a cliff. Interpolated as it is, its content puts the surface too far in; raised to the power of the diffusivity
/// law less one it is nearly straight across the front. Lengths are metres from the lower corner of the box of cells, in its axes.
/// </remarks>
public sealed class LevelSurface
{
    private const int LinesPerHalfCell = 4;

    private readonly float[] field;
    private readonly GridShape shape;
    private readonly CellSize size;
    private readonly double floor;
    private readonly double level;
    private readonly int power;

    /// <summary>Sets up the surface; nothing is computed yet.</summary>
    /// <param name="field">Values; index order of <paramref name="shape"/>. Not copied.</param>
    /// <param name="shape">Cells along each axis.</param>
    /// <param name="size">Edges of a cell, m.</param>
    /// <param name="level">Value on the surface; above the floor.</param>
    /// <param name="power">Power to interpolate in, 1 or more.</param>
    /// <param name="floor">What is taken off all values; lower ones count as equal to it.</param>
    public LevelSurface(float[] field, GridShape shape, CellSize size, double level, int power, double floor = 0.0)
    {
        ArgumentNullException.ThrowIfNull(field);
        ArgumentOutOfRangeException.ThrowIfLessThan(power, 1);
        ArgumentOutOfRangeException.ThrowIfLessThanOrEqual(level, floor);
        shape.Require(field.Length, nameof(field));
        size.Require(nameof(size));
        (this.field, this.shape, this.size) = (field, shape, size);
        (this.floor, this.power) = (floor, power);
        this.level = Elementary.WholePower(level - floor, power);
    }

    /// <summary>Whether a point lies inside: at or above the level.</summary>
    /// <param name="point">Place, m from the lower corner.</param>
    /// <returns>True inside.</returns>
    public bool Contains(Point3 point) => At(point) >= level;

    /// <summary>Where a ray first changes from inside to outside or the other way.</summary>
    /// <param name="start">Start, m from the lower corner.</param>
    /// <param name="direction">Direction; its length does not matter, but not 0.</param>
    /// <returns>Distance from the start, m; not a number when the ray leaves the box without crossing the surface.</returns>
    public double CrossingMetres(Point3 start, Point3 direction)
    {
        double length = Math.Sqrt(direction.X * direction.X + direction.Y * direction.Y + direction.Z * direction.Z);
        Point3 Along(double metres) => new(
            start.X + direction.X / length * metres, start.Y + direction.Y / length * metres, start.Z + direction.Z / length * metres);
        bool side = Contains(start);

        // A quarter of a cell: a tongue thinner than that is no surface of this field.
        double step = Math.Min(size.Width, size.Height) / 4.0;
        double before = 0.0;
        double after = step;
        while (Contains(Along(after)) == side)
        {
            if (!IsInBox(Along(after)))
            {
                return double.NaN;
            }

            before = after;
            after += step;
        }

        for (int i = 0; i < 50; i++)
        {
            double middle = 0.5 * (before + after);
            (before, after) = Contains(Along(middle)) == side ? (middle, after) : (before, middle);
        }

        return 0.5 * (before + after);
    }

    /// <summary>Volume inside the surface, whole box.</summary>
    /// <returns>Volume, m3.</returns>
    public double VolumeCubicMetres() => VolumeCubicMetres((0, 0, 0), (shape.Nx, shape.Ny, shape.Nz));

    /// <summary>
    /// Volume inside the surface, within a block of cells: on lines along x, four a half cell in y and in z, where the interpolated value is
    /// linear, so that the part inside is exact on each line.
    /// </summary>
    /// <param name="first">First cell along x, y and z.</param>
    /// <param name="end">Cell after the last along x, y and z.</param>
    /// <returns>Volume, m3.</returns>
    public double VolumeCubicMetres((int X, int Y, int Z) first, (int X, int Y, int Z) end)
    {
        double cells = 0.0;
        for (int z = first.Z; z < end.Z; z++)
        {
            double plane = 0.0;
            for (int y = first.Y; y < end.Y; y++)
            {
                for (int x = first.X; x < end.X; x++)
                {
                    plane += ShareInside(x, y, z);
                }
            }

            cells += plane;
        }

        return cells * size.Width * size.Width * size.Height;
    }

    private double ShareInside(int x, int y, int z)
    {
        int inside = 0;
        for (int dz = -1; dz <= 1; dz++)
        {
            for (int dy = -1; dy <= 1; dy++)
            {
                for (int dx = -1; dx <= 1; dx++)
                {
                    inside += Value(x + dx, y + dy, z + dz) >= level ? 1 : 0;
                }
            }
        }

        if (inside is 0 or 27)
        {
            return inside / 27.0;
        }

        const int lines = 2 * LinesPerHalfCell;
        double share = 0.0;
        for (int k = 0; k < lines; k++)
        {
            for (int j = 0; j < lines; j++)
            {
                double v = y + (j + 0.5) / lines - 0.5;
                double w = z + (k + 0.5) / lines - 0.5;
                double west = AtCells(x - 0.5, v, w);
                double middle = AtCells(x, v, w);
                double east = AtCells(x + 0.5, v, w);
                share += 0.5 * (PartAbove(west, middle) + PartAbove(middle, east));
            }
        }

        return share / (lines * lines);
    }

    private double PartAbove(double a, double b)
    {
        if (a >= level)
        {
            return b >= level ? 1.0 : (a - level) / (a - b);
        }

        return b >= level ? (b - level) / (b - a) : 0.0;
    }

    private double At(Point3 point) => AtCells(point.X / size.Width - 0.5, point.Y / size.Width - 0.5, point.Z / size.Height - 0.5);

    // Coordinates in cells, whole at cell centres.
    private double AtCells(double x, double y, double z)
    {
        int i = (int)Math.Floor(x);
        int j = (int)Math.Floor(y);
        int k = (int)Math.Floor(z);
        double u = x - i;
        double v = y - j;
        double w = z - k;
        double RowAt(int jj, int kk) => (1.0 - u) * Value(i, jj, kk) + u * Value(i + 1, jj, kk);
        double low = (1.0 - v) * RowAt(j, k) + v * RowAt(j + 1, k);
        double high = (1.0 - v) * RowAt(j, k + 1) + v * RowAt(j + 1, k + 1);
        return (1.0 - w) * low + w * high;
    }

    private double Value(int x, int y, int z)
    {
        int index = shape.Index(Math.Clamp(x, 0, shape.Nx - 1), Math.Clamp(y, 0, shape.Ny - 1), Math.Clamp(z, 0, shape.Nz - 1));
        return Elementary.WholePower(Math.Max(0.0, field[index] - floor), power);
    }

    private bool IsInBox(Point3 p) =>
        p.X >= 0.0 && p.Y >= 0.0 && p.Z >= 0.0 && p.X <= shape.Nx * size.Width && p.Y <= shape.Ny * size.Width && p.Z <= shape.Nz * size.Height;
}
