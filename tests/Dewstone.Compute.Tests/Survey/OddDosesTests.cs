using Dewstone.Compute.Survey;
using Dewstone.Model.Results;

namespace Dewstone.Compute.Tests.Survey;

/// <summary>Single doses; of 10 mL, 0.9 mL either way is allowed (0.1 mL a step, four times 2 %).</summary>
public sealed class OddDosesTests
{
    private static readonly SmallLog Job = new();
    private static readonly HeadPlace One = new(3, 1, 2, 3);

    [Theory]
    [InlineData(0, "DW3069", "0.0")]
    [InlineData(1, "DW3070", "0.01")]
    [InlineData(909, "DW3070", "9.09")]
    [InlineData(910, "", "")]
    [InlineData(1090, "", "")]
    [InlineData(1091, "DW3071", "10.91")]
    [InlineData(2000, "DW3071", "20.0")]
    public void Dose_beyond_its_allowance_is_told_with_its_place(int given, string code, string millilitres) => Assert.Equal(
        code.Length == 0 ? [] : [$"{code}:16 layer 3, station 1, needle 2,3: {millilitres} mL delivered, 10.0 mL planned"], Job.Told(Job.Log(p => p == One, given)));

    [Fact]
    public void Dose_without_a_row_is_missing_too() => Assert.Equal(
        ["DW3069:0 layer 3, station 1, needle 2,3: 0.0 mL delivered, 10.0 mL planned"], Job.Told(Job.Log().Where(r => SmallLog.Place(r) != One)));

    // Two rows count together; a row of nothing makes no second dose.
    [Theory]
    [InlineData(1000, 90, "")]
    [InlineData(1000, 91, "DW3072:16 layer 3, station 1, needle 2,3: 10.91 mL delivered, 10.0 mL planned")]
    [InlineData(1091, 0, "DW3071:16 layer 3, station 1, needle 2,3: 10.91 mL delivered, 10.0 mL planned")]
    [InlineData(400, 510, "")]
    [InlineData(400, 509, "DW3070:16 layer 3, station 1, needle 2,3: 9.09 mL delivered, 10.0 mL planned")]
    [InlineData(0, 1000, "")]
    public void Place_logged_twice_is_judged_by_the_sum(int first, int second, string told) => Assert.Equal(
        told.Length == 0 ? [] : [told],
        Job.Told(Job.Log().SelectMany(r => SmallLog.Place(r) == One ? [r with { CentiMillilitres = first }, r with { CentiMillilitres = second }] : new[] { r })));

    [Fact]
    public void Water_where_none_was_planned_is_told_from_the_least_on()
    {
        SmallLog job = new() { Doses = p => p.Layer > 1 && p != One ? 1000 : 0 };
        Assert.Equal(["DW3073:16 layer 3, station 1, needle 2,3: 0.01 mL delivered, 0.0 mL planned"], job.Told(job.Log(p => p == One, 1)));
        Assert.Empty(job.Told([.. job.Log(), new LoggedDose(3, 1, 2, 3, 0, null, RunState.Ok, SmallLog.Clock + 210.0, 0)]));
    }

    // The window begins at needle 2,2 of station 1 and ends at needle 2,4 of station 2.
    [Theory]
    [InlineData(1, 1, 3, 16)]
    [InlineData(1, 2, 1, 14)]
    [InlineData(2, 3, 3, 24)]
    [InlineData(2, 2, 5, 26)]
    public void Water_beyond_the_window_is_told_on_every_side(int station, int column, int row, int line)
    {
        HeadPlace beyond = new(3, station, column, row);
        Assert.Equal([$"DW3074:{line} layer 3, station {station}, needle {column},{row}: 0.5 mL delivered, 0.0 mL planned"], Job.Told(Job.Log(p => p == beyond ? 50 : Job.Planned(p))));
    }

