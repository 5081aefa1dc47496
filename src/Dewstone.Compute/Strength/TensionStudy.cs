using Dewstone.Compute.Numerics;
using Dewstone.Model.Quantities;
using Dewstone.Model.Results;

namespace Dewstone.Compute.Strength;

/// <summary>Tension in the body under its own weight: lifted, on two edges, with one like it on top, all solved together.</summary>
/// <remarks>
/// Linear elastic, uniform modulus, Poisson's ratio 0.2 (EN 1992-1-1, 3.1.3 (4), uncracked concrete; from memory). Supports press with a pressure straight over the plan that is in
/// balance with the weight, so no support is stiffer than another; friction, the sideways pull of sling legs and blows are left out. What is judged is the largest
/// principal stress, tension only, as its mean over a ball weighted by the filled share, over the cracking stress of the same place: a stepped corner
/// has no largest stress, a mean has one.
/// </remarks>
internal static class TensionStudy
{
    /// <summary>Poisson's ratio, 1.</summary>
    public const double Poisson = 0.2;

    /// <summary>Adds the forces of the cases that can be in balance.</summary>
    /// <param name="solver">Where to.</param>
    /// <param name="bricks">The body.</param>
    /// <param name="hang">What it hangs by; empty when its file does not say.</param>
    /// <param name="box">Outer box, metres: the edges it stands on are those of this box.</param>
    /// <param name="dynamicFactor">Factor for hoisting, 1.</param>
    /// <param name="pitch">Width of an edge that it stands on, metres.</param>
    /// <returns>The cases, each with whether its supports would have to pull.</returns>
    public static IReadOnlyList<(LoadCase Case, bool Overturns)> Load(
        ElasticSolver solver, BodyBricks bricks, IReadOnlyList<Support> hang, Size3 box, double dynamicFactor, double pitch)
    {
        Point3 low = default, high = new(box.X, box.Y, 0.0);
        Point3 far = new(1e3, 1e3, 0.0);
        List<(LoadCase, bool)> cases = [];
        Stand(LoadCase.Lifted, hang, dynamicFactor);
        Stand(LoadCase.OnWestAndEastEdges, [Support.Under(bricks, low - far, low + new Point3(pitch, 1e3, 0.0)), Support.Under(bricks, high - new Point3(pitch, 1e3, 0.0), high + far)], 1.0);
        Stand(LoadCase.OnSouthAndNorthEdges, [Support.Under(bricks, low - far, low + new Point3(1e3, pitch, 0.0)), Support.Under(bricks, high - new Point3(1e3, pitch, 0.0), high + far)], 1.0);
        Support top = Support.Under(bricks, low - far, high + far, top: true);
        (double weight, Point3 centre) = Weight(bricks);
        if (PlanPressure.Carrying([top], -weight, centre) is { } load)
        {
            if (Stand(LoadCase.Stacked, [Support.Under(bricks, low - far, high + far)], 1.0, 2.0))
            {
                top.Press(solver, (int)LoadCase.Stacked, load);
            }
        }

        return cases;

        bool Stand(LoadCase held, IReadOnlyList<Support> supports, double factor, double times = 1.0)
        {
            int lane = (int)held;
            (double newtons, Point3 middle) = Weight(bricks);
            if (PlanPressure.Carrying(supports, newtons * factor * times, middle) is not { } pressure)
            {
                return false;
            }

            double least = supports.Min(support => support.Press(solver, lane, pressure).Least);
            for (int i = 0; i < bricks.Shape.Count; i++)
            {
                if (bricks.Filled[i] > 0f)
                {
                    solver.AddLift(lane, bricks.At(i), bricks.MiddleOf(i), -factor * SlingLoad.Gravity * bricks.Kilograms[i]);
                }
            }

            cases.Add((held, least < 0.0));
            return true;
        }
    }

    /// <summary>Tension and cracking stress at 28 days around the corners of the octants of all bricks.</summary>
    /// <param name="solver">Solved.</param>
    /// <param name="bricks">The body.</param>
    /// <param name="lane">Set of forces.</param>
    /// <param name="ballMetres">Diameter of the ball the mean is taken over, metres.</param>
    /// <param name="parallelism">Threads; no result depends on them.</param>
    /// <returns>The judged tension.</returns>
    public static TensionField Judge(ElasticSolver solver, BodyBricks bricks, int lane, double ballMetres, Parallelism parallelism)
    {
        GridShape shape = bricks.Shape, octants = bricks.Octants;
        float[] principal = new float[octants.Count];
        Chunks.Run(shape.Nz, 1, parallelism, (z, _) =>
        {
            Span<Stress> stresses = stackalloc Stress[8];
            for (int i = z * shape.Plane; i < (z + 1) * shape.Plane; i++)
            {
                if (bricks.Filled[i] > 0f)
                {
                    int x = i % shape.Nx, y = i / shape.Nx % shape.Ny;
                    solver.StressesAt(lane, x, y, z, stresses);
                    for (int octant = 0; octant < 8; octant++)
                    {
                        principal[octants.Index(2 * x + (octant & 1), 2 * y + ((octant >> 1) & 1), 2 * z + (octant >> 2))] =
                            (float)Math.Max(0.0, stresses[octant].LargestPrincipal);
                    }
                }
            }
        });
        return new TensionField(bricks, principal, ballMetres, parallelism);
    }

    private static (double Newtons, Point3 Centre) Weight(BodyBricks bricks)
    {
        double sum = 0.0;
        Point3 moment = default;
        for (int i = 0; i < bricks.Shape.Count; i++)
        {
            double mass = bricks.Kilograms[i];
            (sum, moment) = mass > 0.0 ? (sum + mass, moment + bricks.Where(bricks.At(i), bricks.MiddleOf(i)) * mass) : (sum, moment);
        }

        return (sum * SlingLoad.Gravity, moment * (1.0 / sum));
    }
}
