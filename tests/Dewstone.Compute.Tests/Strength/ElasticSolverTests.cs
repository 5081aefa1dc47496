using Dewstone.Compute.Numerics;
using Dewstone.Compute.Strength;
using Dewstone.Model.Results;

namespace Dewstone.Compute.Tests.Strength;

public sealed class ElasticSolverTests
{
    // Cantilever of length L = 1 m, square section of depth h = 0.25 m, Poisson's ratio 0, end force P = 1000 N spread as the theory has it. Timoshenko and Goodier, "Theory of
    // elasticity", section 21 (from memory): that stress field is exact, so the work of the forces is P^2 L^3 / (3 E I) + (6/5) P^2 L / (G A), and Timoshenko's deflection
    // P L^3 / (3 E I) + P L / (k G A) with k = 5/6 (Cowper 1966, Poisson's ratio 0; from memory). With E = 1 Pa, G = 1/2 Pa: 1.0240e6 + 0.0384e6 = 1.0624e6 m.
    [Fact]
    public void Cantilever_bends_as_timoshenko_has_it_with_second_order()
    {
        const double Force = 1000.0, Expected = 1.0624e6;
        double[] deflections = new double[3], works = new double[3];
        for (int i = 0; i < 3; i++)
        {
            Bars bar = Bars.Of(2 << i);
            bar.EndShear(bar.Shape.Nx, -Force);
            bar.EndShear(0, Force);
            bar.EndMoment(0, -Force * Bars.Length);
            bar.Solver.Solve(TestContext.Current.CancellationToken);
            deflections[i] = Math.Abs((bar.Mean(0, 2) - bar.Turn(0) * Bars.Length - bar.Mean(bar.Shape.Nx, 2)) / Expected - 1.0);
            works[i] = Math.Abs(bar.Solver.Work(0) / (Force * Expected) - 1.0);
            double height = (bar.Across - 0.5) * bar.Edge - Bars.Depth / 2.0, moment = Force * (Bars.Length - (bar.Shape.Nx / 2 + 0.5) * bar.Edge);
            Assert.Equal(1.0, bar.Stress(bar.Shape.Nx / 2, bar.Across / 2, bar.Across - 1).Xx / (moment * height / Bars.Inertia), 1e-5);
        }

        Assert.All(deflections, error => Assert.InRange(error, 0.0, 0.011));
        Assert.All(works, error => Assert.InRange(error, 0.0, 0.011));
        Assert.InRange(Math.Log2(works[1] / works[2]), 1.7, 2.3);
        Assert.InRange(Math.Log2(deflections[1] / deflections[2]), 1.7, 2.3);
    }

    // The same bar on two ends under q = 1000 N/m of its own weight: 5 q L^4 / (384 E I) + q L^2 / (8 k G A) = 40000 + 4800 m at E = 1 Pa; greatest bending stress q L^2 / 8 over the
    // section modulus (Timoshenko's beam; Gere and Timoshenko, "Mechanics of materials", from memory). The beam theory leaves out the squeeze of the weight (order (h/L)^2).
    [Fact]
    public void Beam_on_two_ends_sags_and_is_stressed_as_the_theory_has_it()
    {
        const double Load = 1000.0, Expected = 44_800.0;
        double[] sags = new double[3];
        for (int i = 0; i < 3; i++)
        {
            Bars bar = Bars.Of(2 << i);
            bar.Weight(Load);
            bar.EndShear(0, 0.5 * Load * Bars.Length);
            bar.EndShear(bar.Shape.Nx, 0.5 * Load * Bars.Length);
            bar.Solver.Solve(TestContext.Current.CancellationToken);
            int middle = bar.Shape.Nx / 2;
            sags[i] = 0.5 * (bar.Mean(0, 2) + bar.Mean(bar.Shape.Nx, 2)) - bar.Mean(middle, 2);
            double height = 0.5 * bar.Edge - Bars.Depth / 2.0, aside = 0.5 * bar.Edge;
            double moment = Load * (Bars.Length * Bars.Length / 8.0 - aside * aside / 2.0);
            Assert.Equal(1.0, bar.Stress(middle, bar.Across / 2, 0).Xx / (-moment * height / Bars.Inertia), 0.05);
        }

        Assert.Equal(1.0, sags[2] / Expected, 0.01);
        Assert.InRange(Math.Log2((sags[0] - sags[1]) / (sags[1] - sags[2])), 1.5, 2.5);
    }

