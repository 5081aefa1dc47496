using Dewstone.Compute.Survey;
using Dewstone.Model.Results;

namespace Dewstone.Compute.Tests.Survey;

/// <summary>
/// Stations swapped and layers that got the doses of another. Told when as planned the doses are more than 10 % off, and swapped less than 10 % and less than 0.3 of that.
/// Of the stations only needles 2,2 to 2,4 are asked, which both have; each has one dose for all three.
/// </summary>
public sealed class WrongTablesTests
{
    private static readonly SmallLog Alike = Stations(1000, 2000);

    [Fact]
    public void Swapped_stations_are_told_with_both_figures() => Assert.Equal(
        ["DW3062:8 layer 3: stations 1 and 2 were swapped; as planned the doses are 66.7 % off, swapped 0 %"], Alike.Told(Swapped(Alike, 3, 1.0)));

    // Doses a and b swapped are 2 |a - b| / (a + b) off: 210/2105 = 9.98 % and 212/2106 = 10.07 %.
    [Theory]
    [InlineData(1105, false)]
    [InlineData(1106, true)]
    public void Swap_of_stations_too_alike_is_told_dose_by_dose(int second, bool isTold)
    {
        SmallLog job = Stations(1000, second);
        Assert.Equal(isTold, job.Check(Swapped(job, 3, 1.0)).Findings.Any(f => f.Code == "DW3062"));
        Assert.Equal(!isTold, job.Check(Swapped(job, 3, 1.0)).Findings.Any(f => f.Code is "DW3070" or "DW3071"));
    }

    // Swapped and a share short, the share is what is left off. Of 1000 and 2000 (two thirds off) the 10 % decides, of 1000 and 1240 (21 % off) the 0.3: 0.94 leaves
    // 6 % against 0.3 (165.6 + 300)/2240 = 6.24 %, 0.935 leaves 6.5 % against 0.3 (159.4 + 305)/2240 = 6.22 %.
    [Theory]
    [InlineData(2000, 0.905, true)]
    [InlineData(2000, 0.895, false)]
    [InlineData(1240, 0.94, true)]
    [InlineData(1240, 0.935, false)]
    public void Swap_must_explain_the_doses(int second, double share, bool isTold)
    {
        SmallLog job = Stations(1000, second);
        Assert.Equal(isTold ? ["DW3062"] : [], job.Check(Swapped(job, 3, share)).Findings.Select(f => f.Code).Where(c => c == "DW3062"));
        Assert.Equal(!isTold, job.Check(Swapped(job, 3, share)).Findings.Any(f => f.Code == "DW3070"));
    }

    // Water of one station at another where nothing was planned: there is nothing to swap.
    [Fact]
    public void Station_that_got_nothing_is_not_swapped()
    {
        SmallLog job = new() { Doses = p => p.Layer > 1 && p.Column == 2 && (p.Layer != 3 || p.Station == 1) ? 1000 : 0 };
        IReadOnlyList<string> told = job.Told(job.Log(p => p is { Layer: 3, Column: 2 } && job.Index(p) >= 0 ? (p.Station == 1 ? 0 : 1000) : job.Planned(p)));
        Assert.Equal(["DW3064", "DW3073", "DW3073", "DW3073"], told.Select(t => t[..6]));
        SmallLog mirrored = new() { Doses = p => p.Layer > 1 && p.Column == 2 && (p.Layer != 3 || p.Station == 2) ? 1000 : 0 };
        told = mirrored.Told(mirrored.Log(p => p is { Layer: 3, Column: 2 } && mirrored.Index(p) >= 0 ? (p.Station == 2 ? 0 : 1000) : mirrored.Planned(p)));
        Assert.Equal(["DW3064", "DW3073", "DW3073", "DW3073"], told.Select(t => t[..6]));
    }

    // Stations 1 and 3 are to get the same; all of 1 and 3 got what 2 was to get, and 2 theirs. Only one of them can be the other half of the swap.
    [Fact]
    public void Station_is_swapped_once()
    {
        SmallLog job = new() { Stations = 3, Doses = p => p.Layer > 1 && p.Column == 2 ? (p.Station == 2 ? 2000 : 1000) : 0 };
        IReadOnlyList<string> told = job.Told(job.Log(p => job.Planned(p) == 0 ? 0 : p.Layer != 3 ? job.Planned(p) : 3000 - job.Planned(p)));
        Assert.Equal(["DW3062:11 layer 3: stations 1 and 2 were swapped; as planned the doses are 66.7 % off, swapped 0 %", "DW3071:17", "DW3071:18", "DW3071:19"], told.Select((t, i) => i == 0 ? t : t[..9]));
    }

    // The same where the later station is the one both would be swapped with.
    [Fact]
    public void Later_station_is_swapped_once()
    {
        SmallLog job = new() { Stations = 3, Doses = p => p.Layer > 1 && p.Column == 2 ? (p.Station == 3 ? 2000 : 1000) : 0 };
        IReadOnlyList<string> told = job.Told(Third(job, p => 3000 - job.Planned(p)));
        Assert.Equal(["DW3062:11 layer 3: stations 1 and 3 were swapped; as planned the doses are 66.7 % off, swapped 0 %", "DW3071:14", "DW3071:15", "DW3071:16"], told.Select((t, i) => i == 0 ? t : t[..9]));
    }

