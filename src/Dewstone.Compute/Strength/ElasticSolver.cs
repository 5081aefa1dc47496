using System.Runtime.Intrinsics;
using Dewstone.Compute.Numerics;
using Dewstone.Model.Quantities;
using Dewstone.Model.Results;

namespace Dewstone.Compute.Strength;

/// <summary>
/// Displacements of a body of bricks that nothing holds, under up to four sets of forces in balance at once, by conjugate gradients with a multigrid
/// preconditioner.
/// </summary>
/// <remarks>
/// Linear elastic, isotropic, small displacements, Young's modulus 1 (stresses do not depend on it; displacements are in metres times the modulus in pascals). A partly
/// filled brick is stiff where it is filled. The body must hang together by faces of bricks; the displacement is told up to a rigid motion. Forces that are
/// not in balance have no answer and are a fault of the caller. Source of the iteration: Hestenes and Stiefel, 1952, "Methods of conjugate gradients for solving
/// linear systems" (from memory).
/// </remarks>
public sealed class ElasticSolver
{
    /// <summary>The answer is good when what is left of the forces is below this share of them, root of the sum of squares.</summary>
    public const double Tolerance = 1e-6;

    /// <summary>Forces are in balance when their sum, and that of their moments, is below this share of the sum of their amounts.</summary>
    public const double BalanceTolerance = 1e-9;

    /// <summary>Most rounds.</summary>
    public const int MostRounds = 2000;

    private readonly BrickElement brick;
    private readonly ElasticLevel level;
    private readonly ElasticMultigrid multigrid;

    /// <summary>Prepares a body of bricks that are each filled evenly.</summary>
    /// <param name="shape">Bricks along each axis.</param>
    /// <param name="filled">Share of each brick that is filled, 0 to 1; index order (z Ny + y) Nx + x.</param>
    /// <param name="brick">A full brick.</param>
    /// <param name="parallelism">Threads; no result depends on them.</param>
    public ElasticSolver(GridShape shape, ReadOnlySpan<float> filled, BrickElement brick, Parallelism parallelism)
        : this(brick, shape, FilledMoments.Even(filled), parallelism)
    {
    }

    /// <summary>Prepares a body of bricks of which parts are filled.</summary>
    /// <param name="brick">A full brick.</param>
    /// <param name="shape">Bricks along each axis.</param>
    /// <param name="moments">What of each is filled: 27 a brick as in <see cref="FilledMoments"/>.</param>
    /// <param name="parallelism">Threads; no result depends on them.</param>
    internal ElasticSolver(BrickElement brick, GridShape shape, ReadOnlySpan<float> moments, Parallelism parallelism)
    {
        ArgumentNullException.ThrowIfNull(brick);
        int multiple = ElasticMultigrid.Multiple(Math.Max(Math.Max(shape.Nx, shape.Ny), shape.Nz));
        GridShape padded = new(Up(shape.Nx, multiple), Up(shape.Ny, multiple), Up(shape.Nz, multiple));
        float[] all = new float[FilledMoments.Count * padded.Count];
        for (int row = 0; row < shape.Ny * shape.Nz; row++)
        {
            moments.Slice(FilledMoments.Count * row * shape.Nx, FilledMoments.Count * shape.Nx)
                .CopyTo(all.AsSpan(FilledMoments.Count * padded.Index(0, row % shape.Ny, row / shape.Ny)));
        }

        this.brick = brick;
        level = new ElasticLevel(padded, all, brick, 1.0, parallelism);
        multigrid = new ElasticMultigrid(level, brick, parallelism);
        Forces = level.Field();
        Displacements = level.Field();
    }

    /// <summary>A full brick.</summary>
    internal BrickElement Brick => brick;

    /// <summary>Rounds the last solution took.</summary>
    public int Rounds { get; private set; }

    /// <summary>Largest share of the forces left unanswered, over the lanes.</summary>
    public double Left { get; private set; }

    /// <summary>Forces at the nodes, N.</summary>
    private Vector256<double>[] Forces { get; }

    /// <summary>Displacements at the nodes, m Pa.</summary>
    private Vector256<double>[] Displacements { get; }

