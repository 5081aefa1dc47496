using Dewstone.Jobs.Bins;
using Dewstone.Model.Description;
using Dewstone.Model.Lattices;
using Dewstone.Model.Quantities;

namespace Dewstone.Jobs.Tests.Bins;

public sealed class BinCompilerTests
{
    /// <remarks>
    /// Superposition of separate fields, exact: water moves only where there is some (the law's diffusivity is 0 in dry mix), so fields that never touch do not
    /// know of each other. Two copies under an ideal head, watered at the same times as alone, must harden cell for cell as alone, turned or not.
    /// </remarks>
    [Theory]
    [InlineData(false, 0)]
    [InlineData(false, 1)]
    [InlineData(false, 2)]
    [InlineData(false, 3)]
    [InlineData(true, 1)]
    [InlineData(true, 2)]
    [InlineData(true, 3)]
    public void Units_far_apart_harden_cell_for_cell_as_alone_when_the_times_are_the_same(bool shifted, int turns)
    {
        SolvedUnit unit = shifted ? BinSamples.Shifted : BinSamples.Straight;

        BinResult bin = BinSamples.Compile(BinSamples.Bin(BinSamples.Ideal, new PlacedUnit("LS-001", unit, 0, 1, 1), new PlacedUnit("LS-002", unit, turns, 7, 2)));

        Assert.Empty(bin.Findings);
        Assert.All(bin.Units, verdict => Assert.Equal((1.0, 0.0), (verdict.Overlap, verdict.VolumeError)));
        Assert.Equal(2 * unit.CentiMillilitres.Sum(dose => (long)dose), bin.Job!.Doses.TotalCentiMillilitres);
    }

