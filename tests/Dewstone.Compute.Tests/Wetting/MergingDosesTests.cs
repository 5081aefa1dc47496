using Dewstone.Compute.Tests.Numerics;
using Dewstone.Model.Quantities;
using Dewstone.Model.Results;

namespace Dewstone.Compute.Tests.Wetting;

/// <summary>
/// Doses that meet. Balls simply joined, or their waters simply added, fail all of these: merged water spreads further and nothing is lost.
/// Expected values without a closed form are those of a reference run of an independent prototype of the same model (up to 24 cells a pitch).
/// </summary>
public sealed class MergingDosesTests
{
    private const double Pitch = ReferenceMix.Pitch;

    // One needle in a tight box of one voxel, 50.8 mm wide, holding 131.097 mL of bed with 55.716 g of cement: mean water/cement = dose /
    // 55.716 mL whatever happens inside.
    [Theory]
    [InlineData(15.0)]
    [InlineData(22.3)]
    [InlineData(35.0)]
    [InlineData(40.0)]
    public void Closed_voxel_keeps_its_mean_water_cement(double millilitres)
    {
        MoistureResult result = new SmallJob(1, 1, 1).Dose(0, 0, 0, millilitres).Solve();
        double mean = Enumerable.Range(0, result.Grid.Count).Average(result.WaterCement);
        Assert.Equal(millilitres / (1e6 * Pitch * Pitch * Pitch * 0.425), mean, 1e-5);
    }

    // After 600 s at 35 mL every cell is hardened and nearly level: 0.625 to 0.631 to three digits; at 40 mL 0.718 everywhere.
    [Theory]
    [InlineData(35.0, 0.6245, 0.6315)]
    [InlineData(40.0, 0.7175, 0.7185)]
    public void Closed_voxel_levels_out_when_wet_enough(double millilitres, double least, double most)
    {
        MoistureResult result = new SmallJob(1, 1, 1).Dose(0, 0, 0, millilitres).Solve();
        Assert.DoesNotContain((byte)0, result.Hardened);
        Assert.All(Enumerable.Range(0, result.Grid.Count), i => Assert.InRange(result.WaterCement(i), least, most));
    }

    // Too little water leaves the corners dry: counted cells, because a pocket closes all at once.
    [Theory]
    [InlineData(22.3, 0.90, 0.05)]
    [InlineData(15.0, 0.70, 0.08)]
    public void Closed_voxel_keeps_dry_corners_when_too_dry(double millilitres, double share, double tolerance)
    {
        MoistureResult result = new SmallJob(1, 1, 1).Dose(0, 0, 0, millilitres).Solve();
        Assert.InRange(result.Hardened.Average(h => (double)h), share - tolerance, share + tolerance);
    }

    [Fact]
    public void Closed_voxel_of_22_mL_has_half_water_cement_in_the_middle()
    {
        MoistureResult result = new SmallJob(1, 1, 1).Dose(0, 0, 0, 22.3).Solve();
        Assert.InRange(result.WaterCement((4 * 8 + 4) * 8 + 4), 0.490, 0.510);
    }

    // Two needles 50.8 mm apart, 35 mL each, 600 s. Two balls joined give 1.874 times the volume of one.
    [Fact]
    public void Two_doses_merge_into_more_than_two_balls_joined()
    {
        MoistureResult one = new SmallJob(4, 3, 3).Dose(1, 1, 1, 35.0).Solve();
        MoistureResult two = new SmallJob(4, 3, 3).Dose(1, 1, 1, 35.0).Dose(2, 1, 1, 35.0).Solve();
        double volume = SmallJob.Surface(two).VolumeCubicMetres() * 1e6;

        Assert.InRange(volume / (SmallJob.Surface(one).VolumeCubicMetres() * 1e6), 1.920, 1.940);
        Assert.InRange(volume, 392.0 * 0.99, 392.0 * 1.025);
        Assert.InRange(WaterCementAt(two, new Point3(2.0 * Pitch, 1.5 * Pitch, 1.5 * Pitch)), 0.516, 0.528);
    }

