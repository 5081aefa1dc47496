using BenchmarkDotNet.Attributes;
using Dewstone.Compute.Geometry;
using Dewstone.Model.Description;
using Dewstone.Model.Lattices;
using Dewstone.Model.Quantities;
using Dewstone.Model.Results;

namespace Dewstone.Benchmarks;

/// <summary>
/// Filling 22 x 22 x 19 voxels of 50 mm at 8 cells a side (4.7 million cells) with a 900 mm block: two tunnels, 18 niches, relief, a solid
/// foot.
/// </summary>
public class VoxelizerBenchmarks
{
    /// <summary>Points whose distances are asked for.</summary>
    public const int Points = 64 * 64 * 64;

    private static readonly CellGrid Grid = CellGrid.Over(
        new Lattice
        {
            Columns = 22,
            Rows = 22,
            Layers = 19,
            FirstColumn = 1,
            FirstRow = 1,
            PitchMetres = 0.05,
            LayerMetres = 0.05,
            OriginXMetres = 0.025,
            OriginYMetres = 0.025,
            TipDepthMetres = 0.025,
            BinXMetres = 1.2,
            BinYMetres = 1.2,
            UnderLayers = 1,
        },
        8);

    private static readonly UnitPlacement Placement = new() { QuarterTurns = 0, Corner = new Point3(0.15, 0.15, 0.05), UnitBox = new Size3(0.9, 0.9, 0.9) };

    private static readonly ReefUnit Block = new()
    {
        Name = "block",
        OuterBox = new Size3(0.9, 0.9, 0.9),
        Rounding = new Length(0.05),
        Blend = new Length(0.025),
        Relief = new Relief
        {
            Amplitude = new Length(0.012),
            ShortestLength = new Length(0.08),
            LongestLength = new Length(0.25),
            Faces = FaceSet.Sides | FaceSet.Top,
            Seed = 7,
        },
        Tunnels = [Way("east-west", Axis.X), Way("north-south", Axis.Y)],
        Cavities =
        [
            new ScatteredCavities
            {
                Name = "niches",
                Count = 18,
                LeastDiameter = new Length(0.11),
                GreatestDiameter = new Length(0.16),
                Gap = new Length(0.1),
                Faces = FaceSet.Sides | FaceSet.Top,
                BandZ = new Band(new Length(0.5), new Length(0.9)),
                Seed = 11,
            },
        ],
        Keep = [new KeepZone { Name = "foot",
            Form = new BlockForm { Centre = new Point3(0.45, 0.45, 0.05), Size = new Size3(0.9, 0.9, 0.1) } }],
    };

    private readonly ReefShape shape = ReefShapeBuilder.Build(Block).Shape;
    private readonly Point3[] points = new Point3[Points];
    private readonly double[] distances = new double[Points];

    /// <summary>Spreads the points of <see cref="SignedDistances"/> over the outer box and a little around it.</summary>
    public VoxelizerBenchmarks()
    {
        for (int i = 0; i < Points; i++)
        {
            points[i] = new Point3(i % 64 / 64.0, i / 64 % 64 / 64.0, i / 4096 / 64.0) + new Point3(-0.05, -0.05, -0.05);
        }
    }

    /// <summary>Threads.</summary>
    [Params(1, 2)]
    public int Threads { get; set; }

    /// <summary>Cells of the field.</summary>
    public static int Cells => Grid.Count;

    /// <summary>The whole field.</summary>
    /// <returns>Its volume, cubic metres.</returns>
    [Benchmark]
    public double Voxelize() => Voxelizer.Voxelize(shape, Placement, Grid, new Parallelism(Threads), null, CancellationToken.None).CubicMetres;

    /// <summary>Signed distances of single points, one thread.</summary>
    /// <returns>The distances, metres.</returns>
    [Benchmark(OperationsPerInvoke = Points)]
    public double[] SignedDistances()
    {
        for (int i = 0; i < points.Length; i++)
        {
            distances[i] = shape.SignedDistance(points[i]);
        }

        return distances;
    }

    /// <summary>Building the shape with its scatter, and checking it.</summary>
    /// <returns>Number of findings.</returns>
    [Benchmark]
    public int BuildAndCheck()
    {
        ReefShape built = ReefShapeBuilder.Build(Block).Shape;
        return ShapeCheck.Check(Block, built, 0.05, 0.05).Count;
    }

    private static AxisTunnel Way(string name, Axis along) => new()
    {
        Name = name,
        Along = along,
        At = along == Axis.X ? new Point3(0.0, 0.45, 0.27) : new Point3(0.45, 0.0, 0.27),
        Section = new RectangularSection(new Length(0.34), new Length(0.3), new Length(0.04)),
    };
}
