using Dewstone.Compute.Numerics;
using Dewstone.Compute.Survey;
using Dewstone.Model.Quantities;
using Dewstone.Model.Results;

namespace Dewstone.Compute.Tests.Survey;

/// <summary>
/// A known rigid motion on a thinned, noisy scan. The body is given by its exact distance (a box with a ball cut out of one corner and a bar through a face); the
/// predicted surface is its mesh on cells of 8 mm, the scan points lie on the exact surface, so that neither is made from the other.
/// </summary>
public sealed class ScanRegistrarTests
{
    private const double Noise = 0.0008;

    private static readonly SurveyedSurface Surface = Mesh();

    [Theory]
    [InlineData(1, 0.0, 0.0)]
    [InlineData(2, 5.0, 0.05)]
    [InlineData(3, 10.0, 0.10)]
    [InlineData(4, 15.0, 0.15)]
    [InlineData(5, 20.0, 0.15)]
    [InlineData(6, 20.0, 0.15)]
    [InlineData(7, 20.0, 0.15)]
    [InlineData(8, 20.0, 0.15)]
    [InlineData(9, 20.0, 0.15)]
    [InlineData(10, 20.0, 0.15)]
    public void Known_motion_of_a_noisy_scan_is_recovered_to_a_millimetre_and_a_fifth_of_a_degree(int seed, double degrees, double metres)
    {
        Random draws = new(seed);
        RigidMotion motion = RigidMotion.Of(Direction(draws) * (degrees * Math.PI / 180.0), Direction(draws) * metres);
        ScanRegistration found = ScanRegistrar.Register(Scan(draws, 3000, motion, _ => true), Surface, TestContext.Current.CancellationToken);
        AssertBack(motion, found);
        Assert.InRange(found.RootMeanSquareMetres, 0.3 * Noise, 3.0 * Noise);
        Assert.True(found.NearShare > 0.95);
    }

    [Theory]
    [InlineData(11)]
    [InlineData(12)]
    [InlineData(13)]
    public void Scan_without_its_underside_and_with_stray_points_is_recovered_too(int seed)
    {
        Random draws = new(seed);
        RigidMotion motion = RigidMotion.Of(Direction(draws) * (12.0 * Math.PI / 180.0), Direction(draws) * 0.15);
        float[] scan = Scan(draws, 3000, motion, p => p.Z > 0.04);
        float[] stray = [.. Enumerable.Range(0, 100).SelectMany(_ => Parts(motion.Back().Apply(new Point3(draws.NextDouble(), draws.NextDouble(), draws.NextDouble()))))];
        AssertBack(motion, ScanRegistrar.Register([.. scan, .. stray], Surface, TestContext.Current.CancellationToken));
    }

    [Theory]
    [InlineData(90.0)]
    [InlineData(180.0)]
    [InlineData(250.0)]
    public void Scan_turned_about_the_vertical_is_found(double degrees)
    {
        RigidMotion motion = RigidMotion.Of(new Point3(0.0, 0.0, degrees * Math.PI / 180.0), new Point3(3.0, -2.0, 0.5));
        AssertBack(motion, ScanRegistrar.Register(Scan(new Random(14), 3000, motion, _ => true), Surface, TestContext.Current.CancellationToken));
    }

    [Fact]
    public void Motion_and_its_way_back_are_none()
    {
        RigidMotion motion = RigidMotion.Of(new Point3(0.3, -0.2, 0.5), new Point3(1.0, 2.0, 3.0));
        RigidMotion none = motion.Then(motion.Back());
        Assert.Equal(0.0, none.Radians, 1e-14);
        Assert.Equal(0.0, none.Shift.Norm, 1e-14);
        Assert.Equal(new Point3(0.3, -0.2, 0.5).Norm, motion.Radians, 1e-14);
    }

