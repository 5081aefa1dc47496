using Dewstone.Compute.Survey;
using Dewstone.Model.Results;

namespace Dewstone.Compute.Tests.Survey;

/// <summary>Flow by the log, delivered over pump time, against the flow a needle should have: a quarter either way is allowed. The needles have 4 mL/s.</summary>
public sealed class PumpTimesTests
{
    private static readonly HeadPlace One = new(3, 1, 3, 3);

    // Needle 3,3 has four doses of 10 mL, the first in line 5; three take as long as given, so that the median does. 10/2 = 5 mL/s is a quarter off, 10/3.34 = 2.99 mL/s more.
    [Theory]
    [InlineData(2.0, null)]
    [InlineData(1.99, "DW3079:5 needle 3,3 ran at 5.03 mL/s, 4.00 mL/s is its flow")]
    [InlineData(3.33, null)]
    [InlineData(3.34, "DW3079:5 needle 3,3 ran at 2.99 mL/s, 4.00 mL/s is its flow")]
    public void Median_flow_a_quarter_off_is_told_with_both(double seconds, string? told)
    {
        SmallLog job = new();
        Assert.Equal(told is null ? [] : [told], job.Told(Timed(job, r => r.Layer > 2 ? seconds : r.PumpSeconds)));
    }

    // One dose of four that takes twice as long does not move the median; rows without time, or of nothing, are left out, and of what is left the median is off.
    [Fact]
    public void Median_is_of_the_rows_that_have_a_flow()
    {
        SmallLog job = new();
        Assert.Empty(job.Told(Timed(job, r => r.Layer == 3 ? 5.0 : r.PumpSeconds)));
        Assert.Equal(["DW3079:5 needle 3,3 ran at 2.00 mL/s, 4.00 mL/s is its flow"], job.Told(Timed(job, r => r.Layer == 3 ? 5.0 : null)));
        Assert.Equal(["DW3079:5 needle 3,3 ran at 2.00 mL/s, 4.00 mL/s is its flow"], job.Told(Timed(job, r => r.Layer == 3 ? 5.0 : 0.0)));
        Assert.Empty(job.Told(Timed(job, r => null)));
        IEnumerable<LoggedDose> failed = job.Log(p => p == One, 0).Select(r => SmallLog.Place(r) == One ? r with { PumpSeconds = 5.0 } : r);
        Assert.Equal(["DW3069"], job.Told(failed).Select(t => t[..6]));
    }

    [Fact]
    public void Flow_of_the_needles_table_goes_ahead_of_the_printers()
    {
        SmallLog job = new() { Needles = [SmallLog.Needle(3, 3, flow: 2.0)] };
        Assert.Empty(job.Told(Timed(job, r => 5.0)));
        Assert.Equal(["DW3079:5 needle 3,3 ran at 4.00 mL/s, 2.00 mL/s is its flow"], job.Told(job.Log()));
    }

    [Fact]
    public void Needles_are_told_by_their_number()
    {
        SmallLog job = new();
        IEnumerable<LoggedDose> log = job.Log().Select(r => r is { Column: 3, Row: 2 } or { Column: 2, Row: 4 } ? r with { PumpSeconds = 5.0, State = RunState.Fault } : r);
        Assert.Equal(["needle 2,4 ran", "needle 3,2 ran", "needle 2,4: 8 ", "needle 3,2: 4 "], job.Told(log).Select(t => t[(t.IndexOf(' ', StringComparison.Ordinal) + 1)..][..14]));
    }

    // A dose marked faulty is told where its volume is as planned (9.1 mL still are, by the allowance); else the volume is told.
    [Theory]
    [InlineData(910, "DW3080:17 needle 3,3: 1 doses marked faulty with the volume as planned, first in layer 3, station 1")]
    [InlineData(1090, "DW3080:17 needle 3,3: 1 doses marked faulty with the volume as planned, first in layer 3, station 1")]
    [InlineData(909, "DW3070:17 layer 3, station 1, needle 3,3: 9.09 mL delivered, 10.0 mL planned")]
    public void Fault_that_the_machine_marked_is_told(int given, string told)
    {
        SmallLog job = new();
        Assert.Equal([told], job.Told(job.Log(p => p == One, given).Select(r => SmallLog.Place(r) == One ? r with { State = RunState.Fault } : r)));
        Assert.Equal(given == 909, job.Told(job.Log(p => p == One, given).Select(r => SmallLog.Place(r) == One ? r with { State = RunState.Stopped } : r)).Count == 1);
    }

    [Fact]
    public void Faults_of_a_needle_are_counted_but_not_those_explained()
    {
        SmallLog job = new();
        IReadOnlyList<LoggedDose> marked = [.. job.Log().Select(r => r is { Column: 3, Row: 3, Layer: >= 3 } ? r with { State = RunState.Fault } : r)];
        Assert.Equal(["DW3080:17 needle 3,3: 3 doses marked faulty with the volume as planned, first in layer 3, station 1"], job.Told(marked));

        // A needle that drifts by 8 % a layer, its first dose still as planned.
        Assert.Equal(["DW3067"], job.Told(job.Log(p => p.Needle == (3, 3) && job.Planned(p) > 0 ? 1160 - 80 * p.Layer : job.Planned(p)).Select(r => r is { Layer: 2, Column: 3, Row: 3 } ? r with { State = RunState.Fault } : r)).Select(t => t[..6]));
        Assert.Equal(["DW3065"], job.Told(marked.Select(r => r.State == RunState.Fault ? r with { CentiMillilitres = 0 } : r)).Select(t => t[..6]));
    }

    private static IEnumerable<LoggedDose> Timed(SmallLog job, Func<LoggedDose, double?> seconds) =>
        job.Log().Select(r => r is { Column: 3, Row: 3 } ? r with { PumpSeconds = seconds(r) } : r);
}
