using Dewstone.Compute.Numerics;
using Dewstone.Model.Results;

namespace Dewstone.Compute.Tests.Numerics;

/// <summary>Every operation gives the same bits with 1, 2 and 5 threads.</summary>
public sealed class ThreadCountTests
{
    private static readonly (float[] Field, GridShape Shape)[] All =
        [RandomSolids.Noise(), RandomSolids.Balls(), RandomSolids.BlockWithoutBalls()];

    [Fact]
    public void Distances_do_not_depend_on_threads() => Check((_, cells, shape, threads) =>
        (DistanceTransform.Squared(cells, shape, Phase.Empty, OutsideCells.Ignored, threads),
            DistanceTransform.Squared(cells, shape, new CellSize(0.7, 0.9), Phase.Set, OutsideCells.Set, threads)) is var (a, b)
            ? [.. a.Select(value => (double)value), .. b.Select(value => (double)value)]
            : []);

    [Fact]
    public void Labels_do_not_depend_on_threads() => Check((_, cells, shape, threads) =>
        [.. Components.Label(cells, shape, Phase.Set, Connectivity.Faces, threads).Labels.Select(value => (double)value)]);

    [Fact]
    public void Surfaces_do_not_depend_on_threads() => Check((field, _, shape, threads) =>
    {
        SurfaceMesh mesh = IsoSurface.At(field, shape, new CellSize(1.0, 1.1), 0.05f, threads);
        return [mesh.Area, mesh.Volume, .. mesh.Positions.Select(value => (double)value), .. mesh.Triangles.Select(value => (double)value)];
    });

    [Fact]
    public void Thinned_surfaces_do_not_depend_on_threads() => Check((field, _, shape, threads) =>
    {
        SurfaceMesh mesh = SurfaceDecimator.ToAtMost(IsoSurface.At(field, shape, CellSize.Unit, 0.05f, threads), 2000, threads);
        return [mesh.Area, mesh.Volume, .. mesh.Positions.Select(value => (double)value), .. mesh.Triangles.Select(value => (double)value)];
    });

    private static void Check(Func<float[], byte[], GridShape, Parallelism, double[]> run)
    {
        foreach ((float[] field, GridShape shape) in All)
        {
            byte[] cells = RandomSolids.Cells(field);
            double[] one = run(field, cells, shape, new Parallelism(1));

            Assert.NotEmpty(one);
            Assert.Equal(one, run(field, cells, shape, new Parallelism(2)));
            Assert.Equal(one, run(field, cells, shape, new Parallelism(5)));
        }
    }
}
