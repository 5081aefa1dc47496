using Dewstone.Compute.Dosing;
using Dewstone.Compute.Inspection;
using Dewstone.Model.Description;
using Dewstone.Model.Diagnostics;
using Dewstone.Model.Lattices;
using Dewstone.Model.Quantities;
using Dewstone.Model.Results;

namespace Dewstone.Compute.Tests.Inspection;

public sealed class WaterCheckTests
{
    private static readonly PlacementResult Placed = Placer.Place(Samples.Job(Samples.Box(0.1, 0.1, 0.1)), 2);

    private static IReadOnlyList<Diagnostic> Check(MoistureResult moisture, PlacementResult? placed = null) =>
        WaterCheck.Check((placed ?? Placed).Placement!, (placed ?? Placed).Lattice!, moisture);

    [Fact]
    public void Water_that_stays_inside_the_window_is_silent()
    {
        CellGrid grid = Placed.Cells!;

        // All cells but the outermost ring in x and y.
        Assert.Empty(Check(Samples.Moisture(grid, i => i % grid.Nx is > 0 and var x && x < grid.Nx - 1
            && i / grid.Nx % grid.Ny is > 0 and var y && y < grid.Ny - 1 ? 0.2 : 0)));
    }

    [Theory]
    [InlineData(0, 5)]
    [InlineData(11, 5)]
    [InlineData(5, 0)]
    [InlineData(5, 11)]
    public void Water_at_any_side_of_the_window_is_a_warning(int x, int y)
    {
        CellGrid grid = Placed.Cells!;
        Assert.Equal((12, 12), (grid.Nx, grid.Ny));

        Diagnostic finding = Assert.Single(Check(Samples.Moisture(grid, i => i == (2 * grid.Ny + y) * grid.Nx + x ? 0.1 : 0)));

        Assert.Equal(("DW3008", Severity.Warning), (finding.Code, finding.Severity));
        Assert.Contains("1 of the outermost cells", finding.Message);
    }

    [Fact]
    public void Trace_at_the_edge_is_no_water()
    {
        Assert.Empty(Check(Samples.Moisture(Placed.Cells!, _ => 0.004)));
        Assert.Single(Check(Samples.Moisture(Placed.Cells!, _ => 0.0045)));
    }

    [Fact]
    public void Water_at_the_bin_wall_goes_nowhere()
    {
        PlacementResult whole = Placer.Place(Samples.Job(Samples.Box(1.2, 1.2, 0.1)), 2);

        Assert.Empty(Check(Samples.Moisture(whole.Cells!, _ => 0.2), whole));
    }

    [Fact]
    public void Strip_of_bed_beyond_the_last_position_is_no_wall()
    {
        Printer yard = Samples.YardPrinter();
        Printer wide = yard with { Bin = yard.Bin with { SizeX = new Length(1.24) } };
        PlacementResult whole = Placer.Place(Samples.Job(Samples.Box(1.2, 1.2, 0.1), printer: wide), 2);
        CellGrid grid = whole.Cells!;

        Diagnostic finding = Assert.Single(Check(Samples.Moisture(grid, _ => 0.2), whole));

        Assert.Contains($"{grid.Ny * grid.Nz} of the outermost cells", finding.Message);
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