    /// <summary>Adds a force in the middle of a brick, which its eight corners share alike.</summary>
    /// <param name="lane">Set of forces, 0 to 3.</param>
    /// <param name="x">Brick along x.</param>
    /// <param name="y">Brick along y.</param>
    /// <param name="z">Brick along z.</param>
    /// <param name="newtons">Upward force, N.</param>
    public void AddLift(int lane, int x, int y, int z, double newtons) => AddLift(lane, (x, y, z), default, newtons);

    /// <summary>Adds a force at a point of a brick: its corners take it as displacements between them are straight, so neither force nor moments change.</summary>
    /// <param name="lane">Set of forces, 0 to 3.</param>
    /// <param name="at">Brick along x, y and z.</param>
    /// <param name="point">Place in the brick, each from -1 to 1.</param>
    /// <param name="newtons">Upward force, N.</param>
    internal void AddLift(int lane, (int X, int Y, int Z) at, Point3 point, double newtons)
    {
        for (int corner = 0; corner < 8; corner++)
        {
            (int x, int y, int z) = (corner & 1, (corner >> 1) & 1, corner >> 2);
            AddForce(lane, at.X + x, at.Y + y, at.Z + z, 2, newtons * Near(point.X, x) * Near(point.Y, y) * Near(point.Z, z));
        }

        static double Near(double place, int side) => 0.5 + (side == 0 ? -0.5 : 0.5) * place;
    }

    /// <summary>Adds a force at a node.</summary>
    /// <param name="lane">Set of forces, 0 to 3.</param>
    /// <param name="x">Node along x.</param>
    /// <param name="y">Node along y.</param>
    /// <param name="z">Node along z.</param>
    /// <param name="component">0 for x, 1 for y, 2 for z.</param>
    /// <param name="newtons">Force, N.</param>
    public void AddForce(int lane, int x, int y, int z, int component, double newtons)
    {
        int at = 3 * level.Nodes.Index(x, y, z) + component;
        Forces[at] = Forces[at].WithElement(lane, Forces[at].GetElement(lane) + newtons);
    }

    /// <summary>A displacement of the last solution.</summary>
    /// <param name="lane">Set of forces, 0 to 3.</param>
    /// <param name="x">Node along x.</param>
    /// <param name="y">Node along y.</param>
    /// <param name="z">Node along z.</param>
    /// <param name="component">0 for x, 1 for y, 2 for z.</param>
    /// <returns>Displacement times Young's modulus, m Pa.</returns>
    public double Displacement(int lane, int x, int y, int z, int component) => Displacements[3 * level.Nodes.Index(x, y, z) + component].GetElement(lane);

    /// <summary>Work of the forces on the displacements of the last solution: twice the energy stored.</summary>
    /// <param name="lane">Set of forces, 0 to 3.</param>
    /// <returns>Work times Young's modulus, J Pa.</returns>
    public double Work(int lane) => NodeFields.Dot(level, Forces, Displacements).GetElement(lane);

    /// <summary>Finds the displacements of the forces added so far.</summary>
    /// <param name="cancellation">Looked at every round.</param>
    /// <exception cref="InvalidOperationException">The forces are not in balance, or there is no answer within <see cref="MostRounds"/>: a body in pieces.</exception>
    /// <exception cref="OperationCanceledException">Cancelled.</exception>
    public void Solve(CancellationToken cancellation)
    {
        RequireBalance();
        Vector256<double>[] rest = level.Field(), answer = level.Field(), way = level.Field(), held = level.Field();
        Array.Clear(Displacements);
        Array.Copy(Forces, rest, rest.Length);
        Vector256<double> all = NodeFields.Dot(level, Forces, Forces), good = all * (Tolerance * Tolerance), earlier = default;
        Vector256<double> left = all;
        for (Rounds = 0; Vector256.GreaterThanAny(left, good); Rounds++)
        {
            cancellation.ThrowIfCancellationRequested();
            if (Rounds == MostRounds)
            {
                throw new InvalidOperationException($"The displacements do not settle: {Math.Sqrt(Largest(left, all)):0.###e+0} of the forces are left after {MostRounds} rounds.");
            }

            multigrid.Apply(rest, answer);
            Vector256<double> now = NodeFields.Dot(level, rest, answer), turn = Quotient(now, earlier);
            NodeFields.Each(level, (from, end) =>
            {
                for (int i = from; i < end; i++)
                {
                    way[i] = answer[i] + turn * way[i];
                }
            });
            level.Apply(way, held);
            Vector256<double> far = Quotient(now, NodeFields.Dot(level, way, held));
            NodeFields.Each(level, (from, end) =>
            {
                for (int i = from; i < end; i++)
                {
                    Displacements[i] += far * way[i];
                    rest[i] -= far * held[i];
                }
            });
            (earlier, left) = (now, NodeFields.Dot(level, rest, rest));
        }

        Left = Math.Sqrt(Largest(left, all));
    }

