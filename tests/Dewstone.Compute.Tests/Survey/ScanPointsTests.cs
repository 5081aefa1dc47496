using Dewstone.Compute.Survey;
using Dewstone.Model.Results;

namespace Dewstone.Compute.Tests.Survey;

public sealed class ScanPointsTests
{
    // An obtuse triangle of 300 x 100 mm filled at 10 mm, whichever corner is named first: the same boxes hold points, and as many as its area at least
    // (0.5 x 300 x 100 mm2 / 100 mm2 = 150), which filling by a shorter edge than the longest would miss.
    [Fact]
    public void Triangle_is_filled_alike_from_every_corner()
    {
        float[][] corners = [[0.001f, 0.002f, 0.005f], [0.301f, 0.002f, 0.005f], [0.151f, 0.102f, 0.005f]];
        HashSet<(int, int)>[] filled = [.. Enumerable.Range(0, 3).Select(first => Boxes(
            ScanPoints.Of(new UnitScan { IsSurface = true, Positions = [.. Enumerable.Range(0, 3).SelectMany(i => corners[(i + first) % 3])] }, 0.01)))];
        Assert.InRange(filled[0].Count, 150, 210);
        Assert.All(filled, boxes => Assert.True(boxes.SetEquals(filled[0])));
    }

    // A sliver with two long edges: one point at its middle where only the short edge is looked at.
    [Fact]
    public void Sliver_is_filled_along_its_length_from_every_corner()
    {
        float[][] corners = [[0.001f, 0.002f, 0.005f], [0.301f, 0.002f, 0.005f], [0.001f, 0.003f, 0.005f]];
        Assert.All(Enumerable.Range(0, 3), first => Assert.InRange(
            Boxes(ScanPoints.Of(new UnitScan { IsSurface = true, Positions = [.. Enumerable.Range(0, 3).SelectMany(i => corners[(i + first) % 3])] }, 0.01)).Count, 28, 31));
    }

    // Two points in one box of 10 mm, one in the next: the first of a box is kept, in the scan's order.
    [Fact]
    public void Points_are_thinned_to_the_first_of_each_box()
    {
        UnitScan scan = new() { IsSurface = false, Positions = [0.012f, 0.001f, 0.001f, 0.001f, 0.001f, 0.001f, 0.009f, 0.002f, 0.003f] };
        Assert.Equal([0.012f, 0.001f, 0.001f, 0.001f, 0.001f, 0.001f], ScanPoints.Of(scan, 0.01));
    }

    private static HashSet<(int, int)> Boxes(float[] points) =>
        [.. Enumerable.Range(0, points.Length / 3).Select(i => ((int)(points[3 * i] / 0.01f), (int)(points[3 * i + 1] / 0.01f)))];
}
