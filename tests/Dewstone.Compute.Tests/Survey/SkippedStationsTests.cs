namespace Dewstone.Compute.Tests.Survey;

public sealed class SkippedStationsTests
{
    private static readonly SmallLog Large = new() { Doses = p => p.Layer > 1 ? 4400 : 0 };

    // Six doses of 44 mL: 0.264 L.
    [Fact]
    public void Station_without_water_is_told_as_one()
    {
        Assert.Equal(["DW3064:14 layer 3, station 1 got no water: 6 doses, 0.26 L"], Large.Told(Large.Log(p => p.Block == (3, 1), 0)));
        Assert.Equal(["DW3064:0 layer 3, station 1 got no water: 6 doses, 0.26 L"], Large.Told(Large.Log().Where(r => r is not { Layer: 3, Station: 1 })));
        Assert.Equal(["DW3064", "DW3064"], Large.Told(Large.Log(p => p.Block == (3, 1) || p.Block == (4, 2), 0)).Select(t => t[..6]));
    }

    [Fact]
    public void Station_with_one_dose_given_is_told_by_needle() => Assert.Equal(
        ["DW3069", "DW3069", "DW3069", "DW3069", "DW3069"], Large.Told(Large.Log(p => p.Block == (3, 1) && p.Needle != (3, 4), 0)).Select(t => t[..6]));

    // A station of one dose is a dose; of two, a station.
    [Theory]
    [InlineData(2, "DW3069:5 layer 3, station 1, needle 2,2: 0.0 mL delivered, 10.0 mL planned")]
    [InlineData(3, "DW3064:6 layer 3, station 1 got no water: 2 doses, 0.02 L")]
    public void Two_doses_make_a_station(int lastColumn, string told)
    {
        SmallLog job = new() { Doses = p => p.Layer > 1 && p.Row == 2 && p.Column <= (p.Station == 1 ? lastColumn : 2) ? 1000 : 0 };
        Assert.Equal([told], job.Told(job.Log(p => p.Block == (3, 1) && job.Planned(p) > 0, 0)));
    }
}
