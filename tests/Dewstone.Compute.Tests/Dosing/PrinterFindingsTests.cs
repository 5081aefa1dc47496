using Dewstone.Compute.Dosing;
using Dewstone.Model.Description;
using Dewstone.Model.Diagnostics;
using Dewstone.Model.Quantities;

namespace Dewstone.Compute.Tests.Dosing;

/// <summary>Each printer finding that placing can raise: what raises it, and that the nearest sound case does not.</summary>
public sealed class PrinterFindingsTests
{
    private static readonly Printer Yard = Samples.YardPrinter();

    internal static Diagnostic[] Place(ReefUnit? unit = null, Printer? printer = null, DryMix? mix = null, NeedleTable? needles = null, int cells = 4) =>
        [.. Placer.Place(Samples.Job(unit ?? Samples.Box(0.3, 0.3, 0.2), mix, printer, needles), cells).Findings];

    private static Diagnostic Only(Diagnostic[] findings, string code)
    {
        Diagnostic finding = Assert.Single(findings);
        Assert.Equal(code, finding.Code);
        Assert.Equal(DiagnosticCatalogue.Find(code)!.Severity, finding.Severity);
        Assert.NotEmpty(finding.Remedy);
        Assert.NotNull(finding.Key);
        return finding;
    }

    [Fact]
    public void Sound_job_has_no_finding() => Assert.Empty(Place());

    [Fact]
    public void Pitch_finer_than_a_micrometre_is_refused()
    {
        Printer printer = Yard with { Grid = Yard.Grid with { Pitch = new Length(0.05000005) } };

        Diagnostic finding = Only(Place(printer: printer), "DW4001");

        Assert.Equal("grid.pitch", finding.Key!.Path);
        Assert.Contains("50.00005 mm", finding.Message);
        Assert.DoesNotContain(Place(printer: Yard with { Grid = Yard.Grid with { Pitch = new Length(0.050001) } }), f => f.Code == "DW4001");
    }

    [Fact]
    public void Unit_wider_than_the_watered_bed_does_not_fit()
    {
        Diagnostic finding = Only(Place(Samples.Box(1.201, 0.3, 0.2)), "DW4002");

        Assert.Contains("1201 mm along x", finding.Message);
        Assert.Contains("1200 mm", finding.Message);
        Assert.Empty(Place(Samples.Box(1.2, 0.3, 0.2)));
    }

    [Fact]
    public void Shift_beyond_the_positions_says_which_shifts_fit()
    {
        ReefUnit unit = Samples.Box(0.3, 0.3, 0.2);

        Diagnostic finding = Only(Place(unit with { Place = new PlacementWish { Shift = new Point3(0, 0.451, 0) } }), "DW4002");

        Assert.Equal("place.shift", finding.Key!.Path);
        Assert.Contains("-450 mm to 450 mm along y", finding.Remedy);
        Assert.Empty(Place(unit with { Place = new PlacementWish { Shift = new Point3(0, 0.45, 0) } }));
    }

    [Fact]
    public void Unit_and_loose_layers_above_the_rim_are_too_high()
    {
        Diagnostic finding = Only(Place(Samples.Box(0.3, 0.3, 1.051)), "DW4003");

        Assert.Contains("23 layers of 50 mm (1 loose below) need 1150 mm; the bin is 1100 mm high", finding.Message);
        Assert.Empty(Place(Samples.Box(0.3, 0.3, 1.05)));
    }

    [Fact]
    public void Downward_shift_below_the_floor_is_refused()
    {
        ReefUnit unit = Samples.Box(0.3, 0.3, 0.2);

        Diagnostic finding = Only(Place(unit with { Place = new PlacementWish { Shift = new Point3(0, 0, -0.051) } }), "DW4003");

        Assert.Contains("-50 mm or more", finding.Remedy);
        Assert.Empty(Place(unit with { Place = new PlacementWish { Shift = new Point3(0, 0, -0.05) } }));
    }

