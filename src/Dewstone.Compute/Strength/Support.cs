using Dewstone.Compute.Numerics;
using Dewstone.Model.Quantities;

namespace Dewstone.Compute.Strength;

/// <summary>A place that bears: bricks, each with the area or volume of it that bears and the middle of that.</summary>
/// <param name="bricks">The body.</param>
internal sealed class Support(BodyBricks bricks)
{
    /// <summary>A place surrounded by less filling than this is not judged, and a brick filled less bears nothing and holds no insert, 1.</summary>
    public const double LeastFilled = 0.25;

    /// <summary>
    /// How far a face may stand back and still bear, metres: ground, straps and loose bedding give that much, so relief and the scallops between needles bear. Our own
    /// rule, without a source, as at sea.
    /// </summary>
    private const double GiveMetres = 0.05;

    private readonly List<((int X, int Y, int Z) Brick, Point3 Point, double Weight)> parts = [];

    /// <summary>Area or volume that bears, m2 or m3.</summary>
    public double Weight { get; private set; }

    /// <summary>Middle of what bears, metres, unit frame; not to be asked when nothing does.</summary>
    public Point3 Middle
    {
        get
        {
            Point3 sum = default;
            foreach (((int X, int Y, int Z) brick, Point3 point, double weight) in parts)
            {
                sum += bricks.Where(brick, point) * weight;
            }

            return sum * (1.0 / Weight);
        }
    }

    /// <summary>What of the body's lower face lies in a band of the plan, cell by cell.</summary>
    /// <param name="bricks">The body.</param>
    /// <param name="low">Lower corner of the band, metres, unit frame; z is not looked at.</param>
    /// <param name="high">Upper corner.</param>
    /// <param name="top">The upper face instead.</param>
    /// <returns>What bears there.</returns>
    public static Support Under(BodyBricks bricks, Point3 low, Point3 high, bool top = false)
    {
        GridShape cells = bricks.CellCount;
        Size3 cell = bricks.CellEdges;
        (int across, int tall) = bricks.CellsInBrick;
        int give = Math.Clamp((int)Math.Round(GiveMetres / cell.Z), 1, cells.Nz);
        double[] areas = new double[bricks.Shape.Count];
        Point3[] moments = new Point3[areas.Length];
        for (int y = 0; y < cells.Ny; y++)
        {
            for (int x = 0; x < cells.Nx; x++)
            {
                (double middleX, double lengthX) = Overlap(bricks.Corner.X + x * cell.X, cell.X, low.X, high.X);
                (double middleY, double lengthY) = Overlap(bricks.Corner.Y + y * cell.Y, cell.Y, low.Y, high.Y);
                for (int layer = 0; lengthX * lengthY > 0.0 && layer < give; layer++)
                {
                    int z = top ? cells.Nz - 1 - layer : layer;
                    if (bricks.HasCell(x, y, z))
                    {
                        // A brick that is all but empty hangs by a few cells; the one behind it bears.
                        int brick = bricks.Shape.Index(x / across, y / across, z / tall), behind = z / tall + (top ? -1 : 1);
                        if (bricks.Filled[brick] < LeastFilled && behind >= 0 && behind < bricks.Shape.Nz)
                        {
                            brick = bricks.Shape.Index(x / across, y / across, behind);
                        }

                        areas[brick] += lengthX * lengthY;
                        moments[brick] += new Point3(
                            (x % across + middleX) * 2.0 / across - 1.0, (y % across + middleY) * 2.0 / across - 1.0, top ? 1.0 : -1.0) * (lengthX * lengthY);
                        break;
                    }
                }
            }
        }

        Support support = new(bricks);
        for (int i = 0; i < areas.Length; i++)
        {
            if (areas[i] > 0.0 && bricks.Filled[i] >= LeastFilled)
            {
                support.Add(bricks.At(i), moments[i] * (1.0 / areas[i]), areas[i]);
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
        Support support = new(bricks);
        for (int i = 0; i < bricks.Shape.Count; i++)
        {
            (int X, int Y, int Z) at = bricks.At(i);
            if (bricks.Filled[i] >= LeastFilled && (bricks.Where(at, bricks.MiddleOf(i)) - centre).Norm <= radius)
            {
                support.Add(at, bricks.MiddleOf(i), bricks.Filled[i] * bricks.Edges.CubicMetres);
            }
        }

        return support;
    }

    /// <summary>Adds what bears to sums over the plan: weight, first and second moments.</summary>
    /// <param name="sums">1, x, y, xx, xy, yy.</param>
    /// <param name="origin">Where moments are taken about, metres.</param>
    public void AddTo(Span<double> sums, Point3 origin)
    {
        foreach (((int X, int Y, int Z) brick, Point3 point, double weight) in parts)
        {
            Point3 at = bricks.Where(brick, point) - origin;
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
        foreach (((int X, int Y, int Z) brick, Point3 point, double weight) in parts)
        {
            double here = pressure.At(bricks.Where(brick, point));
            (all, least) = (all + here * weight, Math.Min(least, here));
            solver?.AddLift(lane, brick, point, here * weight);
        }

        return (all, least);
    }

    /// <summary>Length that bears: bricks in the plan's rows along an axis.</summary>
    /// <param name="alongX">Whether the axis is x.</param>
    /// <returns>Length that bears, metres.</returns>
    public double Length(bool alongX) =>
        parts.Select(part => alongX ? part.Brick.X : part.Brick.Y).Distinct().Count() * (alongX ? bricks.Edges.X : bricks.Edges.Y);

    private void Add((int X, int Y, int Z) brick, Point3 point, double weight)
    {
        parts.Add((brick, point, weight));
        Weight += weight;
    }

    // Middle, in cells from the cell's lower side, and length of what of a cell lies in a band.
    private static (double Middle, double Metres) Overlap(double from, double edge, double low, double high)
    {
        double first = Math.Max(from, low), last = Math.Min(from + edge, high);
        return (0.5 * (first + last - 2.0 * from) / edge, Math.Max(0.0, last - first));
    }
}
