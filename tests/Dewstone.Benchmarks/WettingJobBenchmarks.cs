using BenchmarkDotNet.Attributes;
using Dewstone.Compute.Wetting;
using Dewstone.Model.Description;
using Dewstone.Model.Lattices;
using Dewstone.Model.Quantities;
using Dewstone.Model.Results;

namespace Dewstone.Benchmarks;

/// <summary>
/// A whole forward solve: 18 x 18 x 18 needles of 35 mL with one loose layer below and one pitch around, a layer every 80 s, window 600 s.
/// The cube is solid, pitch 50.8 mm (914 mm across); the block has pitch 50 mm (900 mm) and two tunnels of 340 x 300 mm that cross.
/// </summary>
public class WettingJobBenchmarks
{
    private const int Needles = 18;

    private WettingProblem problem = null!;

    /// <summary>Cells a voxel side.</summary>
    [Params(6, 8)]
    public int CellsPerPitch { get; set; }

    /// <summary>Threads.</summary>
    [Params(1, 2)]
    public int Threads { get; set; }

    /// <summary>Which job.</summary>
    [Params("cube", "block")]
    public string Job { get; set; } = "";

    /// <summary>Lays out the job.</summary>
    [GlobalSetup]
    public void LayOut()
    {
        bool isCube = Job == "cube";
        double pitch = isCube ? 0.0508 : 0.05;
        const int side = Needles + 2;
        Lattice lattice = new()
        {
            Columns = side,
            Rows = side,
            Layers = Needles + 1,
            FirstColumn = 1,
            FirstRow = 1,
            PitchMetres = pitch,
            LayerMetres = pitch,
            OriginXMetres = pitch / 2.0,
            OriginYMetres = pitch / 2.0,
            TipDepthMetres = pitch / 2.0,
            BinXMetres = (side + 2) * pitch,
            BinYMetres = (side + 2) * pitch,
            UnderLayers = 1,
        };
        double[] doses = new double[lattice.Count];
        double[] starts = new double[lattice.Count];
        double[] pumps = new double[lattice.Count];
        for (int k = 0; k < lattice.Layers; k++)
        {
            for (int j = 0; j < side; j++)
            {
                for (int i = 0; i < side; i++)
                {
                    int index = lattice.Index(i, j, k);
                    starts[index] = 80.0 * k + 10.0;
                    bool isIn = k > 0 && i is > 0 and <= Needles && j is > 0 and <= Needles;
                    bool isTunnel = k is > 2 and < 9 && (i is > 6 and < 13 || j is > 6 and < 13);
                    doses[index] = isIn && (isCube || !isTunnel) ? 35e-6 : 0.0;
                    pumps[index] = doses[index] / 4e-6;
                }
            }
        }

        problem = new WettingProblem
        {
            Lattice = lattice,
            Grid = CellGrid.Over(lattice, CellsPerPitch),
            DosesCubicMetres = doses,
            Schedule = new DoseSchedule
            {
                LayerSpreadSeconds = [.. Enumerable.Range(0, lattice.Layers).Select(k => 80.0 * k)],
                DoseStartSeconds = starts,
                PumpSeconds = pumps,
            },
            Bed = new BedProperties
            {
                Porosity = 0.383947,
                BinderKilogramsPerCubicMetre = 425.0,
                LiquidKilogramsPerCubicMetre = 1000.0,
                ThresholdWaterCement = 0.22,
                WindowSeconds = 600.0,
                Law = new PowerLaw { AtSaturation = new Diffusivity(3.2e-6), Exponent = 4 },
            },
        };
    }

    /// <summary>From dry to hardened.</summary>
    /// <returns>Cell updates, so that nothing is left out.</returns>
    [Benchmark]
    public long Solve() => WettingSolver.Solve(problem, new Parallelism(Threads), null, CancellationToken.None).CellUpdates;
}
