using Dewstone.Model.Quantities;
using MathNet.Numerics.LinearAlgebra;

namespace Dewstone.Compute.Survey;

/// <summary>Point-to-plane steps from one start; see <see cref="ScanRegistrar"/>.</summary>
internal readonly record struct PlaneFit
{
    private const double KeptShare = 0.9;
    private const double KeptMedians = 3.0;
    private const double LeastKeptMetres = 0.002;
    private const double SettledMetres = 1e-6;
    private const double SettledRadians = 1e-7;

    // Keeps the equations solvable where a body slides on itself; far below what any pair weighs.
    private const double Damping = 1e-9;

    /// <summary>The motion found.</summary>
    public required RigidMotion Motion { get; init; }

    /// <summary>Median distance of all points to the planes of their nearest corners, metres.</summary>
    public required double MedianMetres { get; init; }

    /// <summary>Root mean square of those kept, metres.</summary>
    public required double RootMeanSquareMetres { get; init; }

    /// <summary>Share of the points near the surface.</summary>
    public required double NearShare { get; init; }

    /// <summary>Refines a start.</summary>
    /// <param name="scan">Points of the scan, metres.</param>
    /// <param name="surface">The surface.</param>
    /// <param name="start">Where to begin.</param>
    /// <param name="mostSteps">Steps at most.</param>
    /// <param name="cancellation">Looked at in every step.</param>
    /// <returns>The fit.</returns>
    public static PlaneFit Refine(Point3[] scan, SurveyedSurface surface, RigidMotion start, int mostSteps, CancellationToken cancellation)
    {
        RigidMotion motion = start;
        Point3[] moved = new Point3[scan.Length], normals = new Point3[scan.Length];
        double[] above = new double[scan.Length], far = new double[scan.Length];
        for (int step = 0; ; step++)
        {
            cancellation.ThrowIfCancellationRequested();
            for (int i = 0; i < scan.Length; i++)
            {
                moved[i] = motion.Apply(scan[i]);
                (int corner, far[i]) = surface.Nearest(moved[i]);
                normals[i] = surface.Normal(corner);
                above[i] = Point3.Dot(moved[i] - surface.Corner(corner), normals[i]);
            }

            double[] sorted = [.. far.Order()];
            double median = sorted[sorted.Length / 2], limit = step < mostSteps / 2
                ? sorted[(int)(KeptShare * (sorted.Length - 1))]
                : Math.Max(LeastKeptMetres, KeptMedians * median);
            (RigidMotion change, double square) = Solve(moved, normals, above, far, limit);
            if (step >= mostSteps || (step > mostSteps / 2 && change.Shift.Norm < SettledMetres && change.Radians < SettledRadians))
            {
                return new PlaneFit
                {
                    Motion = motion,
                    MedianMetres = above.Select(Math.Abs).Order().ElementAt(above.Length / 2),
                    RootMeanSquareMetres = Math.Sqrt(square),
                    NearShare = far.Count(d => d <= ScanRegistrar.NearMetres) / (double)far.Length,
                };
            }

            motion = motion.Then(change);
        }
    }

    private static (RigidMotion Change, double MeanSquare) Solve(Point3[] moved, Point3[] normals, double[] above, double[] far, double limit)
    {
        Point3 middle = default;
        int kept = 0;
        for (int i = 0; i < moved.Length; i++)
        {
            if (far[i] <= limit)
            {
                middle += moved[i];
                kept++;
            }
        }

        middle *= 1.0 / kept;
        double[,] a = new double[6, 6];
        double[] b = new double[6], row = new double[6];
        double squares = 0.0;
        for (int i = 0; i < moved.Length; i++)
        {
            if (far[i] > limit)
            {
                continue;
            }

            Point3 p = moved[i] - middle, n = normals[i];
            Point3 lever = Point3.Cross(p, n);
            (row[0], row[1], row[2]) = (lever.X, lever.Y, lever.Z);
            (row[3], row[4], row[5]) = (n.X, n.Y, n.Z);
            squares += above[i] * above[i];
            for (int r = 0; r < 6; r++)
            {
                b[r] -= row[r] * above[i];
                for (int c = 0; c < 6; c++)
                {
                    a[r, c] += row[r] * row[c];
                }
            }
        }

        for (int r = 0; r < 6; r++)
        {
            a[r, r] += Damping * kept;
        }

        Vector<double> x = Matrix<double>.Build.DenseOfArray(a).Cholesky().Solve(Vector<double>.Build.Dense(b));
        RigidMotion turn = RigidMotion.Of(new Point3(x[0], x[1], x[2]), default);

        // About the middle of the pairs kept, then the shift.
        return (turn with { Shift = middle - turn.Turn(middle) + new Point3(x[3], x[4], x[5]) }, squares / kept);
    }
}
