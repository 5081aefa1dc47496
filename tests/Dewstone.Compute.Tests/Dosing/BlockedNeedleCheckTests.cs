using System.Globalization;
using Dewstone.Compute.Dosing;
using Dewstone.Compute.Geometry;
using Dewstone.Model.Description;
using Dewstone.Model.Diagnostics;
using Dewstone.Model.Lattices;
using Dewstone.Model.Quantities;
using Dewstone.Model.Results;

namespace Dewstone.Compute.Tests.Dosing;

public sealed class BlockedNeedleCheckTests
{
    private const int Cells = 4;

    // A solid box of 400 x 400 x 300 mm that hardens wholly, except what a test leaves loose.
    internal static IReadOnlyList<Diagnostic> Check(Func<Point3, bool> loose, ReefUnit unit, params (int Column, int Row)[] blocked)
    {
        JobDescription job = Samples.Job(unit) with
        {
            Needles = new NeedleTable { Needles = [.. blocked.Select(n => new NeedleState { Column = n.Column, Row = n.Row, Condition = NeedleCondition.Blocked })] },
        };
        PlacementResult place = Placer.Place(job, Cells);
        CellGrid grid = place.Cells!;
        ReefShape shape = ReefShapeBuilder.Build(unit).Shape;
        TargetField target = Voxelizer.Voxelize(shape, place.Placement!, grid, new Parallelism(1), null, TestContext.Current.CancellationToken);
        var hardened = new byte[grid.Count];
        for (int i = 0; i < hardened.Length; i++)
        {
            Point3 centre = new(
                grid.Origin.X + (i % grid.Nx + 0.5) * grid.CellMetres, grid.Origin.Y + (i / grid.Nx % grid.Ny + 0.5) * grid.CellMetres,
                grid.Origin.Z + (i / (grid.Nx * grid.Ny) + 0.5) * grid.CellHeightMetres);
            hardened[i] = (byte)(loose(place.Placement!.ToUnit(centre)) ? 0 : 1);
        }

        MoistureResult moisture = new()
        {
            Grid = grid,
            VolumetricWaterContent = new float[grid.Count],
            Hardened = hardened,
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
        return BlockedNeedleCheck.Check(job, shape, place.Placement!, place.Lattice!, target, moisture);
    }

    internal static ReefUnit Box => Samples.Box(0.4, 0.4, 0.3) with
    {
        Tunnels =
        [
            new AxisTunnel { Name = "drain", Along = Axis.Y, At = new Point3(0.3, 0, 0.15), Section = new RoundSection(new Length(0.06)) },
        ],
    };

    [Fact]
    public void Loose_voxel_of_a_blocked_needle_is_named_with_its_volume_place_and_neighbour()
    {
        // The box stands centred in the bin of 24 positions: its first column is 9, so needle 10,11 waters x 50 to 100, y 100 to 150 mm of the unit.
        Diagnostic finding = Assert.Single(Check(p => p.X is > 0.05 and < 0.10 && p.Y is > 0.10 and < 0.15 && p.Z is > 0.1 and < 0.2, Box, (10, 11)));
        Assert.Equal("DW3015", finding.Code);

        // Two voxels of 50 mm, 0.125 L each, of the six in the column.
        Assert.Contains(string.Create(CultureInfo.InvariantCulture, $"10,11 leaves {0.25:0.00} of {0.75:0.0} L"), finding.Message, StringComparison.Ordinal);
        Assert.Contains("x 75, y 125, z 125 mm (75 mm from the west face)", finding.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Loss_beside_a_tunnel_names_the_tunnel()
    {
        Diagnostic finding = Assert.Single(Check(p => p.X is > 0.20 and < 0.25 && p.Z is > 0.1 and < 0.2, Box, (13, 11)));
        Assert.Contains("from tunnel `drain`", finding.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Blocked_needle_whose_neighbours_made_good_is_not_mentioned() => Assert.Empty(Check(_ => false, Box, (10, 11)));

    [Fact]
    public void Loose_voxel_of_a_sound_needle_is_no_matter_of_this_check() =>
        Assert.Empty(Check(p => p.X is > 0.05 and < 0.10, Box, (16, 16)));
}