    [Fact]
    public void Shifted_layers_need_a_head_that_can()
    {
        ReefUnit unit = Samples.Box(0.3, 0.3, 0.2) with { Place = new PlacementWish { ShiftedLayers = true } };

        Only(Place(unit, Yard with { Head = Yard.Head with { CanShiftLayers = false } }), "DW4004");

        Assert.Empty(Place(unit));
    }

    [Fact]
    public void Bin_without_room_for_a_position_is_refused()
    {
        Printer printer = Yard with { Bin = Yard.Bin with { SizeX = new Length(0.049) }, Head = Yard.Head with { Columns = 1 } };

        Only(Place(Samples.Box(0.01, 0.3, 0.2), printer), "DW4005");

        Assert.Empty(Place(Samples.Box(0.01, 0.3, 0.2), printer with { Bin = Yard.Bin with { SizeX = new Length(0.05) } }));
    }

    [Fact]
    public void Small_head_is_noted_with_its_stations()
    {
        Diagnostic finding = Only(Place(printer: Yard with { Head = Yard.Head with { Columns = 8, Rows = 12 } }), "DW4006");

        Assert.Contains("6 stations (3 along x, 2 along y)", finding.Message);
    }

    [Fact]
    public void Shifted_layers_that_reach_the_wall_are_noted_with_the_positions_left_out()
    {
        var shifted = new PlacementWish { ShiftedLayers = true };

        Diagnostic finding = Only(Place(Samples.Box(1.2, 0.3, 0.2) with { Place = shifted }), "DW4007");

        // The last of 24 columns, over 6 + 4 rows.
        Assert.Contains("10 positions", finding.Message);
        Assert.Empty(Place(Samples.Box(0.9, 0.3, 0.2) with { Place = shifted }));
    }

    [Fact]
    public void Origin_nearer_than_half_a_pitch_leaves_a_column_out()
    {
        Printer printer = Yard with { Grid = Yard.Grid with { OriginX = new Length(0.02) } };

        Diagnostic finding = Only(Place(printer: printer), "DW4007");

        Assert.Contains("1 columns and 0 rows", finding.Message);
    }

    [Theory]
    [InlineData(0.0, true)]
    [InlineData(0.05, true)]
    [InlineData(0.049, false)]
    public void Tip_must_stand_within_its_layer(double metres, bool refused)
    {
        Diagnostic[] findings = Place(printer: Yard with { Needle = Yard.Needle with { TipDepth = new Length(metres) } });

        if (refused)
        {
            Only(findings, "DW4012");
        }
        else
        {
            Assert.Empty(findings);
        }
    }

    [Fact]
    public void Bed_denser_than_its_grains_is_refused()
    {
        Only(Place(mix: Samples.Mix(0.25, 2760)), "DW4013");

        Assert.Empty(Place(mix: Samples.Mix(0.25, 2750)));
    }

    [Fact]
    public void Window_with_more_cells_than_a_machine_holds_is_refused()
    {
        ReefUnit unit = Samples.Box(1.1, 1.1, 1.0);

        Only(Place(unit, cells: 32), "DW4014");

        Assert.Empty(Place(unit, cells: 16));
    }

    [Fact]
    public void Odd_cells_do_not_go_with_shifted_layers()
    {
        ReefUnit unit = Samples.Box(0.3, 0.3, 0.2) with { Place = new PlacementWish { ShiftedLayers = true } };

        Only(Place(unit, cells: 5), "DW4015");

        Assert.Empty(Place(unit, cells: 6));
        Assert.Empty(Place(cells: 5));
    }

    [Fact]
    public void Head_wider_than_the_positions_is_warned_of() =>
        Only(Place(printer: Yard with { Head = Yard.Head with { Columns = 25 } }), "DW4016");

    [Fact]
    public void Needle_the_head_does_not_have_is_refused()
    {
        Diagnostic finding = Only(Place(needles: new NeedleTable { Needles = [new NeedleState { Column = 25, Row = 3 }] }), "DW4017");

        Assert.Contains("column 25, row 3", finding.Message);
        Assert.Empty(Place(needles: new NeedleTable { Needles = [new NeedleState { Column = 24, Row = 24 }] }));
    }
}
