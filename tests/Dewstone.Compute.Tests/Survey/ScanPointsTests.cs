using Dewstone.Compute.Survey;
using Dewstone.Model.Results;

namespace Dewstone.Compute.Tests.Survey;

public sealed class ScanPointsTests
{
    // A right triangle of 300 x 5 mm filled at 10 mm: whichever corner is named first, its length is covered without a gap. Points of a filling with n
    // steps lie 300/n mm apart at most, so no gap is wider than the spacing; the outermost lie a third of a step from the corners.
    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(2)]
    public void Long_triangle_is_filled_along_its_longest_edge(int first)
    {
        float[][] corners = [[0f, 0f, 0f], [0.3f, 0f, 0f], [0f, 0.005f, 0f]];
        UnitScan scan = new() { IsSurface = true, Positions = [.. Enumerable.Range(0, 3).SelectMany(i => corners[(i + first) % 3])] };

        float[] points = ScanPoints.Of(scan, 0.01);

        double[] along = [.. points.Where((_, i) => i % 3 == 0).Select(x => (double)x).Order()];
        Assert.InRange(along[0], 0.0, 0.01);
        Assert.InRange(along[^1], 0.28, 0.3);
        Assert.All(along.Zip(along.Skip(1)), pair => Assert.InRange(pair.Second - pair.First, 0.0, 0.0201));
        Assert.InRange(along.Length, 28, 31);
    }

    // Two points in one box of 10 mm, one in the next: the first of a box is kept, in the scan's order.
    [Fact]
    public void Points_are_thinned_to_the_first_of_each_box()
    {
        UnitScan scan = new() { IsSurface = false, Positions = [0.012f, 0.001f, 0.001f, 0.001f, 0.001f, 0.001f, 0.009f, 0.002f, 0.003f] };
        Assert.Equal([0.012f, 0.001f, 0.001f, 0.001f, 0.001f, 0.001f], ScanPoints.Of(scan, 0.01));
    }
}
