using System.Buffers.Binary;
using Dewstone.Compute.Geometry;
using Dewstone.Compute.Numerics;
using Dewstone.Jobs.Emission.Report;
using Dewstone.Jobs.Emission.Surfaces;
using Dewstone.Jobs.Tests.Emission.Pictures;
using Dewstone.Model.Quantities;
using Dewstone.Model.Results;

namespace Dewstone.Jobs.Tests.Emission.Report;

public sealed class ThinSurfaceTests
{
    private static readonly Parallelism TwoThreads = new(2);

    [Fact]
    public void Packed_ball_has_the_volume_of_a_ball()
    {
        // A ball of radius r = 70 mm encloses 4/3 pi r^3 = 1.43676 L. Read back from the page's bytes: sum of v0 . (v1 x v2) / 6 over the
        // triangles. Cells of 6.25 mm cost 0.6 % at r = 10 cells (see IsoSurface), steps of 16 bits nothing to speak of.
        CompiledJob job = SampleJob.Ball(cells: 8);
        SurfaceMesh mesh = ThinSurface.Of(job.Target.Fraction, job.Target.Grid, 0.5f, 100_000, TwoThreads);
        UnitSurface surface = UnitSurface.Of(mesh, job.Target.Grid, job.Placement, TwoThreads);
        Point3 low = new(-0.2, -0.2, -0.2);
        byte[] bytes = ViewerMesh.Pack(surface, low, 0.55);

        Assert.Equal(4.0 / 3.0 * Math.PI * 0.07 * 0.07 * 0.07, Volume(bytes, surface.Corners, low, 0.55), 1.2e-2 * 1.43676e-3);
        for (int i = 0; i < surface.Positions.Length; i++)
        {
            Assert.Equal(surface.Positions[i], Position(bytes, i, 0.55) - 0.2, 0.55 / 65_535.0);
        }
    }

    [Fact]
    public void Marks_of_a_corner_are_its_deviation_water_cement_and_whether_it_is_apart()
    {
        CompiledJob job = SampleJob.Ball();
        HardenedSurface level = HardenedSurface.Of(job.Moisture, job.Description.Mix.Wetting, TwoThreads);
        SurfaceMesh mesh = ThinSurface.Of(level.Level, level.Grid, 0f, 100_000, TwoThreads);
        PredictedSurface predicted = PredictedSurface.Of(mesh, job, ReefShapeBuilder.Build(job.Description.Unit).Shape, TwoThreads);
        bool[] apart = [.. Enumerable.Range(0, predicted.Surface.Corners).Select(corner => corner % 3 == 0)];
        byte[] bytes = ViewerMesh.Pack(predicted, apart, new Point3(-0.2, -0.2, -0.2), 0.55);
        int corners = predicted.Surface.Corners, marks = bytes.Length - 3 * corners;

        Assert.True(corners > 100);
        for (int i = 0; i < corners; i++)
        {
            float clipped = Math.Clamp(predicted.DeviationMillimetres[i], -25f, 25f);
            Assert.Equal(clipped, 25.0 / 127.0 * (bytes[marks + i] - 127), 0.5 * 25.0 / 127.0 + 1e-4);
            Assert.Equal(predicted.WaterCement[i], bytes[marks + corners + i] / 255.0, 0.5 / 255.0 + 1e-6);
            Assert.Equal(apart[i] ? 255 : 0, bytes[marks + 2 * corners + i]);
        }
    }

    [Fact]
    public void Block_thinned_out_keeps_its_volume_and_the_limit_of_triangles()
    {
        // Against the whole surface of the same field, which is not made by what is tested here.
        CompiledJob job = SampleJob.Block();
        HardenedSurface level = HardenedSurface.Of(job.Moisture, job.Description.Mix.Wetting, TwoThreads);
        SurfaceMesh whole = level.Mesh, thin = ThinSurface.Of(level.Level, level.Grid, 0f, 200_000, TwoThreads);

        Assert.True(whole.Triangles.Length / 3 > 3 * ThinSurface.MostTriangles);
        Assert.InRange(thin.Triangles.Length / 3, 30_000, ThinSurface.MostTriangles);
        Assert.Equal(1.0, thin.Volume / whole.Volume, 5e-3);
    }

    private static double Position(byte[] bytes, int slot, double span) => BinaryPrimitives.ReadUInt16LittleEndian(bytes.AsSpan(2 * slot)) * span / 65_535.0;

    private static double Volume(byte[] bytes, int corners, Point3 low, double span)
    {
        double volume = 0.0;
        int first = (6 * corners + 3) / 4 * 4;
        for (int at = first; at < bytes.Length; at += 12)
        {
            Point3 a = Corner(at), b = Corner(at + 4), c = Corner(at + 8);
            volume += (a.X * (b.Y * c.Z - b.Z * c.Y) + a.Y * (b.Z * c.X - b.X * c.Z) + a.Z * (b.X * c.Y - b.Y * c.X)) / 6.0;
        }

        return volume;

        Point3 Corner(int at)
        {
            int corner = BinaryPrimitives.ReadInt32LittleEndian(bytes.AsSpan(at));
            return low + new Point3(Position(bytes, 3 * corner, span), Position(bytes, 3 * corner + 1, span), Position(bytes, 3 * corner + 2, span));
        }
    }
}
