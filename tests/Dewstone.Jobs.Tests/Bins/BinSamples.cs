using Dewstone.Jobs.Bins;
using Dewstone.Jobs.Compilation;
using Dewstone.Model.Description;
using Dewstone.Model.Quantities;
using Dewstone.Model.Results;
using Dewstone.Reading;

namespace Dewstone.Jobs.Tests.Bins;

/// <summary>A small step with a notch and a hollow, like no turn of itself, solved alone at 4 cells a voxel; and bins of 12 by 8 positions to stand it in.</summary>
internal static class BinSamples
{
    public const int Cells = 4;

    private static readonly Lazy<SolvedUnit> StraightUnit = new(() => Solve(shifted: false)), ShiftedUnit = new(() => Solve(shifted: true));

    public static ReefUnit Step { get; } = new()
    {
        Name = "Little step",
        OuterBox = new Size3(0.19, 0.15, 0.15),
        Rounding = new Length(0.02),
        Relief = new Relief
        {
            Amplitude = new Length(0.004),
            ShortestLength = new Length(0.04),
            LongestLength = new Length(0.1),
            Faces = FaceSet.Sides,
            Seed = 3,
        },
        Cavities =
        [
            new FormedCavity { Name = "notch", Form = new BlockForm { Centre = new Point3(0.17, 0.02, 0.15), Size = new Size3(0.1, 0.08, 0.12), Rounding = new Length(0.01) } },
        ],
    };

    public static SolvedUnit Straight => StraightUnit.Value;

    public static SolvedUnit Shifted => ShiftedUnit.Value;

    public static JobDescription Conditions { get; } = new() { Unit = Step, Mix = Samples.Mix, Printer = Samples.Printer };

    /// <summary>The same bin under a head that gives exactly what it is asked for.</summary>
    public static JobDescription Ideal { get; } = Conditions with { Printer = IdealHead.Of(Samples.Printer) };

    public static SolvedUnit Solve(bool shifted, ReefUnit? unit = null, bool covered = false, JobDescription? conditions = null)
    {
        UnitResult result = UnitSolver.Solve(
            new ReadResult((conditions ?? Conditions) with { Unit = unit ?? Step }, [], new SourceMaps(), []),
            new PlacementWish { QuarterTurns = 0, Shift = default(Point3), ShiftedLayers = shifted }, covered,
            new CompileOptions { CellsPerVoxel = Cells, ToolVersion = "0.0.0" }, new Parallelism(2), null, TestContext.Current.CancellationToken);
        Assert.NotNull(result.Solved);
        return result.Solved;
    }

    public static BinQuestion Bin(JobDescription conditions, params IReadOnlyList<PlacedUnit> units) => new()
    {
        Name = "yard-001",
        Conditions = conditions,
        Units = units,
        Gap = new Length(0.1),
        SetBeforeDig = new Duration(36.0 * 3600.0),
        ToolVersion = "0.0.0",
    };

    public static BinResult Compile(BinQuestion question, int threads = 2) =>
        BinCompiler.Compile(question, new Parallelism(threads), null, TestContext.Current.CancellationToken);
}
