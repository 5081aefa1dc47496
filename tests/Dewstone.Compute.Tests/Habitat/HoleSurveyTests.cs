using Dewstone.Compute.Habitat;
using Dewstone.Model.Quantities;
using Dewstone.Model.Results;

namespace Dewstone.Compute.Tests.Habitat;

/// <summary>Limits of a hole, on cells of 1 cm3: a blind hole from the west side of a block of 200 mm, 5 x 4 cells wide, whose reaches are given by hand.</summary>
public sealed class HoleSurveyTests
{
    private static readonly WaterField Field = Waters.Field(
        new Size3(0.2, 0.2, 0.2), 0.01, p => Waters.Block(p, new Point3(0, 0, 0), new Point3(0.2, 0.2, 0.2)), 0.02);

    // What lies less than 20 mm behind the reach of the largest ball is no hole; a rule of ours. Five cells deep: 20 mm, and 40 mm from the innermost cell to the mouth.
    [Theory]
    [InlineData(0.0199f, false)]
    [InlineData(0.0201f, true)]
    public void Hole_is_deeper_than_twenty_millimetres(float depth, bool isHole)
    {
        IReadOnlyList<HabitatHole> holes = Find(depth, 0.02f, 100);
        Assert.Equal(isHole ? 1 : 0, holes.Count);
        Assert.All(holes, hole => Assert.Equal((100.0, 1, 40.0, 60.0), (Math.Round(1e6 * hole.CubicMetres, 3), hole.Exits, Math.Round(1e3 * hole.MouthMetres, 3), Math.Round(1e3 * hole.DepthMetres, 3))));
    }

    // The least hole of 42 cm3 and the least entrance of 30 mm are the sizes met by Menard et al., 2012, PLoS ONE 7, e38450.
    [Theory]
    [InlineData(41, 0.02f, false)]
    [InlineData(43, 0.02f, true)]
    [InlineData(100, 0.0149f, false)]
    [InlineData(100, 0.0151f, true)]
    public void Hole_has_the_least_volume_and_entrance(int cells, float clearance, bool isHole) => Assert.Equal(isHole ? 1 : 0, Find(0.1f, clearance, cells).Count);

    // The same cells a cell further west lie outside of the box: water there is no hole.
    [Fact]
    public void Water_beside_the_box_is_no_hole()
    {
        Assert.Equal(80.0, 1e6 * Assert.Single(Find(0.1f, 0.02f, 100, west: 1)).CubicMetres, 1e-3);
        Assert.Empty(Find(0.1f, 0.02f, 100, west: 5));
    }

    private static IReadOnlyList<HabitatHole> Find(float depth, float clearance, int cells, int west = 0)
    {
        float[] small = new float[Field.Shape.Count], large = new float[Field.Shape.Count], clearances = new float[Field.Shape.Count];
        int first = Array.FindIndex(Field.InBoxX, share => share >= 0.5);
        for (int i = 0; i < small.Length; i++)
        {
            (small[i], large[i]) = i % Field.Shape.Nx < first ? (-1f, -1f) : (1f, 1f);
        }

        for (int n = 0; n < cells; n++)
        {
            int at = Field.Shape.Index(first - west + n / 20, 10 + n % 5, 10 + n / 5 % 4);
            (small[at], large[at], clearances[at]) = (-1f, depth, clearance);
        }

        return HoleSurvey.Find(Field, clearances, small, large, Waters.Two);
    }
}
