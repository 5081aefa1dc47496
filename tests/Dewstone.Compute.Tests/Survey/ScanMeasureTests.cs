using Dewstone.Compute.Numerics;
using Dewstone.Compute.Survey;
using Dewstone.Model.Quantities;
using Dewstone.Model.Results;

namespace Dewstone.Compute.Tests.Survey;

public sealed class ScanMeasureTests
{
    private static readonly int[] Faces = [0, 2, 1, 1, 2, 3, 4, 5, 6, 5, 7, 6, 0, 1, 4, 1, 5, 4, 2, 6, 3, 3, 6, 7, 0, 4, 2, 2, 4, 6, 1, 3, 5, 3, 7, 5];

    // A block of 0.2 x 0.3 x 0.5 m encloses 0.03 m3. Closed form; far from the origin as scanners have it.
    [Fact]
    public void Closed_volume_of_a_block_is_its_edges_multiplied()
    {
        UnitScan block = Block(0.2f, 0.3f, 0.5f, 7f);
        Assert.Equal(0.03, ClosedVolume.Of(block)!.Value, 1e-6);
        Assert.Null(ClosedVolume.Of(block with { Positions = block.Positions[9..] }));
        Assert.Null(ClosedVolume.Of(block with { IsSurface = false }));
    }

    [Fact]
    public void Points_fill_large_triangles_and_thin_dense_places_evenly()
    {
        const double spacing = 0.01;
        float[] points = ScanPoints.Of(Block(0.2f, 0.3f, 0.5f, 0f), spacing);

        // Six faces of 0.62 m2 in boxes of 1 cm2, a little more where a face lies between boxes.
        Assert.InRange(points.Length / 3, 5000, 8000);
        float[] dense = [.. Enumerable.Range(0, 100_000).SelectMany(i => new[] { i % 100 * 1e-3f, i / 100 % 100 * 1e-3f, 0f })];
        Assert.Equal(100, ScanPoints.Of(new UnitScan { Positions = dense, IsSurface = false }, spacing).Length / 3);
    }

    // A ball of 0.2 m with a hollow of 0.1 m: outside 4/3 pi r^3 = 0.033510 m3 and 4 pi r^2 = 0.502655 m2. Closed form; at 20 cells a radius the mesh is 0.15 % short (C-909's bias of a distance field).
    [Fact]
    public void Outer_surface_leaves_out_enclosed_pockets()
    {
        SurfaceMesh mesh = HollowBall(0.2, 0.1);
        OuterSurface outside = OuterSurface.Of(mesh.Positions, mesh.Triangles);
        Assert.Equal(4.0 / 3.0 * Math.PI * 0.008, outside.CubicMetres, 0.003 * 0.0335);
        Assert.Equal(4.0 * Math.PI * 0.04, outside.SquareMetres, 0.003 * 0.5);
        Assert.True(outside.Triangles.Length < mesh.Triangles.Length);
        Assert.All(Enumerable.Range(0, outside.Positions.Length / 3), i => Assert.InRange(Radius(outside.Positions, i), 0.195, 0.205));
    }

    // Points 4 mm outside and 25 mm inside a ball of 0.2 m: their deviation is that, whatever direction they lie in.
    [Fact]
    public void Deviation_has_size_and_sign_and_places()
    {
        SurfaceMesh mesh = HollowBall(0.2, 0.0);
        SurveyedSurface surface = new(mesh.Positions, mesh.Triangles);
        Random draws = new(3);
        List<float> scan = [];
        for (int i = 0; i < 4000; i++)
        {
            Point3 d = new(draws.NextDouble() - 0.5, draws.NextDouble() - 0.5, draws.NextDouble() - 0.5);
            double radius = d.Norm is var norm && d.X > 0.45 * norm * 2.0 ? 0.175 : 0.204;
            Point3 p = d * (radius / norm) + new Point3(0.25, 0.25, 0.25);
            scan.AddRange([(float)p.X, (float)p.Y, (float)p.Z]);
        }

        scan.AddRange([2f, 2f, 2f]);
        ScanDeviation deviation = ScanDeviation.Measure([.. scan], RigidMotion.None, surface, new Parallelism(2))!;
        Assert.Equal(1, deviation.Stray);
        Assert.All(deviation.Points.Zip(deviation.Metres), p => Assert.Equal((p.First - new Point3(0.25, 0.25, 0.25)).Norm - 0.2, p.Second, 0.0008));
        Assert.Equal(0.004, deviation.Percentile(0.5), 0.0005);
        Assert.NotEmpty(deviation.Places);
        Assert.All(deviation.Places, p => Assert.Equal(-0.025, p.MeanMetres, 0.001));
        Assert.All(deviation.Places, p => Assert.True(p.Where.X > 0.25));
    }

    private static UnitScan Block(float x, float y, float z, float from) => new()
    {
        IsSurface = true,
        Positions = [.. Faces.SelectMany(c => new[] { from + (c & 1) * x, from + (c >> 1 & 1) * y, from + (c >> 2) * z })],
    };

    private static SurfaceMesh HollowBall(double outer, double inner)
    {
        const double cell = 0.01;
        GridShape shape = new(50, 50, 50);
        float[] field = new float[shape.Count];
        for (int i = 0; i < field.Length; i++)
        {
            double r = new Point3((i % 50 + 0.5) * cell - 0.25, (i / 50 % 50 + 0.5) * cell - 0.25, (i / 2500 + 0.5) * cell - 0.25).Norm;
            field[i] = (float)Math.Min(outer - r, r - inner);
        }

        return IsoSurface.At(field, shape, new CellSize(cell, cell), 0f, new Parallelism(2));
    }

    private static double Radius(float[] p, int i) => new Point3(p[3 * i] - 0.25, p[3 * i + 1] - 0.25, p[3 * i + 2] - 0.25).Norm;
}
