using Dewstone.Compute.Numerics;
using Dewstone.Model.Quantities;
using Dewstone.Model.Results;

namespace Dewstone.Compute.Survey;

/// <summary>Signed distances of a scan's points to the predicted surface.</summary>
public sealed class ScanDeviation
{
    /// <summary>Points farther than this are taken for something else than the unit and left out, metres.</summary>
    public const double StrayMetres = 0.1;

    /// <summary>Deviation from which a point belongs to a deviating place, metres.</summary>
    public const double PlaceMetres = 0.02;

    /// <summary>Points that make a place.</summary>
    public const int PlacePoints = 20;

    private const double BoxMetres = 0.05;
    private const int PointsTogether = 2048;

    private ScanDeviation(Point3[] points, double[] metres, int stray)
    {
        (Points, Metres, Stray) = (points, metres, stray);
        Sorted = [.. metres.Order()];
        Places = FindPlaces();
    }

    /// <summary>Points of the scan that belong to the unit, in the surface's frame, metres.</summary>
    public IReadOnlyList<Point3> Points { get; }

    /// <summary>Their deviations, metres, above 0 outside the predicted solid.</summary>
    public IReadOnlyList<double> Metres { get; }

    /// <summary>Points left out as stray.</summary>
    public int Stray { get; }

    /// <summary>Mean deviation, metres.</summary>
    public double Mean => Metres.Sum() / Metres.Count;

    /// <summary>Places that deviate by more than 20 mm, worst first.</summary>
    public IReadOnlyList<DeviatingPlace> Places { get; }

    private double[] Sorted { get; }

    /// <summary>Measures.</summary>
    /// <param name="scan">Scan, x y z one after another, metres.</param>
    /// <param name="motion">Brings it to the surface.</param>
    /// <param name="surface">Predicted surface.</param>
    /// <param name="parallelism">Threads; no result depends on them.</param>
    /// <returns>The deviations; null when no point belongs to the unit.</returns>
    public static ScanDeviation? Measure(float[] scan, RigidMotion motion, SurveyedSurface surface, Parallelism parallelism)
    {
        ArgumentNullException.ThrowIfNull(scan);
        ArgumentNullException.ThrowIfNull(surface);
        Point3[] moved = new Point3[scan.Length / 3];
        double[] metres = new double[moved.Length];
        Chunks.Run(moved.Length, PointsTogether, parallelism, (first, end) =>
        {
            for (int i = first; i < end; i++)
            {
                moved[i] = motion.Apply(new Point3(scan[3 * i], scan[3 * i + 1], scan[3 * i + 2]));
                metres[i] = surface.Deviation(moved[i]);
            }
        });
        int[] kept = [.. Enumerable.Range(0, moved.Length).Where(i => Math.Abs(metres[i]) <= StrayMetres)];
        return kept.Length == 0 ? null : new ScanDeviation([.. kept.Select(i => moved[i])], [.. kept.Select(i => metres[i])], moved.Length - kept.Length);
    }

    /// <summary>The deviation that a share of the points stays at or below.</summary>
    /// <param name="share">Share, 0 to 1.</param>
    /// <returns>Metres.</returns>
    public double Percentile(double share) => Sorted[(int)Math.Round(share * (Sorted.Length - 1), MidpointRounding.AwayFromZero)];

    /// <summary>Share of the points that deviate by more, either way.</summary>
    /// <param name="limit">Metres.</param>
    /// <returns>0 to 1.</returns>
    public double ShareBeyond(double limit) => Metres.Count(m => Math.Abs(m) > limit) / (double)Metres.Count;

    private List<DeviatingPlace> FindPlaces()
    {
        Dictionary<(int, int, int, bool), (Point3 Sum, double Metres, int Points)> boxes = [];
        for (int i = 0; i < Points.Count; i++)
        {
            if (Math.Abs(Metres[i]) > PlaceMetres)
            {
                Point3 p = Points[i];
                (int, int, int, bool) box = ((int)Math.Floor(p.X / BoxMetres), (int)Math.Floor(p.Y / BoxMetres), (int)Math.Floor(p.Z / BoxMetres), Metres[i] > 0.0);
                (Point3 sum, double metres, int points) = boxes.GetValueOrDefault(box);
                boxes[box] = (sum + p, metres + Metres[i], points + 1);
            }
        }

        return
        [
            .. boxes.Values.Where(b => b.Points >= PlacePoints).Select(b => new DeviatingPlace(b.Sum * (1.0 / b.Points), b.Metres / b.Points, b.Points))
                .OrderByDescending(p => Math.Abs(p.MeanMetres)).ThenBy(p => p.Where.X).ThenBy(p => p.Where.Y).ThenBy(p => p.Where.Z),
        ];
    }
}