    [Fact]
    public void Unit_held_against_another_turn_of_itself_does_not_serve()
    {
        // What the test above would see if the doses were turned and the cells were not.
        SolvedUnit unit = BinSamples.Straight;
        SolvedUnit lying = unit with { CentiMillilitres = [.. unit.CentiMillilitres.Reverse()] };

        BinResult bin = BinSamples.Compile(BinSamples.Bin(BinSamples.Ideal, new PlacedUnit("LS-001", lying, 0, 4, 2)));

        Assert.False(Assert.Single(bin.Units).Serves);
        Assert.Contains(bin.Findings, finding => finding.Code == "DW7023");
        Assert.True(bin.Job!.Held);
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void Units_side_by_side_and_turned_come_out_as_alone_with_the_steps_of_real_needles(bool shifted)
    {
        SolvedUnit unit = shifted ? BinSamples.Shifted : BinSamples.Straight;
        JobDescription gains = BinSamples.Conditions with { Needles = Table(NeedleCondition.Ok) };

        BinResult bin = BinSamples.Compile(BinSamples.Bin(gains, new PlacedUnit("LS-001", unit, 0, 1, 2), new PlacedUnit("LS-002", unit, 1, 7, 2)));

        Assert.DoesNotContain(bin.Findings, finding => finding.Code.StartsWith("DW702", StringComparison.Ordinal));
        Assert.All(bin.Units, verdict => Assert.True(verdict.Serves, $"{verdict.Overlap} {verdict.VolumeError}"));
        // Each dose is what its own needle delivers nearest to the one as solved: within half a step of 0.1 mL x 1.1 and half a hundredth.
        long asSolved = 2 * unit.CentiMillilitres.Sum(dose => (long)dose);
        Assert.NotEqual(asSolved, bin.Job!.Doses.TotalCentiMillilitres);
        Assert.InRange(bin.Job.Doses.TotalCentiMillilitres - asSolved, -6 * 2 * unit.CentiMillilitres.Count(dose => dose > 0), 6 * 2 * unit.CentiMillilitres.Count(dose => dose > 0));
    }

    [Fact]
    public void Unit_lower_than_its_neighbour_comes_out_as_alone_only_if_it_was_solved_with_mix_over_its_top()
    {
        SolvedUnit high = BinSamples.Solve(shifted: false, BinSamples.Step with { OuterBox = new Size3(0.19, 0.15, 0.25) });
        SolvedUnit bare = BinSamples.Straight, covered = BinSamples.Solve(shifted: false, covered: true);

        BinVerdict Low(SolvedUnit low) => BinSamples.Compile(
            BinSamples.Bin(BinSamples.Ideal, new PlacedUnit("LS-001", low, 0, 1, 2), new PlacedUnit("HS-001", high, 0, 7, 2))).Units[0];

        Assert.Equal(bare.Lattice.Layers + 1, covered.Lattice.Layers);
        Assert.True(Low(covered).Serves);
        Assert.InRange(Low(bare).Overlap, 0.5, Low(covered).Overlap - 0.002);
    }

    [Fact]
    public void Blocked_needle_inside_a_unit_is_answered_by_its_neighbours_and_nothing_else_moves()
    {
        SolvedUnit unit = BinSamples.Solve(shifted: false, new ReefUnit { Name = "Slab", OuterBox = new Size3(0.3, 0.3, 0.15), Rounding = new Length(0.02) });
        PlacedUnit placed = new("SL-001", unit, 0, 1, 1);
        NeedleTable needles = new() { Needles = [new NeedleState { Column = 4, Row = 4, Condition = NeedleCondition.Blocked }] };
        BinQuestion question = BinSamples.Bin(BinSamples.Ideal, placed);

        BinResult sound = BinSamples.Compile(question), bin = BinSamples.Compile(question with { Conditions = BinSamples.Ideal with { Needles = needles } });

        Assert.Contains(bin.Findings, finding => finding.Code == "DW7024" && finding.Message.Contains("SL-001", StringComparison.Ordinal));
        Lattice lattice = bin.Job!.Lattice;
        int moved = 0;
        for (int index = 0; index < lattice.Count; index++)
        {
            int column = lattice.FirstColumn + index % lattice.Columns, row = lattice.FirstRow + index / lattice.Columns % lattice.Rows;
            if (column == 3 && row == 3)
            {
                Assert.Equal(0, bin.Job.Doses.CentiMillilitres[index]);
            }
            else if (bin.Job.Doses.CentiMillilitres[index] != sound.Job!.Doses.CentiMillilitres[index])
            {
                moved++;
                Assert.InRange((column - 3) * (column - 3) + (row - 3) * (row - 3), 1, 9);
            }
        }

        Assert.InRange(moved, 4, lattice.Count);
        // Left alone, the slab would lack what the needle gave; the correction wins a good part of that back.
        double without = WithoutColumn(placed, 3, 3);
        Assert.InRange(bin.Units[0].Overlap, without + 0.2 * (1.0 - without), 1.0);
    }

    [Fact]
    public void Unit_that_several_stations_water_at_other_times_is_dosed_anew_until_it_serves()
    {
        // A head of 6 by 4 needles: four stations a layer, and the unit stands across all of them.
        JobDescription stations = BinSamples.Conditions with { Printer = Samples.Printer with { Head = Samples.Printer.Head with { Columns = 6, Rows = 4 } } };

        BinResult bin = BinSamples.Compile(BinSamples.Bin(stations, new PlacedUnit("LS-001", BinSamples.Straight, 0, 4, 2)));

        Assert.Equal("DW7024", Assert.Single(bin.Findings).Code);
        Assert.True(bin.Units[0].Serves);
        Assert.False(bin.Job!.Held);
    }

    [Theory]
    [InlineData(6, "DW7020")]
    [InlineData(9, "DW7021")]
    public void Units_too_near_or_beyond_the_needles_are_refused(int column, string code)
    {
        SolvedUnit unit = BinSamples.Straight;

        BinResult bin = BinSamples.Compile(BinSamples.Bin(BinSamples.Conditions, new PlacedUnit("LS-001", unit, 0, 1, 2), new PlacedUnit("LS-002", unit, 0, column, 2)));

        Assert.Null(bin.Job);
        Assert.Equal(code, Assert.Single(bin.Findings).Code);
    }

    [Fact]
    public void Unit_at_the_gap_is_taken_and_one_micrometre_more_gap_is_not()
    {
        // Box of 190 mm from 50 mm on: the next at column 7 begins at 350 mm, 110 mm further.
        SolvedUnit unit = BinSamples.Straight;
        BinQuestion question = BinSamples.Bin(BinSamples.Ideal, new PlacedUnit("LS-001", unit, 0, 1, 2), new PlacedUnit("LS-002", unit, 0, 7, 2));

        Assert.NotNull(BinSamples.Compile(question with { Gap = new Length(0.110) }).Job);
        Assert.Contains(BinSamples.Compile(question with { Gap = new Length(0.110002) }).Findings, finding => finding.Code == "DW7020");
    }

    [Fact]
    public void Units_solved_for_other_layers_or_another_grid_are_refused()
    {
        BinResult mixed = BinSamples.Compile(BinSamples.Bin(
            BinSamples.Conditions, new PlacedUnit("LS-001", BinSamples.Straight, 0, 1, 2), new PlacedUnit("LS-002", BinSamples.Shifted, 0, 7, 2)));
        Printer wide = Samples.Printer with { Grid = Samples.Printer.Grid with { Pitch = new Length(0.04) } };
        BinResult other = BinSamples.Compile(BinSamples.Bin(BinSamples.Conditions with { Printer = wide }, new PlacedUnit("LS-001", BinSamples.Straight, 0, 1, 2)));

        Assert.Equal("DW7022", Assert.Single(mixed.Findings).Code);
        Assert.Equal("DW7022", Assert.Single(other.Findings).Code);
    }

    [Fact]
    public void Held_unit_holds_its_bin_up_until_it_is_released()
    {
        SolvedUnit unit = BinSamples.Straight;
        SolvedUnit held = unit with { Findings = [Model.Diagnostics.InspectionFindings.All[0].At("something is wrong", "mend it") with { Severity = Model.Diagnostics.Severity.Error }] };
        BinQuestion question = BinSamples.Bin(BinSamples.Ideal, new PlacedUnit("LS-001", held, 0, 1, 2));

        Assert.Equal("DW7026", Assert.Single(BinSamples.Compile(question).Findings).Code);
        BinResult released = BinSamples.Compile(question with { Accept = [new("DW7026", "seen by the yard")] });
        Assert.False(released.Job!.Held);
    }

    [Fact]
    public void Two_units_of_one_mark_are_a_fault_of_the_caller() => Assert.Throws<ArgumentException>(() => BinSamples.Compile(BinSamples.Bin(
        BinSamples.Conditions, new PlacedUnit("LS-001", BinSamples.Straight, 0, 1, 2), new PlacedUnit("LS-001", BinSamples.Straight, 0, 7, 2))));

    // The overlap when what a needle gives the first unit is left out and nothing answers for it: the needle is sound, so nothing is found anew.
    private static double WithoutColumn(PlacedUnit placed, int column, int row)
    {
        SolvedUnit unit = placed.Solved;
        Compute.Dosing.Footprint footprint = Compute.Dosing.Footprint.Of(Samples.Printer, unit.Placement);
        int i = footprint.Column + column - placed.Column - unit.Lattice.FirstColumn, j = footprint.Row + row - placed.Row - unit.Lattice.FirstRow;
        int[] doses = [.. unit.CentiMillilitres.Select((dose, index) => index % unit.Lattice.Columns == i && index / unit.Lattice.Columns % unit.Lattice.Rows == j ? 0 : dose)];
        Assert.NotEqual(unit.CentiMillilitres, doses);
        return BinSamples.Compile(BinSamples.Bin(BinSamples.Ideal, placed with { Solved = unit with { CentiMillilitres = doses } })).Units[0].Overlap;
    }

    // Every needle with a gain and an offset of its own.
    private static NeedleTable Table(NeedleCondition condition) => new()
    {
        Needles =
        [
            .. from row in Enumerable.Range(1, 8)
            from column in Enumerable.Range(1, 12)
            select new NeedleState
            {
                Column = column, Row = row, Condition = condition, Gain = 0.9 + 0.02 * ((7 * column + 3 * row) % 11), OffsetMillilitres = 0.05 * ((column + 2 * row) % 5 - 2),
            },
        ],
    };
}