    // The scan was moved away by the inverse of what is to be found; the error is told at the body's middle.
    private static void AssertBack(RigidMotion motion, ScanRegistration found)
    {
        RigidMotion error = motion.Back().Then(found.Motion);
        Point3 middle = new(0.3, 0.25, 0.2);
        double metres = (error.Apply(middle) - middle).Norm, degrees = error.Radians * 180.0 / Math.PI;
        TestContext.Current.TestOutputHelper?.WriteLine($"{1000.0 * metres:0.000} mm, {degrees:0.0000} degrees");
        Assert.InRange(metres, 0.0, 0.001);
        Assert.InRange(degrees, 0.0, 0.2);
    }

    private static float[] Scan(Random draws, int count, RigidMotion motion, Func<Point3, bool> isSeen)
    {
        RigidMotion away = motion.Back();
        List<float> scan = [];
        while (scan.Count < 3 * count)
        {
            Point3 p = new(0.7 * draws.NextDouble() - 0.05, 0.6 * draws.NextDouble() - 0.05, 0.5 * draws.NextDouble() - 0.05);
            for (int i = 0; i < 12; i++)
            {
                p -= Slope(p) * Distance(p);
            }

            if (Math.Abs(Distance(p)) < 1e-5 && isSeen(p))
            {
                scan.AddRange(Parts(away.Apply(p + Slope(p) * (Noise * Normal(draws)))));
            }
        }

        return [.. scan];
    }

    private static IEnumerable<float> Parts(Point3 p) => [(float)p.X, (float)p.Y, (float)p.Z];

    private static double Distance(Point3 p)
    {
        double box = Box(p, new Point3(0.3, 0.25, 0.2), new Point3(0.3, 0.25, 0.2));
        double ball = (p - new Point3(0.6, 0.0, 0.4)).Norm - 0.18;
        double bar = Box(p, new Point3(0.2, 0.5, 0.25), new Point3(0.08, 0.2, 0.06));
        return Math.Max(box, Math.Max(-ball, -bar));
    }

    // Exact distance of a block with its middle and half edges.
    private static double Box(Point3 p, Point3 middle, Point3 half)
    {
        double x = Math.Abs(p.X - middle.X) - half.X, y = Math.Abs(p.Y - middle.Y) - half.Y, z = Math.Abs(p.Z - middle.Z) - half.Z;
        return new Point3(Math.Max(x, 0.0), Math.Max(y, 0.0), Math.Max(z, 0.0)).Norm + Math.Min(Math.Max(x, Math.Max(y, z)), 0.0);
    }

    private static Point3 Slope(Point3 p)
    {
        const double h = 1e-6;
        Point3 slope = new(
            Distance(p + new Point3(h, 0.0, 0.0)) - Distance(p - new Point3(h, 0.0, 0.0)), Distance(p + new Point3(0.0, h, 0.0)) - Distance(p - new Point3(0.0, h, 0.0)),
            Distance(p + new Point3(0.0, 0.0, h)) - Distance(p - new Point3(0.0, 0.0, h)));
        return slope.Norm > 0.0 ? slope * (1.0 / slope.Norm) : default;
    }

    private static SurveyedSurface Mesh()
    {
        const double cell = 0.008;
        GridShape shape = new(85, 73, 60);
        float[] field = new float[shape.Count];
        for (int i = 0; i < field.Length; i++)
        {
            Point3 p = new((i % shape.Nx + 0.5) * cell - 0.04, (i / shape.Nx % shape.Ny + 0.5) * cell - 0.04, (i / shape.Plane + 0.5) * cell - 0.04);
            field[i] = (float)-Distance(p);
        }

        SurfaceMesh mesh = IsoSurface.At(field, shape, new CellSize(cell, cell), 0f, new Parallelism(2));
        return new SurveyedSurface([.. mesh.Positions.Select(v => v - 0.04f)], mesh.Triangles);
    }

    private static Point3 Direction(Random draws)
    {
        Point3 p = new(Normal(draws), Normal(draws), Normal(draws));
        return p * (1.0 / p.Norm);
    }

    // Box and Muller, 1958; from memory.
    private static double Normal(Random draws) => Math.Sqrt(-2.0 * Math.Log(1.0 - draws.NextDouble())) * Math.Cos(2.0 * Math.PI * draws.NextDouble());
}