    // Patch test (Irons and Razzaque 1972, from memory): a straight displacement field u = (a1 + ...) x has one strain everywhere, so inside the body no force is left, and stresses are
    // Hooke's: strain (1, -2, 0.5; yz 0.3, zx -0.7, xy 0.4) 1e-3, E = 1 Pa, Poisson's ratio 0.25: lambda = mu = 0.4 Pa.
    [Fact]
    public void Straight_field_leaves_no_force_inside_and_hookes_stress_everywhere()
    {
        GridShape shape = new(8, 8, 8);
        BrickElement brick = new(0.03, 0.04, 0.05, 0.25);
        ElasticLevel level = new(shape, FilledMoments.Even(Full(shape)), brick, 1.0, new Parallelism(2));
        var field = level.Field();
        var force = level.Field();
        for (int node = 0; node < level.Nodes.Count; node++)
        {
            double x = node % 9 * 0.03, y = node / 9 % 9 * 0.04, z = node / 81 * 0.05;
            field[3 * node] = System.Runtime.Intrinsics.Vector256.Create(1e-3 * x + 0.4e-3 * y);
            field[3 * node + 1] = System.Runtime.Intrinsics.Vector256.Create(-2e-3 * y + 0.3e-3 * z);
            field[3 * node + 2] = System.Runtime.Intrinsics.Vector256.Create(0.5e-3 * z - 0.7e-3 * x);
        }

        level.Apply(field, force);
        double largest = force.Max(f => Math.Abs(f[0])), inside = 0.0;
        for (int node = 0; node < level.Nodes.Count; node++)
        {
            bool isInside = node % 9 is > 0 and < 8 && node / 9 % 9 is > 0 and < 8 && node / 81 is > 0 and < 8;
            inside = isInside ? Math.Max(inside, Enumerable.Range(0, 3).Max(c => Math.Abs(force[3 * node + c][0]))) : inside;
        }

        Assert.InRange(inside / largest, 0.0, 1e-13);

        // The same state brought about by its tractions on the faces.
        ElasticSolver solver = new(shape, Full(shape), brick, new Parallelism(2));
        for (int node = 0; node < level.Nodes.Count; node++)
        {
            for (int c = 0; c < 3; c++)
            {
                solver.AddForce(1, node % 9, node / 9 % 9, node / 81, c, force[3 * node + c][0]);
            }
        }

        solver.Solve(TestContext.Current.CancellationToken);
        Stress[] stresses = new Stress[8], none = new Stress[8];
        solver.StressesAt(1, 3, 5, 2, stresses);
        solver.StressesAt(0, 3, 5, 2, none);
        Stress hooke = new(0.6e-3, -1.8e-3, 0.2e-3, 0.12e-3, -0.28e-3, 0.16e-3);
        Assert.All(stresses, stress =>
        {
            Assert.Equal(hooke.Xx, stress.Xx, 1e-8);
            Assert.Equal(hooke.Yy, stress.Yy, 1e-8);
            Assert.Equal(hooke.Zz, stress.Zz, 1e-8);
            Assert.Equal(hooke.Yz, stress.Yz, 1e-8);
            Assert.Equal(hooke.Zx, stress.Zx, 1e-8);
            Assert.Equal(hooke.Xy, stress.Xy, 1e-8);
        });
        Assert.All(none, stress => Assert.Equal(default, stress));
    }

