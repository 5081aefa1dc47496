using Dewstone.Compute.Tests.Numerics;
using Dewstone.Model.Quantities;
using Dewstone.Model.Results;

namespace Dewstone.Compute.Tests.Wetting;

/// <summary>
/// One dose in a bed that lies all spread, no gravity, against the exact point source of Barenblatt (1952) and Pattle (1959), see
/// <see cref="PointSource"/>. Reference mix: porosity 0.383947, D1 = 3.2e-6 m2/s, m = 4, hardened from water/cement 0.22 (content 0.0935).
/// A dose starts as a saturated small ball in the middle voxel, not as a point, which is forgotten within some minutes.
/// </summary>
public sealed class FreeBallTests
{
    private static MoistureResult Ball(double millilitres, double seconds, int cells = 8) =>
        new SmallJob(3, 3, 3, cells).Dose(1, 1, 1, millilitres).Solve(ReferenceMix.Bed(seconds));

    private static double Diameter(MoistureResult result) => SmallJob.EquivalentDiameter(SmallJob.Surface(result).VolumeCubicMetres());

    // After 600 s: exact diameter of the part at content 0.0935 or more, mm, and water/cement in the middle. Grid of 8 cells a pitch (6.35 mm),
    // so 1 mm is a sixth of a cell. Mean of the eight middle cells against the exact middle: 3 %.
    [Theory]
    [InlineData(10.0, 50.11, 0.428)]
    [InlineData(20.0, 61.83, 0.472)]
    [InlineData(30.0, 69.77, 0.500)]
    [InlineData(35.0, 73.04, 0.512)]
    [InlineData(40.0, 75.97, 0.521)]
    public void Ball_after_600_s_is_the_exact_point_source(double millilitres, double diameter, double middle)
    {
        PointSource exact = new(4, ReferenceMix.Porosity, millilitres * 1e-6, 3.2e-6);
        double threshold = 0.22 * 0.425 / ReferenceMix.Porosity;
        Assert.Equal(diameter, 2000.0 * exact.RadiusAtSaturation(threshold, 600.0), 0.01);
        Assert.Equal(middle, exact.CentreSaturation(600.0) * ReferenceMix.Porosity / 0.425, 0.001);

        MoistureResult result = Ball(millilitres, 600.0);
        Assert.Equal(diameter, Diameter(result), 1.0);
        double solved = result.WaterCement((12 * 24 + 12) * 24 + 12);
        Assert.InRange(solved / middle, 0.97, 1.03);
    }

    // The same along the axes and the space diagonal of the cells: a ball, not a rounded cube. Exact radius 36.52 mm, tolerance half a cell
    // (1.59 mm at 16 cells a pitch): on a line that runs between cells the grid shows most.
    [Theory]
    [InlineData(1, 0, 0)]
    [InlineData(0, -1, 0)]
    [InlineData(0, 0, 1)]
    [InlineData(1, 1, 1)]
    public void Ball_is_as_wide_in_every_direction(int x, int y, int z)
    {
        LevelSurface surface = SmallJob.Surface(Ball(35.0, 600.0, 16));
        double middle = 1.5 * ReferenceMix.Pitch;
        double radius = 1000.0 * surface.CrossingMetres(new Point3(middle, middle, middle), new Point3(x, y, z));
        Assert.Equal(73.04 / 2.0, radius, 1000.0 * ReferenceMix.Pitch / 32.0);
    }

    // Growth of a ball of 35 mL, mm: it never stops at a set radius. Exact +-2 mm; at 60 s the saturated start still shows (62.9 mm from a
    // point), so 62 to 69 mm. 12 cells a pitch: at 8 the ball of 300 s reads 72.2 mm, at 24 cells 70.4 mm.
    [Theory]
    [InlineData(60.0, 62.0, 69.0)]
    [InlineData(300.0, 68.1, 72.1)]
    [InlineData(600.0, 71.0, 75.0)]
    [InlineData(1200.0, 73.6, 77.6)]
    [InlineData(3600.0, 75.5, 79.5)]
    public void Ball_of_35_mL_keeps_growing_at_the_exact_rate(double seconds, double least, double most)
    {
        PointSource exact = new(4, ReferenceMix.Porosity, 35e-6, 3.2e-6);
        double diameter = 2000.0 * exact.RadiusAtSaturation(0.22 * 0.425 / ReferenceMix.Porosity, seconds);
        Assert.InRange(diameter, least, most);
        Assert.InRange(Diameter(Ball(35.0, seconds, 12)), least, most);
    }

    // The error must fall as cells get smaller. Exact 73.04 mm.
    [Fact]
    public void Ball_nears_the_exact_size_as_cells_get_smaller()
    {
        double coarse = Math.Abs(Diameter(Ball(35.0, 600.0, 6)) - 73.04);
        double fine = Math.Abs(Diameter(Ball(35.0, 600.0, 16)) - 73.04);
        Assert.True(fine < coarse / 2.0, $"Off by {coarse:F2} mm at 6 cells a pitch and {fine:F2} mm at 16.");
        Assert.True(fine < 0.3, $"Off by {fine:F2} mm at 16 cells a pitch.");
    }
}