    // 27 needles at once, 35 mL. Face of the body from its middle on the line through the needles and on the line through the gaps between
    // them, mm. Balls joined: 57.4 mm on the gap line, 4133 mL, 97.4 % of the middle voxel.
    [Fact]
    public void Block_of_27_doses_closes_its_gaps()
    {
        MoistureResult result = new SmallJob(5, 5, 5).DoseBlock(1, 4, 1, 4, (_, _, _) => 35.0).Solve();
        LevelSurface surface = SmallJob.Surface(result);
        (double mean, double hardened) = MiddleVoxel(result);

        Assert.Equal(1.0, hardened);
        Assert.InRange(mean, 0.6165, 0.6205);
        Assert.InRange(NeedleLine(surface), 87.1 - 1.5, 87.1 + 1.5);
        Assert.InRange(GapLine(surface), 76.7 - 2.5, 76.7 + 2.5);
        Assert.InRange(surface.VolumeCubicMetres() * 1e6, 4395.0 * 0.97, 4395.0 * 1.03);
    }

    [Fact]
    public void Block_of_27_lesser_doses_closes_its_gaps_less()
    {
        MoistureResult result = new SmallJob(5, 5, 5).DoseBlock(1, 4, 1, 4, (_, _, _) => 28.0).Solve();
        LevelSurface surface = SmallJob.Surface(result);

        Assert.InRange(MiddleVoxel(result).Mean, 0.4994, 0.5034);
        Assert.InRange(NeedleLine(surface), 85.0 - 1.5, 85.0 + 1.5);
        Assert.InRange(GapLine(surface), 66.9 - 2.0, 66.9 + 4.5);
        Assert.InRange(surface.VolumeCubicMetres() * 1e6, 3898.0 * 0.97, 3898.0 * 1.03);
    }

    private static double NeedleLine(LevelSurface surface) =>
        1000.0 * surface.CrossingMetres(new Point3(2.5 * Pitch, 2.5 * Pitch, 2.5 * Pitch), new Point3(1, 0, 0));

    // From outside: at 28 mL the gap line also meets a dry pocket inside.
    private static double GapLine(LevelSurface surface) =>
        1000.0 * (2.5 * Pitch - surface.CrossingMetres(new Point3(5.0 * Pitch, 2.0 * Pitch, 2.0 * Pitch), new Point3(-1, 0, 0)));

    private static (double Mean, double Hardened) MiddleVoxel(MoistureResult result)
    {
        int n = result.Grid.CellsPerPitch;
        double water = 0.0;
        int hardened = 0;
        for (int z = 2 * n; z < 3 * n; z++)
        {
            for (int y = 2 * n; y < 3 * n; y++)
            {
                for (int x = 2 * n; x < 3 * n; x++)
                {
                    int index = (z * result.Grid.Ny + y) * result.Grid.Nx + x;
                    water += result.WaterCement(index);
                    hardened += result.Hardened[index];
                }
            }
        }

        return (water / (n * n * n), (double)hardened / (n * n * n));
    }

    // Mean of the eight cells around a corner of cells.
    private static double WaterCementAt(MoistureResult result, Point3 place)
    {
        int x = (int)Math.Round(place.X / result.Grid.CellMetres);
        int y = (int)Math.Round(place.Y / result.Grid.CellMetres);
        int z = (int)Math.Round(place.Z / result.Grid.CellHeightMetres);
        double sum = 0.0;
        for (int corner = 0; corner < 8; corner++)
        {
            sum += result.WaterCement(((z - (corner >> 2 & 1)) * result.Grid.Ny + y - (corner >> 1 & 1)) * result.Grid.Nx + x - (corner & 1));
        }

        return sum / 8.0;
    }
}
