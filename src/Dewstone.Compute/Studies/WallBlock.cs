using Dewstone.Model.Description;
using Dewstone.Model.Quantities;
using Dewstone.Model.Results;

namespace Dewstone.Compute.Studies;

/// <summary>A test block of walls that stand free, a pitch and a half of loose mix or more between them, in rows.</summary>
/// <remarks>Only the middle of a wall is judged, one needle's breadth along u and two layers along v, where its ends are a pitch or more away.</remarks>
internal sealed class WallBlock
{
    private const double GapSteps = 1.5;
    private const int ExtentSteps = 4;
    private readonly BlockFrame frame;
    private readonly List<(double Thickness, double Centre, double FromU, int Place)> walls = [];

    /// <summary>A block.</summary>
    /// <param name="frame">Walls are normal to its axis.</param>
    /// <param name="rows">Each row: its walls by thickness, metres, and place.</param>
    /// <param name="phases">For each place the phase along a.</param>
    public WallBlock(BlockFrame frame, IReadOnlyList<(double Thickness, int Place)[]> rows, IReadOnlyList<double> phases)
    {
        this.frame = frame;
        double gap = GapSteps * frame.StepA, between = BlockFrame.Whole(GapSteps * frame.StepU, frame.StepU), extent = ExtentSteps * frame.StepU, end = 0.0;
        for (int row = 0; row < rows.Count; row++)
        {
            double a = 0.0;
            foreach ((double thickness, int place) in rows[row])
            {
                double centre = frame.NextA(a + gap + thickness / 2.0, phases[place]);
                walls.Add((thickness, centre, row * (extent + between), place));
                a = centre + thickness / 2.0;
            }

            end = Math.Max(end, a);
        }

        double length = BlockFrame.Whole(end, frame.StepA), breadth = rows.Count * (extent + between) - between, height = ExtentSteps * frame.StepV;
        List<Cavity> slots = [];
        for (int row = 0; row < rows.Count; row++)
        {
            double fromU = row * (extent + between), a = -gap;
            foreach (var wall in walls.Where(wall => wall.FromU == fromU))
            {
                Slot(a, wall.Centre - wall.Thickness / 2.0, fromU, fromU + extent);
                a = wall.Centre + wall.Thickness / 2.0;
            }

            Slot(a, length + gap, fromU, fromU + extent);
            if (row + 1 < rows.Count)
            {
                Slot(-gap, length + gap, fromU + extent, fromU + extent + between);
            }
        }

        Unit = new ReefUnit { Name = "walls", OuterBox = frame.Size(length, breadth, height), Cavities = slots };

        void Slot(double fromA, double toA, double fromU, double toU) => slots.Add(new FormedCavity
        {
            Name = $"slot {slots.Count + 1}",
            Form = new BlockForm
            {
                Centre = frame.Point((fromA + toA) / 2.0, (fromU + toU) / 2.0, height / 2.0),
                Size = frame.Size(toA - fromA, toU - fromU, height + 2.0 * frame.StepV),
            },
        });
    }

    /// <summary>The block as a description.</summary>
    public ReefUnit Unit { get; }

    /// <summary>Measures the walls of the block as it sets.</summary>
    /// <param name="block">The block.</param>
    /// <returns>In the order of the rows.</returns>
    public IReadOnlyList<TestWall> Measure(WettedBlock block) => [.. walls.Select(wall => Measure(block, wall.Thickness, wall.Centre, wall.FromU, wall.Place))];

    private TestWall Measure(WettedBlock block, double thickness, double centre, double fromU, int place)
    {
        (double originA, double originU, double originV) = frame.Of(block.Origin);
        (double cellA, double cellU, double cellV) = frame.Of(new Point3(block.Grid.CellMetres, block.Grid.CellMetres, block.Grid.CellHeightMetres));
        (int strideA, int strideU, int strideV) = frame.Strides(block.Grid);
        (int firstA, int endA) = Cells(centre - thickness / 2.0 - originA, centre + thickness / 2.0 - originA, cellA);
        (int firstU, int endU) = Cells(fromU + 1.5 * frame.StepU - originU, fromU + 2.5 * frame.StepU - originU, cellU);
        (int firstV, int endV) = Cells(frame.StepV - originV, 3.0 * frame.StepV - originV, cellV);
        int least = endA - firstA;
        bool core = true;
        for (int v = firstV; v < endV; v++)
        {
            for (int u = firstU; u < endU; u++)
            {
                int set = 0;
                for (int a = firstA; a < endA; a++)
                {
                    bool isSet = block.Hardened[a * strideA + u * strideU + v * strideV] != 0;
                    set += isSet ? 1 : 0;
                    core &= isSet || Math.Abs((a + 0.5) * cellA + originA - centre) > thickness / 6.0;
                }

                least = Math.Min(least, set);
            }
        }

        return new TestWall(thickness, endA > firstA ? (double)least / (endA - firstA) : 0.0, core, place);
    }

    // Cells whose centres lie between two places.
    private static (int First, int End) Cells(double from, double to, double cell) =>
        ((int)Math.Ceiling(from / cell - 0.5 - 1e-6), (int)Math.Ceiling(to / cell - 0.5 - 1e-6));
}