    // Layers of 10 mL but for layer 4.
    [Theory]
    [InlineData(1099, false, "")]
    [InlineData(1101, true, "10.1")]
    [InlineData(2000, true, "100")]
    public void Layer_that_got_anothers_doses_is_told_with_both_figures(int fourth, bool isTold, string percent)
    {
        SmallLog job = new() { Doses = p => p.Layer switch { 1 => 0, 4 => fourth, _ => 1000 } };
        IReadOnlyList<string> told = job.Told(Third(job, _ => fourth));
        Assert.Equal(isTold ? [$"DW3063:14 layer 3 got the doses of layer 4: as planned they are {percent} % off, as layer 4 0 %"] : [], told.Where(t => t.StartsWith("DW3063", StringComparison.Ordinal)));
        Assert.Equal(isTold ? 1 : 9, told.Count);
    }

    // A share of layer 4's doses given in layer 3, all against its 10 mL. Of 20 mL the 10 % decides: 0.953 leaves 9.4 %, 0.948 leaves 10.4 %. Of 12.4 mL the 0.3: 11.87 mL
    // leave 5.3 % against 0.3 x 18.7 %, 11.82 mL 5.8 % against 0.3 x 18.2 %.
    [Theory]
    [InlineData(2000, 0.953, true)]
    [InlineData(2000, 0.948, false)]
    [InlineData(1240, 0.957, true)]
    [InlineData(1240, 0.953, false)]
    public void Other_layer_must_explain_the_doses(int fourth, double share, bool isTold)
    {
        SmallLog job = new() { Doses = p => p.Layer switch { 1 => 0, 4 => fourth, _ => 1000 } };
        IReadOnlyList<string> told = job.Told(Third(job, _ => (int)Math.Round(share * fourth)));
        Assert.Equal(isTold, told.Any(t => t.StartsWith("DW3063", StringComparison.Ordinal)));
        Assert.Equal(isTold ? 1 : 9, told.Count);
    }

    // Layers 2 and 4 would do as well as each other: the lower is told; a better one goes ahead of both.
    [Theory]
    [InlineData(2000, 2)]
    [InlineData(1950, 4)]
    public void Layer_that_fits_best_is_told(int second, int told)
    {
        SmallLog job = new() { Doses = p => p.Layer switch { 1 => 0, 2 => second, 4 => 2000, _ => 1000 } };
        Assert.Contains($"layer 3 got the doses of layer {told}:", Assert.Single(job.Told(Third(job, _ => 2000))), StringComparison.Ordinal);
    }

    // Of a layer with a station run twice it cannot be said whose doses it got; nor of one without water.
    [Fact]
    public void Layer_run_twice_or_without_water_is_not_told()
    {
        SmallLog job = new() { Doses = p => p.Layer switch { 1 => 0, 4 => 2000, _ => 1000 } };
        IReadOnlyList<LoggedDose> log = Third(job, p => p.Station == 1 ? 2000 : 1000);
        Assert.DoesNotContain(job.Told([.. log.Where(r => r.Layer < 4), .. log.Where(r => r is { Layer: 3, Station: 2 }), .. log.Where(r => r.Layer > 3)]), t => t.StartsWith("DW3063", StringComparison.Ordinal));
        Assert.Equal(["DW3064", "DW3064"], job.Told(job.Log(p => p.Layer == 3, 0)).Select(t => t[..6]));
    }

    // Layer 1 was to get nothing and got a little; that layer 3 got nothing does not make it layer 1.
    [Fact]
    public void Layer_without_water_did_not_get_the_doses_of_an_empty_one()
    {
        SmallLog job = new();
        Assert.Equal(["DW3064", "DW3064", "DW3073"], job.Told(job.Log(p => p.Block == (1, 1) && p.Needle == (2, 2) ? 100 : p.Layer == 3 ? 0 : job.Planned(p))).Select(t => t[..6]));
    }

    // The print stopped after layer 3, which got what layer 5 was to get.
    [Fact]
    public void Layer_not_reached_may_be_the_other()
    {
        SmallLog job = new() { Doses = p => p.Layer switch { 1 => 0, 5 => 2000, _ => 1000 } };
        Assert.Equal(
            ["DW3060:25 the print stopped after layer 3: 6 of the 6 doses there were given, and 24 of 48 doses are left", "DW3063:14 layer 3 got the doses of layer 5: as planned they are 100 % off, as layer 5 0 %"],
            job.Told(Third(job, _ => 2000).Where(r => r.Layer <= 3)));
    }

    private static SmallLog Stations(int first, int second) => new() { Doses = p => p.Layer > 1 && p.Column == 2 ? (p.Station == 1 ? first : second) : 0 };

    // Other doses in layer 3.
    private static IReadOnlyList<LoggedDose> Third(SmallLog job, Func<HeadPlace, int> given) => job.Log(p => p.Layer == 3 && job.Planned(p) > 0 ? given(p) : job.Planned(p));

    private static IReadOnlyList<LoggedDose> Swapped(SmallLog job, int layer, double share) => job.Log(
        p => p.Layer != layer || job.Planned(p) == 0 ? job.Planned(p) : (int)Math.Round(share * job.Planned(p with { Station = 3 - p.Station })));
}
