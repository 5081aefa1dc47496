using Dewstone.Jobs.Emission.Pictures.Plates;

namespace Dewstone.Jobs.Tests.Emission.Pictures.Plates;

public sealed class LevelLineTests
{
    // Circle of radius 12.3 cells: length 2 pi r.
    [Fact]
    public void Line_of_a_disc_has_its_circumference_and_lies_on_it()
    {
        const int Side = 40;
        const double Radius = 12.3;
        float[] level = new float[Side * Side];
        for (int i = 0; i < level.Length; i++)
        {
            level[i] = (float)(Radius - Distance(i % Side, i / Side));
        }

        List<LevelLine.Segment> line = LevelLine.Of(level, Side, Side);

        Assert.Equal(2.0 * Math.PI * Radius, line.Sum(s => Math.Sqrt((s.X1 - s.X0) * (s.X1 - s.X0) + (s.Y1 - s.Y0) * (s.Y1 - s.Y0))), 0.3);
        Assert.All(line, s => Assert.Equal(Radius, Distance(s.X0, s.Y0), 0.02));
        static double Distance(double x, double y) => Math.Sqrt((x - 19.7) * (x - 19.7) + (y - 20.1) * (y - 20.1));
    }

    [Fact]
    public void Every_point_of_a_line_that_stays_inside_joins_two_pieces()
    {
        const int Side = 24;
        float[] level = new float[Side * Side];
        for (int i = 0; i < level.Length; i++)
        {
            int x = i % Side, y = i / Side;
            level[i] = x is 0 or Side - 1 || y is 0 or Side - 1 ? -1f : (float)(Math.Sin(1.3 * x + 0.7 * y) + Math.Cos(1.9 * y - 0.4 * x) - 0.1);
        }

        List<LevelLine.Segment> line = LevelLine.Of(level, Side, Side);

        Assert.True(line.Count > 50);
        Assert.All(line.SelectMany(s => new[] { (s.X0, s.Y0), (s.X1, s.Y1) }).CountBy(point => point), ends => Assert.Equal(2, ends.Value));
    }

    [Theory]
    [InlineData(1f, -1f, 1f, -1f)]
    [InlineData(-1f, 1f, -1f, 1f)]
    public void Saddle_is_split_by_the_mean_of_its_corners(float a, float b, float c, float d)
    {
        // Corners in turn; with the inside ones raised the two insides are joined, so both pieces cut off an outside corner.
        float[] Raised(float by) => [a + (a > 0 ? by : 0), b + (b > 0 ? by : 0), d + (d > 0 ? by : 0), c + (c > 0 ? by : 0)];
        bool insideFirst = a > 0f;

        List<LevelLine.Segment> joined = LevelLine.Of(Raised(1f), 2, 2), apart = LevelLine.Of(Raised(-0.5f), 2, 2);

        Assert.Equal(2, joined.Count);
        Assert.Equal(2, apart.Count);
        Assert.Equal(!insideFirst, joined.Any(s => CutsOffOrigin(s)));
        Assert.Equal(insideFirst, apart.Any(s => CutsOffOrigin(s)));
        static bool CutsOffOrigin(LevelLine.Segment s) => Math.Min(s.X0, s.X1) == 0f && Math.Min(s.Y0, s.Y1) == 0f && Math.Max(s.X0, s.X1) < 1f && Math.Max(s.Y0, s.Y1) < 1f;
    }
}
