using Dewstone.Compute.Dosing;
using Dewstone.Compute.Inspection;
using Dewstone.Model.Diagnostics;
using Dewstone.Model.Lattices;
using Dewstone.Model.Quantities;
using Dewstone.Model.Results;

namespace Dewstone.Compute.Tests.Inspection;

public sealed class WaterCheckTests
{
    internal static readonly PlacementResult Placed = Placer.Place(Samples.Job(Samples.Box(0.1, 0.1, 0.1)), 2);

    internal static IReadOnlyList<Diagnostic> Check(MoistureResult moisture) => WaterCheck.Check(Placed.Placement!, Placed.Lattice!, moisture);

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void Water_at_the_edge_of_the_window_is_a_warning(bool touched)
    {
        IReadOnlyList<Diagnostic> findings = Check(Samples.Moisture(Placed.Cells!, _ => 0.1, touchedWindowEdge: touched));

        Assert.Equal(touched ? ["DW3008"] : [], findings.Select(f => f.Code));
        Assert.All(findings, f => Assert.Equal(Severity.Warning, f.Severity));
    }

    [Fact]
    public void Refused_water_is_a_warning_that_names_the_worst_place()
    {
        Lattice lattice = Placed.Lattice!;
        RefusedDose[] refused = [new(lattice.Index(2, 2, 1), 1e-6), new(lattice.Index(3, 2, 2), 3e-6)];

        Diagnostic finding = Assert.Single(Check(Samples.Moisture(Placed.Cells!, i => i == 500 ? 0.3 : 0, 4e-6, refused)));

        Assert.Equal(("DW3007", Severity.Warning), (finding.Code, finding.Severity));
        Assert.Contains("4 mL", finding.Message);
        Assert.Contains("2 positions; the most in layer 3", finding.Message);
        Assert.Equal(new Point3(0.075, 0.025, 0.075), finding.Where!.Value, (a, b) => (a - b).Norm < 1e-12);
    }

    [Fact]
    public void Refused_thousandth_is_not_worth_saying()
    {
        double water = 0.3 * Placed.Cells!.Count * Placed.Cells.CellCubicMetres;
        MoistureResult moisture = Samples.Moisture(Placed.Cells, _ => 0.3, water * 0.0009, [new RefusedDose(0, water * 0.0009)]);

        Assert.DoesNotContain(Check(moisture), f => f.Code == "DW3007");
    }
}