    // A body moved or turned as a whole is not strained, however it is filled.
    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    [InlineData(4)]
    [InlineData(5)]
    public void Rigid_motion_needs_no_force(int motion)
    {
        GridShape shape = new(5, 4, 3);
        // Every third brick is filled evenly, the others at two points each.
        float[] moments = FilledMoments.Even([.. Enumerable.Range(0, shape.Count).Select(i => i % 3 == 0 ? i * 7 % 11 / 10f : 0f)]);
        for (int i = 0; i < moments.Length; i++)
        {
            int brick = i / FilledMoments.Count, m = i % FilledMoments.Count;
            moments[i] += brick % 3 == 0 ? 0f : FilledStiffnessTests.PointMoment(m, 0.1 * (brick % 7), -0.3, 0.5) + FilledStiffnessTests.PointMoment(m, -0.9, 0.2, 0.1 * (brick % 5));
        }

        ElasticLevel level = new(shape, moments, new BrickElement(1.0, 1.0, 2.0, 0.2), 1.0, new Parallelism(1));
        var field = level.Field();
        var force = level.Field();
        for (int node = 0; node < level.Nodes.Count; node++)
        {
            double x = node % 6, y = node / 6 % 5, z = node / 30 * 2.0;
            double[] u = motion switch { 0 => [1, 0, 0], 1 => [0, 1, 0], 2 => [0, 0, 1], 3 => [0, -z, y], 4 => [z, 0, -x], _ => [-y, x, 0] };
            for (int c = 0; c < 3; c++)
            {
                field[3 * node + c] = System.Runtime.Intrinsics.Vector256.Create(u[c]);
            }
        }

        level.Apply(field, force);
        Assert.InRange(force.Max(f => Math.Abs(f[0])), 0.0, 1e-13);
    }

    // Pure bending of a bar one brick deep, Poisson's ratio 0.3: stress M z / I in its octants at a quarter of the depth, nothing across (Timoshenko and Goodier, section 102, from memory).
    [Fact]
    public void One_brick_bends_with_straight_stress_through_its_depth()
    {
        Bars bar = Bars.Of(1, 0.3);
        bar.EndMoment(bar.Shape.Nx, 50.0);
        bar.EndMoment(0, -50.0);
        bar.Solver.Solve(TestContext.Current.CancellationToken);
        Stress[] octants = new Stress[8];
        bar.Solver.StressesAt(0, 2, 0, 0, octants);
        double expected = 50.0 * Bars.Depth / 4.0 / Bars.Inertia;
        for (int octant = 0; octant < 8; octant++)
        {
            Assert.Equal(octant >> 2 == 1 ? 1.0 : -1.0, octants[octant].Xx / expected, 1e-4);
            Assert.Equal(0.0, octants[octant].Zz / expected, 1e-4);
            Assert.Equal(0.0, octants[octant].Zx / expected, 1e-4);
        }
    }

    [Fact]
    public void Forces_out_of_balance_are_refused()
    {
        GridShape shape = new(3, 3, 3);
        ElasticSolver solver = new(shape, Full(shape), new BrickElement(1.0, 1.0, 1.0, 0.2), new Parallelism(1));
        solver.AddLift(0, 1, 1, 2, 1.0);
        solver.AddLift(0, 0, 0, 0, -1.0);
        Assert.Throws<InvalidOperationException>(() => solver.Solve(TestContext.Current.CancellationToken));
    }

    [Fact]
    public void Threads_change_no_bit()
    {
        (ElasticSolver one, ElasticSolver two) = (Vault(24, 1), Vault(24, 2));
        one.Solve(TestContext.Current.CancellationToken);
        two.Solve(TestContext.Current.CancellationToken);
        Assert.Equal(one.Rounds, two.Rounds);
        for (int lane = 0; lane < 4; lane++)
        {
            Stress[] single = new Stress[8], pair = new Stress[8];
            one.StressesAt(lane, 11, 5, 3, single);
            two.StressesAt(lane, 11, 5, 3, pair);
            Assert.Equal(single, pair);
            Assert.Equal(one.Work(lane), two.Work(lane));
        }
    }

    [Fact]
    public void Rounds_hardly_grow_from_24_to_48_bricks()
    {
        (ElasticSolver few, ElasticSolver many) = (Vault(24, 2), Vault(48, 2));
        few.Solve(TestContext.Current.CancellationToken);
        many.Solve(TestContext.Current.CancellationToken);
        Assert.InRange((double)many.Rounds / few.Rounds, 0.5, 1.3);
    }

