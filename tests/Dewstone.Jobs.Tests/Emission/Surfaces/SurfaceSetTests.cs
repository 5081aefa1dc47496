using System.Numerics;
using System.Text;
using Dewstone.Compute.Inspection;
using Dewstone.Jobs.Emission;
using Dewstone.Jobs.Emission.Surfaces;
using Dewstone.Jobs.Tests.Emission.Pictures;
using Dewstone.Model.Quantities;
using Dewstone.Model.Results;

namespace Dewstone.Jobs.Tests.Emission.Surfaces;

public sealed class SurfaceSetTests
{
    [Fact]
    public void Set_holds_three_files_in_order() =>
        Assert.Equal(["predicted.glb", "predicted.stl", "target.stl"], Emit(BallJob.Make(0.07)).Select(file => file.RelativePath));

    [Fact]
    public void Stl_is_laid_out_as_binary_and_its_normals_are_those_of_its_corners()
    {
        // Binary STL, from memory: 80 bytes that do not begin with "solid", uint32 count, 50 bytes a triangle, the last two 0.
        foreach (EmittedFile file in Emit(BallJob.Make(0.07)).Skip(1))
        {
            StlMesh mesh = new(file);

            Assert.StartsWith("dewstone ", Encoding.ASCII.GetString(mesh.Header), StringComparison.Ordinal);
            Assert.All(mesh.Header, value => Assert.InRange(value, 0, 126));
            for (int t = 0; t < mesh.Normals.Length; t++)
            {
                Vector3 a = mesh.Corners[mesh.Triangles[3 * t]];
                Vector3 across = Vector3.Cross(mesh.Corners[mesh.Triangles[3 * t + 1]] - a, mesh.Corners[mesh.Triangles[3 * t + 2]] - a);
                Assert.InRange(Vector3.Dot(mesh.Normals[t], across) - across.Length(), -1e-4f * across.Length(), 1e-4f * across.Length());
            }
        }
    }

    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    public void Surfaces_are_closed_balls_of_their_volume_in_the_unit_frame(int quarterTurns)
    {
        // V = 4/3 pi r^3; straight cuts through a ball of some 11 cells lie up to h^2 / (8 r) within it: 0.07 mm, three times that in volume.
        Point3 shift = new(0.004, -0.002, -0.003);
        CompiledJob job = BallJob.Make(0.065, shift, quarterTurns);
        IReadOnlyList<EmittedFile> files = Emit(job);
        Point3 middle = job.Placement.ToUnit(job.Placement.Corner + new Point3(0.075, 0.075, 0.075) + shift);

        AssertBall(new StlMesh(files[1]), middle, 0.065);
        AssertBall(new StlMesh(files[2]), new Point3(0.075, 0.075, 0.075), BallJob.WantedRadius);
    }

    [Fact]
    public void Predicted_volume_is_the_hardened_volume_that_masses_go_by()
    {
        CompiledJob job = BallJob.Make(0.07);

        double hardened = SolidMeasure.Measure(job.Target, job.Moisture, SampleJob.Surface(job), band: null).HardenedCubicMetres;

        Assert.Equal(1.0, new StlMesh(Emit(job)[1]).CubicMetres / hardened, 1e-5);
    }

    [Fact]
    public void Files_with_one_two_and_three_threads_are_the_same_bytes()
    {
        CompiledJob job = BallJob.Make(0.07);
        IReadOnlyList<EmittedFile> one = SurfaceSet.Emit(job, SampleJob.Surface(job), new Parallelism(1), TestContext.Current.CancellationToken);
        foreach (int threads in new[] { 2, 3 })
        {
            IReadOnlyList<EmittedFile> more = SurfaceSet.Emit(job, SampleJob.Surface(job), new Parallelism(threads), TestContext.Current.CancellationToken);
            Assert.All(one.Zip(more), pair => Assert.True(pair.First.Bytes.Span.SequenceEqual(pair.Second.Bytes.Span), pair.First.RelativePath));
        }
    }

    [Fact]
    public void Job_in_which_nothing_set_has_an_empty_surface()
    {
        IReadOnlyList<EmittedFile> files = Emit(BallJob.Make(0.0));

        Assert.Equal(84, files[1].Bytes.Length);
        Assert.Empty(GlbFileTests.Read(files[0]).LogicalMeshes);
        Assert.True(new StlMesh(files[2]).Triangles.Length > 0);
    }

    [Fact]
    public void Cancelled_set_stops()
    {
        using CancellationTokenSource source = new();
        source.Cancel();

        Assert.ThrowsAny<OperationCanceledException>(() => SurfaceSet.Emit(BallJob.Make(0.07), SampleJob.Surface(BallJob.Make(0.07)), new Parallelism(2), source.Token));
    }

    private static void AssertBall(StlMesh mesh, Point3 middle, double radius)
    {
        mesh.AssertClosed();
        Assert.Equal(2, mesh.Euler);
        Assert.Equal(1.0, mesh.CubicMetres / (4.0 / 3.0 * Math.PI * radius * radius * radius), 0.01);
        Assert.All(mesh.Corners, corner => Assert.Equal(
            1000.0 * radius, (corner - 1000f * new Vector3((float)middle.X, (float)middle.Y, (float)middle.Z)).Length(), 0.15));
    }

    private static IReadOnlyList<EmittedFile> Emit(CompiledJob job) => SurfaceSet.Emit(job, SampleJob.Surface(job), new Parallelism(2), TestContext.Current.CancellationToken);
}
