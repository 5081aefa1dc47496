using Dewstone.Compute.Numerics;
using Dewstone.Model.Quantities;

namespace Dewstone.Compute.Strength;

/// <summary>A place that bears: bricks of it, each with the area or volume that bears, in the order they were added.</summary>
/// <param name="bricks">The body.</param>
/// <param name="face">Face of its bricks that bears: -1 the lower, 1 the upper, 0 the whole brick.</param>
internal sealed class Support(BodyBricks bricks, int face)
{
    private readonly List<(int X, int Y, int Z, double Weight)> parts = [];

    /// <summary>Area or volume that bears, m2 or m3.</summary>
    public double Weight { get; private set; }

    /// <summary>Middle of what bears, metres, unit frame; not to be asked when nothing does.</summary>
    public Point3 Middle
    {
        get
        {
            Point3 sum = default;
            foreach ((int x, int y, int z, double weight) in parts)
            {
                sum += bricks.Centre(x, y, z) * weight;
            }

            return sum * (1.0 / Weight);
        }
    }

    /// <summary>The lowest bricks of the body in a band of the plan.</summary>
    /// <param name="bricks">The body.</param>
    /// <param name="low">Lower corner of the band, metres, unit frame; z is not looked at.</param>
    /// <param name="high">Upper corner.</param>
    /// <param name="top">The uppermost bricks instead.</param>
    /// <returns>What bears there.</returns>
    public static Support Under(BodyBricks bricks, Point3 low, Point3 high, bool top = false)
    {
        Support support = new(bricks, top ? 1 : -1);
        GridShape shape = bricks.Shape;
        int level = top ? shape.Nz - 1 : 0;
        for (int y = 0; y < shape.Ny; y++)
        {
            for (int x = 0; x < shape.Nx; x++)
            {
                Point3 from = bricks.Corner + new Point3(x * bricks.Edges.X, y * bricks.Edges.Y, 0.0);
                double area = Overlap(from.X, bricks.Edges.X, low.X, high.X) * Overlap(from.Y, bricks.Edges.Y, low.Y, high.Y);
                // Relief and rounding leave the outermost bricks of a face half empty: the second layer bears where they are all but empty.
                int z = bricks.Filled[shape.Index(x, y, level)] >= LeastFilled ? level : top ? level - 1 : level + 1;
                if (area > 0.0 && z >= 0 && z < shape.Nz && bricks.Filled[shape.Index(x, y, z)] >= LeastFilled)
                {
                    support.Add(x, y, z, area);
                }
            }
        }

        return support;
    }

    /// <summary>The bricks around a point.</summary>
    /// <param name="bricks">The body.</param>
    /// <param name="centre">Metres, unit frame.</param>
    /// <param name="radius">Metres.</param>
    /// <returns>What holds there.</returns>
    public static Support Around(BodyBricks bricks, Point3 centre, double radius)
    {
        Support support = new(bricks, 0);
        GridShape shape = bricks.Shape;
        for (int i = 0; i < shape.Count; i++)
        {
            int x = i % shape.Nx, y = i / shape.Nx % shape.Ny, z = i / shape.Plane;
            if (bricks.Filled[i] >= LeastFilled && (bricks.Centre(x, y, z) - centre).Norm <= radius)
            {
                support.Add(x, y, z, bricks.Filled[i] * bricks.Edges.CubicMetres);
            }
        }

        return support;
    }

    /// <summary>Adds what bears to sums over the plan: weight, first and second moments.</summary>
    /// <param name="sums">1, x, y, xx, xy, yy.</param>
    /// <param name="origin">Where moments are taken about, metres.</param>
    public void AddTo(Span<double> sums, Point3 origin)
    {
        foreach ((int bx, int by, int bz, double weight) in parts)
        {
            Point3 at = bricks.Centre(bx, by, bz) - origin;
            sums[0] += weight;
            sums[1] += weight * at.X;
            sums[2] += weight * at.Y;
            sums[3] += weight * at.X * at.X;
            sums[4] += weight * at.X * at.Y;
            sums[5] += weight * at.Y * at.Y;
        }
    }

    /// <summary>Presses upward with a pressure straight over the plan.</summary>
    /// <param name="solver">Where forces are added; null to add none.</param>
    /// <param name="lane">Set of forces.</param>
    /// <param name="pressure">The pressure.</param>
    /// <returns>Force in all, N, and the least pressure.</returns>
    public (double Newtons, double Least) Press(ElasticSolver? solver, int lane, PlanPressure pressure)
    {
        double all = 0.0, least = double.PositiveInfinity;
        foreach ((int x, int y, int z, double weight) in parts)
        {
            double here = pressure.At(bricks.Centre(x, y, z)), newtons = here * weight;
            (all, least) = (all + newtons, Math.Min(least, here));
            for (int corner = 0; solver is not null && corner < 8; corner++)
            {
                int up = corner >> 2;
                if (face == 0 || (face > 0) == (up == 1))
                {
                    solver.AddForce(lane, x + (corner & 1), y + ((corner >> 1) & 1), z + up, 2, newtons / (face == 0 ? 8.0 : 4.0));
                }
            }
        }

        return (all, least);
    }

    /// <summary>Share of a length or width of bricks that bear: bricks in the plan's rows along an axis.</summary>
    /// <param name="alongX">Whether the axis is x.</param>
    /// <returns>Length that bears, metres.</returns>
    public double Length(bool alongX) => parts.Select(part => alongX ? part.X : part.Y).Distinct().Count() * (alongX ? bricks.Edges.X : bricks.Edges.Y);

    /// <summary>A brick filled less than this neither bears nor is judged, 1.</summary>
    public const double LeastFilled = 0.25;

    private void Add(int x, int y, int z, double weight)
    {
        parts.Add((x, y, z, weight));
        Weight += weight;
    }

    private static double Overlap(double from, double edge, double low, double high) => Math.Max(0.0, Math.Min(from + edge, high) - Math.Max(from, low));
}