    /// <summary>Displacements within a brick, as <see cref="BrickElement.Motion"/> writes them.</summary>
    /// <param name="lane">Set of forces, 0 to 3.</param>
    /// <param name="x">Brick along x.</param>
    /// <param name="y">Brick along y.</param>
    /// <param name="z">Brick along z.</param>
    /// <param name="motion">Overwritten.</param>
    internal void MotionOf(int lane, int x, int y, int z, Span<double> motion)
    {
        Span<double> corners = stackalloc double[24];
        Corners(lane, x, y, z, corners);
        brick.Motion(corners, motion);
    }

    /// <summary>Stresses in the middles of the eight octants of a brick, of the material that fills it.</summary>
    /// <param name="lane">Set of forces, 0 to 3.</param>
    /// <param name="x">Brick along x.</param>
    /// <param name="y">Brick along y.</param>
    /// <param name="z">Brick along z.</param>
    /// <param name="stresses">Eight, corner order of <see cref="BrickElement"/>; overwritten.</param>
    public void StressesAt(int lane, int x, int y, int z, Span<Stress> stresses)
    {
        Span<double> corners = stackalloc double[24];
        Corners(lane, x, y, z, corners);
        brick.Stresses(corners, stresses);
    }

    private void Corners(int lane, int x, int y, int z, Span<double> displacements)
    {
        for (int i = 0; i < 24; i++)
        {
            int corner = i / 3;
            displacements[i] = Displacement(lane, x + (corner & 1), y + ((corner >> 1) & 1), z + (corner >> 2), i % 3);
        }
    }

    // Sums of forces and of moments about the grid's corner must vanish against the sums of their amounts.
    private void RequireBalance()
    {
        Span<Vector256<double>> sums = stackalloc Vector256<double>[6];
        Vector256<double> forces = default, moments = default;
        for (int node = 0; node < level.Nodes.Count; node++)
        {
            Vector256<double> fx = Forces[3 * node], fy = Forces[3 * node + 1], fz = Forces[3 * node + 2];
            double x = node % level.Nodes.Nx * brick.EdgeX, y = node / level.Nodes.Nx % level.Nodes.Ny * brick.EdgeY, z = node / level.Nodes.Plane * brick.EdgeZ;
            (sums[0], sums[1], sums[2]) = (sums[0] + fx, sums[1] + fy, sums[2] + fz);
            (sums[3], sums[4], sums[5]) = (sums[3] + y * fz - z * fy, sums[4] + z * fx - x * fz, sums[5] + x * fy - y * fx);
            Vector256<double> amount = Vector256.Abs(fx) + Vector256.Abs(fy) + Vector256.Abs(fz);
            (forces, moments) = (forces + amount, moments + (x + y + z) * amount);
        }

        for (int i = 0; i < 6; i++)
        {
            if (Vector256.GreaterThanAny(Vector256.Abs(sums[i]), BalanceTolerance * (i < 3 ? forces : moments)))
            {
                throw new InvalidOperationException("The forces are not in balance.");
            }
        }
    }

    private static int Up(int bricks, int multiple) => (bricks + multiple - 1) / multiple * multiple;

    // A lane without forces, or one that is answered to the last bit, has nothing over nothing: it stands still.
    private static Vector256<double> Quotient(Vector256<double> over, Vector256<double> under) =>
        Vector256.ConditionalSelect(Vector256.Equals(under, Vector256<double>.Zero), Vector256<double>.Zero, over / under);

    private static double Largest(Vector256<double> left, Vector256<double> all)
    {
        Vector256<double> shares = Quotient(left, all);
        return Math.Max(Math.Max(shares.GetElement(0), shares.GetElement(1)), Math.Max(shares.GetElement(2), shares.GetElement(3)));
    }
}
