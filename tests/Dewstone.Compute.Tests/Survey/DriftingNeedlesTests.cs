using Dewstone.Compute.Survey;
using Dewstone.Model.Results;

namespace Dewstone.Compute.Tests.Survey;

/// <summary>
/// Needles whose share of what was asked follows a line over the layers. Needle 3,3 has four doses, in layers 2 to 5: the standard error of its slope is its repeatability
/// over the square root of 5 (the sum of squares about 3.5) where the doses lie on the line. Ordinary least squares; the limits are common practice, no source.
/// </summary>
public sealed class DriftingNeedlesTests
{
    // Four standard errors of 2 %: 0.0358 a layer. Beyond, the change of 0.111 is plain too; within, the last dose is short by itself.
    [Theory]
    [InlineData(-0.037, "DW3067:5 needle 3,3 drifts: 100 % of what was asked in layer 2, 88.9 % in layer 5")]
    [InlineData(0.037, "DW3067:5 needle 3,3 drifts: 100 % of what was asked in layer 2, 111.1 % in layer 5")]
    [InlineData(-0.035, "DW3070:41 layer 5, station 1, needle 3,3: 8.95 mL delivered, 10.0 mL planned")]
    [InlineData(0.035, "DW3071:41 layer 5, station 1, needle 3,3: 11.05 mL delivered, 10.0 mL planned")]
    public void Slope_must_exceed_four_standard_errors(double slope, string told) => Assert.Equal([told], Told(new SmallLog(), slope));

    // With a repeatability of 0.5 % the change decides: 5 %, or the printer's own drift where that is more. Three layers: 0.017 makes 5.1 %, 0.016 makes 4.8 %, 0.067 20.1 %.
    [Theory]
    [InlineData(0.05, 0.017, true)]
    [InlineData(0.05, 0.016, false)]
    [InlineData(0.0, 0.017, true)]
    [InlineData(0.0, 0.016, false)]
    [InlineData(0.2, 0.067, true)]
    [InlineData(0.2, 0.066, false)]
    public void Change_must_reach_five_percent_or_the_printers_drift(double drift, double slope, bool isTold)
    {
        SmallLog job = new() { Drift = drift, Needles = [SmallLog.Needle(3, 3, repeatability: 0.005)] };
        Assert.Equal(isTold ? "DW3067" : "DW3070", Assert.Single(Told(job, -slope))[..6]);
        Assert.Equal(isTold ? "DW3067" : "DW3071", Assert.Single(Told(job, slope))[..6]);
    }

    // Needle 2,3 with four doses: in layers 2, 3, 3, 4 they are three layers, in 2, 2, 3, 3 two. Needle 3,3 with three doses is too little.
    [Fact]
    public void Four_doses_in_three_layers_are_needed()
    {
        Assert.Equal("DW3067", Codes(new SmallLog { Doses = p => Rest(p, p is { Layer: 2, Station: 1 } or { Layer: 3 } or { Layer: 4, Station: 1 }) }, -0.08));
        Assert.Equal("DW3070", Codes(new SmallLog { Doses = p => Rest(p, p.Layer is 2 or 3) }, -0.16));
        Assert.Equal("DW3070", Codes(new SmallLog { Doses = p => Rest(p, p is { Station: 1, Layer: <= 4 }) }, -0.1));

        static int Rest(HeadPlace p, bool isPlanned) => p.Layer > 1 && (p.Needle != (2, 3) || isPlanned) ? 1000 : 0;
        static string Codes(SmallLog job, double slope) => string.Join(' ', Told(job, slope, (2, 3)).Select(t => t[..6]));
    }

    // A dose that is missing, or logged in two rows, tells nothing of how the needle drifts: three are left.
    [Fact]
    public void Missing_and_repeated_doses_do_not_count()
    {
        SmallLog job = new();
        IReadOnlyList<LoggedDose> log = job.Log(p => p.Needle == (3, 3) && job.Planned(p) > 0 ? (int)Math.Round(1000.0 * (1.0 - 0.08 * (p.Layer - 2))) : job.Planned(p));
        Assert.Equal(["DW3067"], job.Told(log).Select(t => t[..6]));
        Assert.Equal(["DW3069", "DW3070"], job.Told(log.Where(r => SmallLog.Place(r) != new HeadPlace(3, 1, 3, 3))).Select(t => t[..6]));
        Assert.Equal(
            ["DW3070"], job.Told(log.SelectMany(r => SmallLog.Place(r) == new HeadPlace(3, 1, 3, 3) ? [r with { CentiMillilitres = 500 }, r with { CentiMillilitres = r.CentiMillilitres - 500 }] : new[] { r })).Select(t => t[..6]));
    }

