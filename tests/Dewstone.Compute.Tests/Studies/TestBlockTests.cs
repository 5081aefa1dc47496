using Dewstone.Compute.Studies;
using Dewstone.Compute.Wetting;
using Dewstone.Model.Description;
using Dewstone.Model.Lattices;
using Dewstone.Model.Quantities;
using Dewstone.Model.Results;

namespace Dewstone.Compute.Tests.Studies;

/// <summary>The measures of test blocks on fields whose surfaces are known exactly.</summary>
public sealed class TestBlockTests
{
    private const int Cells = 8;
    private const double Cell = 0.05 / Cells;
    private static readonly Parallelism Threads = new(2);
    private static readonly Point3 Corner = new(0.1, 0.1, 0.05);
    private static readonly BedProperties Bed = BedProperties.From(Samples.EstuaryMix(), new Density(1700), new Temperature(20));

    public static TheoryData<Axis> Axes => [Axis.X, Axis.Y, Axis.Z];

    /// <summary>
    /// A round bore of 38 mm in a block drawn with one of 70 mm: the largest ball that gets through it is 38 mm across, exact. The surface between cells is
    /// made of chords of its circle, at most sqrt(2) cells long and inside it: the measure is low by at most 2 x (2 x 6.25^2) / (8 x 19) = 1.03 mm (sagitta).
    /// </summary>
    [Theory]
    [MemberData(nameof(Axes))]
    public void Clear_opening_of_a_bore_is_its_diameter(Axis axis)
    {
        BlockFrame frame = Frame(axis);
        HoleBlock block = new(frame, [[(0.07, 1)]], [(0.0, 0.0), (0.5, 0.5)], Cells);
        AxisTunnel drawn = (AxisTunnel)block.Unit.Tunnels[0];
        (_, double u, double v) = frame.Of(drawn.At);
        WettedBlock wetted = Wetted(block.Unit, p =>
        {
            (_, double pu, double pv) = frame.Of(p);
            return (Math.Sqrt((pu - u) * (pu - u) + (pv - v) * (pv - v)) - 0.019) / Cell;
        });

        TestHole hole = Assert.Single(block.Measure(wetted, Threads));

        Assert.Equal((0.07, 1), (hole.DrawnMetres, hole.Place));
        Assert.InRange(hole.ClearMetres, 0.038 - 0.00103, 0.038 + 1e-5);
    }

    [Fact]
    public void Clear_opening_of_a_plugged_bore_is_none()
    {
        BlockFrame frame = Frame(Axis.X);
        HoleBlock block = new(frame, [[(0.07, 0)]], [(0.0, 0.0)], Cells);
        WettedBlock wetted = Wetted(block.Unit, p => p.X is > 0.08 and < 0.12 ? 1.0 : -1.0);

        Assert.Equal(0.0, Assert.Single(block.Measure(wetted, Threads)).ClearMetres);
    }

    /// <summary>
    /// A wall of 100 mm (16 cells) of which all but two cells at one face set, and in one place a pocket of three cells more: 11 of 16, core whole when the
    /// pocket lies at the face and broken when it lies in the middle.
    /// </summary>
    [Theory]
    [InlineData(2, true)]
    [InlineData(6, false)]
    public void Wall_is_measured_on_its_thinnest_line_and_in_its_middle_third(int pocketFrom, bool core)
    {
        foreach (Axis axis in (Axis[])[Axis.X, Axis.Y, Axis.Z])
        {
            BlockFrame frame = Frame(axis);
            WallBlock block = new(frame, [[(0.1, 0)]], [0.5]);
            double from = frame.NextA(0.075 + 0.05, 0.5) - 0.05;
            WettedBlock wetted = Wetted(block.Unit, p =>
            {
                (double a, double u, double v) = frame.Of(p);
                double cell = (a - from) / Cell;
                bool pocket = cell > pocketFrom && cell < pocketFrom + 3 && u is > 0.09 and < 0.11 && v is > 0.09 and < 0.11;
                return cell < 2.0 || cell > 16.0 || pocket ? -1.0 : 1.0;
            });

            TestWall wall = Assert.Single(block.Measure(wetted));

            Assert.Equal((11.0 / 16.0, core, core), (wall.LeastSetShare, wall.CoreIsSet, wall.IsSound));
        }
    }

    private static BlockFrame Frame(Axis axis) => new(axis, Samples.YardPrinter().Grid, 0.025);

    // A field whose level is the rule in the block's box, at most 2, and -1 outside it; two pitches of margin.
    private static WettedBlock Wetted(ReefUnit unit, Func<Point3, double> rule)
    {
        Size3 box = unit.OuterBox;
        CellGrid grid = new()
        {
            Nx = (int)Math.Round((box.X + 0.2) / Cell),
            Ny = (int)Math.Round((box.Y + 0.2) / Cell),
            Nz = (int)Math.Round((box.Z + 0.1) / Cell),
            CellsPerPitch = Cells,
            CellsPerLayer = Cells,
            Origin = new Point3(0.0, 0.0, 0.0),
            CellMetres = Cell,
            CellHeightMetres = Cell,
        };
        double threshold = Bed.ThresholdContent;
        MoistureResult moisture = Samples.Moisture(grid, i =>
        {
            Point3 p = grid.Centre(i % grid.Nx, i / grid.Nx % grid.Ny, i / (grid.Nx * grid.Ny)) - Corner;
            bool inside = p.X > 0 && p.Y > 0 && p.Z > 0 && p.X < box.X && p.Y < box.Y && p.Z < box.Z;
            return inside ? threshold * Math.Pow(Math.Max(0.0, 1.0 + rule(p)), 1.0 / (Bed.Law.Exponent - 1)) : 0.0;
        });
        return new WettedBlock(moisture, Corner, Bed);
    }
}
