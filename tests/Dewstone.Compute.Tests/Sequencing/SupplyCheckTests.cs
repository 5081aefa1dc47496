using Dewstone.Compute.Dosing;
using Dewstone.Compute.Sequencing;
using Dewstone.Model.Description;
using Dewstone.Model.Diagnostics;
using Dewstone.Model.Lattices;
using Dewstone.Model.Quantities;
using Dewstone.Model.Results;

namespace Dewstone.Compute.Tests.Sequencing;

public sealed class SupplyCheckTests
{
    private static IReadOnlyList<Diagnostic> Check(double supplyMillilitresPerSecond, double tankLitres)
    {
        Printer printer = Samples.YardPrinter() with
        {
            Supply = new Supply(FlowRate.FromMillilitresPerSecond(supplyMillilitresPerSecond), new Volume(tankLitres / 1000)),
        };
        JobDescription job = Samples.Job(Samples.Box(0.2, 0.2, 0.1), printer: printer);
        Lattice lattice = Placer.Place(job, 2).Lattice!;
        // 16 needles of 4 mL/s a layer, 10 mL each, two layers: 64 mL/s and 0.32 L.
        DosePlan doses = Samples.Doses(lattice, (i, j, k) => k > 0 && i is >= 2 and < 6 && j is >= 2 and < 6 ? 1000 : 0);
        (Timeline timeline, _) = TimelineBuilder.Build(job, lattice, doses);
        return SupplyCheck.Check(job, lattice, doses, timeline);
    }

    [Fact]
    public void Supply_that_just_gives_the_peak_flow_and_the_water_is_silent() => Assert.Empty(Check(64.0, 0.32));

    [Fact]
    public void Peak_flow_above_the_supply_is_an_error_that_names_layer_and_station()
    {
        Diagnostic finding = Assert.Single(Check(63.9, 0.32));

        Assert.Equal(("DW4010", Severity.Error), (finding.Code, finding.Severity));
        Assert.Contains("layer 2, station 1 draws 0.064 L/s", finding.Message);
    }

    [Fact]
    public void Tank_smaller_than_the_job_is_a_warning_with_both_volumes()
    {
        Diagnostic finding = Assert.Single(Check(64.0, 0.2));

        Assert.Equal(("DW4011", Severity.Warning), (finding.Code, finding.Severity));
        Assert.Contains("0.3 L", finding.Message);
        Assert.Contains("0.2 L", finding.Message);
    }
}