    // One dose of eight missing: the other seven drift, by 8 % a layer. Of the swapped stations, of 10 and 20 mL, the shares 2 and 0.5 are no drift either.
    [Fact]
    public void Doses_explained_otherwise_do_not_hide_a_drift()
    {
        SmallLog job = new();
        Assert.Equal(["DW3067", "DW3069"], job.Told(job.Log(p => job.Planned(p) == 0 || p == new HeadPlace(3, 2, 2, 3) ? 0 : p.Needle == (2, 3) ? 1160 - 80 * p.Layer : 1000)).Select(t => t[..6]));
        SmallLog uneven = new() { Doses = p => p.Layer > 1 && p.Column == 2 ? 1000 * p.Station : 0 };
        Assert.Equal(
            ["DW3062", "DW3067"],
            uneven.Told(uneven.Log(p => uneven.Planned(p) * (p.Layer == 3 ? (p.Station == 1 ? 200 : 50) : p.Row == 3 ? 116 - 8 * p.Layer : 100) / 100)).Select(t => t[..6]));
    }

    // Three needles of a board in the same way are the board; of two boards, or without a board, three needles.
    [Theory]
    [InlineData("B1", "B1", "DW3068:3 board B1 with 3 needles drifts: 100 % of what was asked in layer 2, 88.9 % in layer 5")]
    [InlineData("B1", "B2", "DW3067:3 needle 3,2 drifts: 100 % of what was asked in layer 2, 88.9 % in layer 5")]
    [InlineData("", "", "DW3067:3 needle 3,2 drifts: 100 % of what was asked in layer 2, 88.9 % in layer 5")]
    public void Three_needles_make_a_board(string board, string third, string told)
    {
        SmallLog job = new() { Needles = [SmallLog.Needle(3, 2, board), SmallLog.Needle(3, 3, board), SmallLog.Needle(3, 4, third), .. Enumerable.Range(0, 6).Select(n => SmallLog.Needle(1 + n % 2, 2 + n / 2, "B9"))] };
        IReadOnlyList<string> found = Told(job, p => p.Column == 3 ? -0.037 : 0.0);
        Assert.Equal(told, found[0]);
        Assert.Equal(told.Contains("board", StringComparison.Ordinal) ? 1 : 3, found.Count);
    }

    // Three quarters of a board's needles must change the same way by half the limit, 2.5 % over three layers, at least. Slopes in thousandths a layer, by needle; the line
    // through all is significant in each of these (worked by hand: slope 0.0227 against 4 x 0.0055, 0.023, 0.0235 against 4 x 0.0050).
    [Theory]
    [InlineData("10 10 10", "")]
    [InlineData("30 30 8", "DW3067 DW3067")]
    [InlineData("30 30 9", "DW3068")]
    [InlineData("30 30 30 4", "DW3068")]
    [InlineData("30 30 30 30 30 30 30 30 8 8 8 -9", "DW3067 DW3067 DW3067 DW3067 DW3067 DW3067 DW3067 DW3067")]
    [InlineData("30 30 30 30 30 30 30 30 8 8 8 9", "DW3068")]
    public void Three_quarters_of_a_board_must_drift_alike(string slopes, string codes)
    {
        double[] of = [.. slopes.Split(' ').Select(s => int.Parse(s) / 1000.0)];
        SmallLog job = new() { NeedleRows = of.Length, Needles = [.. of.Select((_, i) => SmallLog.Needle(3, i + 2, "B1", 0.005))] };
        Assert.Equal(codes.Split(' ', StringSplitOptions.RemoveEmptyEntries), Told(job, p => p.Column == 3 && p.Station == 1 ? -of[p.Row - 2] : 0.0).Select(t => t[..6]));
        Assert.Equal(codes.Split(' ', StringSplitOptions.RemoveEmptyEntries), Told(job, p => p.Column == 3 && p.Station == 1 ? of[p.Row - 2] : 0.0).Select(t => t[..6]));
    }

    private static IReadOnlyList<string> Told(SmallLog job, double slope) => Told(job, slope, (3, 3));

    private static IReadOnlyList<string> Told(SmallLog job, double slope, (int, int) needle) => Told(job, p => p.Needle == needle ? slope : 0.0);

    private static IReadOnlyList<string> Told(SmallLog job, Func<HeadPlace, double> slope) =>
        job.Told(job.Log(p => job.Planned(p) == 0 ? 0 : (int)Math.Round(1000.0 * (1.0 + slope(p) * (p.Layer - 2)))));
}
