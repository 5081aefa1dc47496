using System.Runtime.Intrinsics;
using Dewstone.Compute.Numerics;
using Dewstone.Model.Results;

namespace Dewstone.Compute.Strength;

/// <summary>One symmetric V-cycle over ever coarser grids: a fast approximate inverse of the stiffness.</summary>
/// <remarks>
/// Bricks are taken together by eights until at most <see cref="CoarsestBricks"/> stand along an axis; a coarse brick is filled as those eight are,
/// so that no matrix is ever stored but the coarsest. Each grid is relaxed before and after the coarser ones by <see cref="ChebyshevSteps"/>.
/// </remarks>
internal sealed class ElasticMultigrid
{
    /// <summary>Most bricks along an axis of the coarsest grid.</summary>
    public const int CoarsestBricks = 4;

    private readonly List<ElasticLevel> levels = [];
    private readonly List<Vector256<double>[]> forces = [], answers = [], rests = [], stepped = [];
    private readonly CoarsestSolve coarsest;
    private readonly ChebyshevSteps steps;

    /// <summary>Prepares the grids.</summary>
    /// <param name="finest">The grid to solve; its bricks along each axis are divisible by 2 as often as there are coarser grids.</param>
    /// <param name="brick">Stiffness of a full brick of it.</param>
    /// <param name="parallelism">Threads; no result depends on them.</param>
    public ElasticMultigrid(ElasticLevel finest, BrickElement brick, Parallelism parallelism)
    {
        double scale = 1.0;
        for (ElasticLevel level = finest; ; level = Coarser(level, brick, scale, parallelism))
        {
            levels.Add(level);
            forces.Add(level.Field());
            answers.Add(level.Field());
            rests.Add(level.Field());
            stepped.Add(level.Field());
            if (Math.Max(Math.Max(level.Shape.Nx, level.Shape.Ny), level.Shape.Nz) <= CoarsestBricks)
            {
                break;
            }

            scale *= 2.0;
        }

        coarsest = new CoarsestSolve(levels[^1], brick, scale);
        steps = ChebyshevSteps.Of(brick);
    }

    /// <summary>How many times a grid is halved, and to what its bricks along each axis must be rounded up.</summary>
    /// <param name="bricks">Most bricks along an axis.</param>
    /// <returns>A power of two.</returns>
    public static int Multiple(int bricks)
    {
        int multiple = 1;
        while ((bricks + multiple - 1) / multiple > CoarsestBricks)
        {
            multiple *= 2;
        }

        return multiple;
    }

    /// <summary>Answers forces.</summary>
    /// <param name="force">Three a node of the finest grid.</param>
    /// <param name="answer">Three a node; overwritten.</param>
    public void Apply(Vector256<double>[] force, Vector256<double>[] answer) => Cycle(0, force, answer);

    private void Cycle(int depth, Vector256<double>[] force, Vector256<double>[] answer)
    {
        if (depth == levels.Count - 1)
        {
            coarsest.Solve(force, answer);
            return;
        }

        ElasticLevel level = levels[depth], coarse = levels[depth + 1];
        Vector256<double>[] rest = rests[depth];
        steps.FromNothing(level, force, answer, rest, stepped[depth]);
        level.Rest(force, answer, rest);
        NodeTransfer.Gather(level, rest, coarse, forces[depth + 1]);
        Cycle(depth + 1, forces[depth + 1], answers[depth + 1]);
        NodeTransfer.AddUp(coarse, answers[depth + 1], level, answer);
        steps.Improve(level, force, answer, rest, stepped[depth]);
    }

    private static ElasticLevel Coarser(ElasticLevel fine, BrickElement brick, double scale, Parallelism parallelism)
    {
        GridShape many = fine.Shape;
        GridShape few = new(many.Nx / 2, many.Ny / 2, many.Nz / 2);
        float[] moments = new float[FilledMoments.Count * few.Count];
        for (int i = 0; i < 8 * few.Count; i++)
        {
            int eight = i >> 3, x = 2 * (eight % few.Nx), y = 2 * (eight / few.Nx % few.Ny), z = 2 * (eight / few.Plane);
            int child = many.Index(x + (i & 1), y + ((i >> 1) & 1), z + ((i >> 2) & 1));
            if (fine.Filled(child) > 0f)
            {
                FilledMoments.AddChild(fine.Moments(child), i & 7, moments.AsSpan(FilledMoments.Count * eight, FilledMoments.Count));
            }
        }

        return new ElasticLevel(few, moments, brick, scale, parallelism);
    }
}