    // In a shifted layer (every other one from the unit's second, here layer 3) the last column and row of a window that reaches the walls are left out: such a place has no dose to compare.
    [Theory]
    [InlineData(false, "DW3073")]
    [InlineData(true, "DW3074")]
    public void Place_that_a_shifted_layer_leaves_out_is_beyond(bool isShifted, string code)
    {
        SmallLog job = new() { ShiftedLayers = isShifted, NeedleRows = 3, Doses = p => p.Layer is 2 or 4 ? 1000 : 0, IsWhole = true };
        HeadPlace corner = new(3, 2, 3, 5);
        Assert.StartsWith(code, Assert.Single(job.Told(job.Log(p => p == corner ? 50 : job.Planned(p)))), StringComparison.Ordinal);
    }

    [Fact]
    public void Doses_of_a_needle_are_told_together()
    {
        HeadPlace[] both = [One, new HeadPlace(4, 2, 2, 3)];
        Assert.Equal(
            ["DW3070:16 needle 2,3, 2 doses: layer 3, station 1; layer 4, station 2: 16.0 mL delivered, 20.0 mL planned"], Job.Told(Job.Log(both.Contains, 800)));
    }

    // Six places are told, the rest is counted.
    [Theory]
    [InlineData(6, "layer 2, station 1; layer 2, station 2; layer 3, station 1; layer 3, station 2; layer 4, station 1; layer 4, station 2: 48.0 mL delivered, 60.0 mL planned")]
    [InlineData(7, "layer 2, station 1; layer 2, station 2; layer 3, station 1; layer 3, station 2; layer 4, station 1; layer 4, station 2 and 1 more: 56.0 mL delivered, 70.0 mL planned")]
    public void Places_of_a_needle_are_told_up_to_six(int doses, string told)
    {
        HeadPlace[] odd = [.. Job.Log().Select(SmallLog.Place).Where(p => p is { Column: 2, Row: 3 }).Take(doses)];
        Assert.Equal([$"DW3070:4 needle 2,3, {doses} doses: {told}"], Job.Told(Job.Log(odd.Contains, 800)));
    }

    // Of two needles with the same difference the one with the lower column stands first, though the other was at fault earlier; one with more stands ahead of both.
    [Fact]
    public void Needles_stand_by_their_difference_then_by_their_number()
    {
        HeadPlace earlier = new(2, 1, 3, 2), later = new(4, 1, 2, 3), most = new(5, 1, 3, 4);
        Assert.Equal(
            ["DW3070:43", "DW3070:28", "DW3070:3"], Job.Told(Job.Log(p => p == most ? 700 : p == earlier || p == later ? 800 : Job.Planned(p))).Select(t => t.Split(' ')[0]));
        Assert.Equal(
            ["DW3071:43", "DW3071:28", "DW3071:3"], Job.Told(Job.Log(p => p == most ? 1300 : p == earlier || p == later ? 1200 : Job.Planned(p))).Select(t => t.Split(' ')[0]));
    }

    // Twenty needles are told, the least faults are counted. Seven rows of three needles, each with one short dose in layer 3, the later the shorter.
    [Theory]
    [InlineData(20, "")]
    [InlineData(21, "DW3070:30 1 more needles likewise, 1 doses")]
    public void Needles_are_told_up_to_twenty(int needles, string more)
    {
        SmallLog job = new() { NeedleRows = 7 };
        HeadPlace[] odd = [.. job.Log().Select(SmallLog.Place).Where(p => p.Layer == 3).DistinctBy(p => p.Needle).Take(needles)];
        IReadOnlyList<string> told = job.Told(job.Log(p => Array.IndexOf(odd, p) is >= 0 and var at ? 700 - 10 * at : job.Planned(p)));
        Assert.Equal(needles, told.Count);
        HeadPlace worst = odd[^1];
        Assert.Contains($"layer 3, station {worst.Station}, needle {worst.Column},{worst.Row}: {(700 - 10 * (needles - 1)) / 100.0:0.0#} mL", told[0], StringComparison.Ordinal);
        Assert.Equal(more.Length > 0, told.Any(t => t.Contains("likewise", StringComparison.Ordinal)));
        Assert.EndsWith(more, told[^1], StringComparison.Ordinal);
    }
}
