using Dewstone.Model.Quantities;

namespace Dewstone.Compute.Survey;

/// <summary>Lays a scan on a predicted surface.</summary>
/// <remarks>
/// <para>Point-to-plane iterative closest point (Chen and Medioni 1992), each step linearised for a small turn w about the scan's middle (Low 2004,
/// equations 5 to 10; both from memory): minimise the sum of ((p x n) . w + n . t + n . (p - q))^2 over the pairs of a scan point p and the nearest corner q
/// with its direction n; the turn is then applied exactly (Rodrigues). Trimmed: of the pairs the nearest 90 % count, in the last steps those within three
/// median distances.</para>
/// <para>Starts: middles on each other, and the scan turned about the vertical by every 15 degrees. Each is refined on few points; the best of them, those
/// with little turn preferred, on all. The scan must be upright to about 30 degrees. A body that looks the same when turned is laid on the nearest of
/// its equal places.</para>
/// </remarks>
public static class ScanRegistrar
{
    /// <summary>Distance within which a scan point lies near the prediction, metres.</summary>
    public const double NearMetres = 0.015;

    private const int Yaws = 24;
    private const int RoughPoints = 400;
    private const int RoughSteps = 12;
    private const int FinePoints = 20_000;
    private const int FineSteps = 60;

    // A start with more turn must be better by this much to win: equal places of a symmetrical body differ by noise.
    private const double Preference = 0.97;

    /// <summary>Registers.</summary>
    /// <param name="scan">Scan, x y z one after another, metres; evenly spread.</param>
    /// <param name="surface">Predicted surface, metres.</param>
    /// <param name="cancellation">Looked at in every step.</param>
    /// <returns>Where it lies best.</returns>
    /// <exception cref="OperationCanceledException">Cancelled.</exception>
    public static ScanRegistration Register(float[] scan, SurveyedSurface surface, CancellationToken cancellation)
    {
        ArgumentNullException.ThrowIfNull(scan);
        ArgumentNullException.ThrowIfNull(surface);
        Point3[] rough = Every(scan, RoughPoints), fine = Every(scan, FinePoints);
        Point3 middle = Middle(fine);
        RigidMotion best = RigidMotion.None;
        double least = double.PositiveInfinity;
        foreach (int yaw in Enumerable.Range(0, Yaws).OrderBy(y => Math.Min(y, Yaws - y)))
        {
            RigidMotion turn = RigidMotion.Of(new Point3(0.0, 0.0, 2.0 * Math.PI * yaw / Yaws), default);
            RigidMotion start = turn with { Shift = surface.Centre - turn.Apply(middle) };
            PlaneFit refined = PlaneFit.Refine(rough, surface, start, RoughSteps, cancellation);
            if (refined.MedianMetres < Preference * least)
            {
                (best, least) = (refined.Motion, refined.MedianMetres);
            }
        }

        PlaneFit last = PlaneFit.Refine(fine, surface, best, FineSteps, cancellation);
        return new ScanRegistration(last.Motion, last.RootMeanSquareMetres, last.NearShare);
    }

    private static Point3[] Every(float[] scan, int most)
    {
        int count = scan.Length / 3, taken = Math.Min(count, most);
        Point3[] points = new Point3[taken];
        for (int i = 0; i < taken; i++)
        {
            int at = 3 * (int)((long)i * count / taken);
            points[i] = new Point3(scan[at], scan[at + 1], scan[at + 2]);
        }

        return points;
    }

    private static Point3 Middle(Point3[] points)
    {
        Point3 sum = default;
        foreach (Point3 p in points)
        {
            sum += p;
        }

        return sum * (1.0 / points.Length);
    }
}