    [Fact]
    [Trait("Category", "Soak")]
    public void Rounds_hardly_grow_from_24_to_96_bricks()
    {
        (ElasticSolver few, ElasticSolver many) = (Vault(24, 2), Vault(96, 2));
        few.Solve(TestContext.Current.CancellationToken);
        many.Solve(TestContext.Current.CancellationToken);
        TestContext.Current.TestOutputHelper?.WriteLine($"{few.Rounds} rounds at 24, {many.Rounds} at 96");
        Assert.InRange((double)many.Rounds / few.Rounds, 0.5, 1.3);
    }

    // A cage of struts one brick thick, which the coarse grids take for a soft solid: more rounds, and an answer all the same. By statics the struts
    // cut by a plane carry what stands above it.
    [Fact]
    public void Cage_of_thin_struts_is_answered_too()
    {
        const int Bricks = 25;
        GridShape shape = new(Bricks, Bricks, Bricks);
        float[] filled = new float[shape.Count];
        for (int i = 0; i < filled.Length; i++)
        {
            bool x = i % Bricks % 6 == 0, y = i / Bricks % Bricks % 6 == 0, z = i / shape.Plane % 6 == 0;
            filled[i] = (x && y) || (y && z) || (z && x) ? 1f : 0f;
        }

        ElasticSolver solver = new(shape, filled, new BrickElement(0.04, 0.04, 0.04, 0.2), new Parallelism(2));
        double solid = filled.Sum(f => (double)f);
        for (int i = 0; i < filled.Length; i++)
        {
            (int x, int y, int z) = (i % Bricks, i / Bricks % Bricks, i / shape.Plane);
            solver.AddLift(0, x, y, z, -filled[i] / solid + (z == 0 && x % 24 == 0 && y % 24 == 0 ? 0.25 : 0.0));
        }

        solver.Solve(TestContext.Current.CancellationToken);
        Assert.InRange(solver.Left, 0.0, ElasticSolver.Tolerance);
        Stress[] octants = new Stress[8];
        double carried = 0.0, above = 0.0;
        for (int i = 0; i < filled.Length; i++)
        {
            (int x, int y, int z) = (i % Bricks, i / Bricks % Bricks, i / shape.Plane);
            above += filled[i] / solid * (z > 2 ? 1.0 : z == 2 ? 0.5 : 0.0);
            if (z == 2 && filled[i] > 0f)
            {
                solver.StressesAt(0, x, y, z, octants);
                carried -= octants.Average(stress => stress.Zz) * 0.04 * 0.04;
            }
        }

        Assert.Equal(above, carried, 0.01);
    }

    // A cube of 0.9 m with two crossing tunnels, standing on two edges, on the two others, and on the whole foot; no force in the last lane.
    private static ElasticSolver Vault(int bricks, int threads)
    {
        GridShape shape = new(bricks, bricks, bricks);
        float[] filled = Full(shape);
        int third = bricks / 3, eighth = bricks / 8;
        for (int i = 0; i < filled.Length; i++)
        {
            int x = i % bricks, y = i / bricks % bricks, z = i / shape.Plane;
            bool tunnel = (x >= third && x < 2 * third) || (y >= third && y < 2 * third);
            filled[i] = tunnel && z >= eighth && z < eighth + third ? 0f : 1f;
        }

        ElasticSolver solver = new(shape, filled, new BrickElement(0.9 / bricks, 0.9 / bricks, 0.9 / bricks, 0.2), new Parallelism(threads));
        double solid = filled.Sum(f => (double)f);
        for (int i = 0; i < filled.Length; i++)
        {
            int x = i % bricks, y = i / bricks % bricks, z = i / shape.Plane;
            bool[] bears = [x < eighth || x >= bricks - eighth, y < eighth || y >= bricks - eighth, true];
            double[] bearing = [2.0 * eighth * bricks, 2.0 * eighth * bricks, (double)bricks * bricks];
            for (int lane = 0; lane < 3; lane++)
            {
                solver.AddLift(lane, x, y, z, -filled[i] / solid + (z == 0 && bears[lane] ? 1.0 / bearing[lane] : 0.0));
            }
        }

        return solver;
    }

    private static float[] Full(GridShape shape)
    {
        float[] filled = new float[shape.Count];
        Array.Fill(filled, 1f);
        return filled;
    }
}
