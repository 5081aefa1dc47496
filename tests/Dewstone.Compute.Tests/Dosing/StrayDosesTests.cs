using Dewstone.Compute.Dosing;
using Dewstone.Model.Lattices;
using Dewstone.Model.Results;

namespace Dewstone.Compute.Tests.Dosing;

public sealed class StrayDosesTests
{
    private const int Cells = 4;

    private static readonly Lattice Lattice = new()
    {
        Columns = 6,
        Rows = 1,
        Layers = 1,
        FirstColumn = 0,
        FirstRow = 0,
        PitchMetres = 0.05,
        LayerMetres = 0.05,
        OriginXMetres = 0.025,
        OriginYMetres = 0.025,
        TipDepthMetres = 0.025,
        BinXMetres = 0.3,
        BinYMetres = 0.05,
        UnderLayers = 0,
    };

    private static readonly Lattice Deep = Lattice with { Columns = 2, Rows = 3, Layers = 3, BinXMetres = 0.1, BinYMetres = 0.15 };

    // Hardened as a text says: one letter a voxel, all its cells alike; # sets well, - hardly.
    private static DosePlan? Without(string hardened, string dosed, params double[] fractions) => Without(1.0, hardened, dosed, fractions);

    private static DosePlan? Without(double joined, string hardened, string dosed, params double[] fractions) =>
        Without(Lattice, joined, hardened, dosed, fractions);

    private static DosePlan? Without(Lattice lattice, double joined, string hardened, string dosed, double[] fractions)
    {
        CellGrid grid = CellGrid.Over(lattice, Cells);
        char At(int cell) => hardened[((cell / (grid.Nx * grid.Ny) / Cells * lattice.Rows) + cell / grid.Nx % grid.Ny / Cells) * lattice.Columns + cell % grid.Nx / Cells];
        MoistureResult moisture = new()
        {
            Grid = grid,
            VolumetricWaterContent = [.. Enumerable.Range(0, grid.Count).Select(cell => At(cell) switch { '#' => 0.2f, '-' => 0.1f, _ => 0f })],
            Hardened = [.. Enumerable.Range(0, grid.Count).Select(cell => (byte)(At(cell) == '.' ? 0 : 1))],
            BinderKilogramsPerCubicMetre = 425,
            LiquidKilogramsPerCubicMetre = 1000,
            Porosity = 0.38,
            ThresholdContent = 0.0935,
            InjectedCubicMetres = 0,
            RefusedCubicMetres = 0,
            FieldCubicMetres = 0,
            Refused = [],
            LargestContent = 0,
            TimeSteps = 0,
            CellUpdates = 0,
        };
        DosePlan doses = new()
        {
            Lattice = lattice,
            Steps = [.. dosed.Select(c => c == '#' ? 200 : 0)],
            CentiMillilitres = [.. dosed.Select(c => c == '#' ? 2000 : 0)],
        };
        return StrayDoses.Without(doses, fractions, moisture, joined, new Parallelism(2));
    }

    [Fact]
    public void Lump_of_one_dose_apart_from_the_unit_is_left_out()
    {
        DosePlan? left = Without("###..#", "###..#", 1, 1, 1, 0, 0, 0.3);
        Assert.Equal([2000, 2000, 2000, 0, 0, 0], left!.CentiMillilitres);
        Assert.Equal([200, 200, 200, 0, 0, 0], left.Steps);
    }

    // Two columns, three rows, three layers; rows from the first on, layers apart by a blank. The unit fills the first row of the lowest layer and what is above
    // its first voxel.
    [Theory]
    [InlineData("##...# #..... #.....", 5)]
    [InlineData("##.... #..#.. #.....", 9)]
    [InlineData("##.... #..... #...#.", 16)]
    public void Lump_is_found_in_its_row_and_layer(string voxels, int lump)
    {
        string flat = voxels.Replace(" ", "", StringComparison.Ordinal);
        double[] fractions = [.. flat.Select((_, i) => i == lump ? 0.3 : 1.0)];
        DosePlan? left = Without(Deep, 1.0, flat, flat, fractions);
        Assert.Equal(flat.Select((c, i) => c == '#' && i != lump ? 2000 : 0), left!.CentiMillilitres);
    }

    [Fact]
    public void Lump_that_is_wanted_for_the_most_part_stays_to_be_seen() => Assert.Null(Without("###..#", "###..#", 1, 1, 1, 0, 0, 0.6));

    [Fact]
    public void Piece_of_several_doses_is_a_matter_of_the_drawing() => Assert.Null(Without("###.##", "###.##", 1, 1, 1, 0, 0.3, 0.3));

    // The voxel between sets at 0.1, 1.07 times the threshold.
    [Fact]
    public void Lump_that_hangs_on_by_cells_that_hardly_set_is_left_out_with_a_margin()
    {
        Assert.Null(Without(1.0, "###-#.", "###.#.", 1, 1, 1, 0, 0.3, 0));
        Assert.Equal([2000, 2000, 2000, 0, 0, 0], Without(1.2, "###-#.", "###.#.", 1, 1, 1, 0, 0.3, 0)!.CentiMillilitres);
    }

    [Fact]
    public void Dose_that_joins_the_unit_stays() => Assert.Null(Without("####..", "####..", 1, 1, 1, 0.1, 0, 0));

    [Fact]
    public void Least_doses_in_voxels_hardly_wanted_are_left_out_and_no_others()
    {
        DosePlan doses = new() { Lattice = Lattice, Steps = [20, 20, 22, 23, 300, 0], CentiMillilitres = [200, 200, 220, 230, 3000, 0] };
        DoseLimits limits = DoseLimits.Of(Samples.Job(), Lattice);
        DosePlan? left = StrayDoses.WithoutLeast(doses, [0.3, 0.6, 0.3, 0.3, 0.1, 0.0], limits);
        Assert.Equal([0, 200, 0, 230, 3000, 0], left!.CentiMillilitres);
        Assert.Null(StrayDoses.WithoutLeast(doses, [0.6, 0.6, 0.6, 0.3, 0.1, 0.0], limits));
    }
}
