using Dewstone.Compute.Numerics;
using Dewstone.Compute.Wetting;
using Dewstone.Model.Lattices;
using Dewstone.Model.Results;

namespace Dewstone.Compute.Tests.Wetting;

/// <summary>A job of a few needles: a whole bin of positions, dosed where a test says.</summary>
internal sealed class SmallJob
{
    private readonly Lattice lattice;
    private readonly CellGrid grid;
    private readonly double[] doses;
    private readonly double[] starts;
    private readonly double[] pumps;
    private readonly double[] spreads;

    /// <summary>A dry bin of positions, all layers spread at 0 s, doses given at once at 0 s.</summary>
    public SmallJob(
        int columns, int rows, int layers, int cells = 8, double pitch = ReferenceMix.Pitch, double? layerHeight = null, bool shifted = false,
        double marginMetres = 0.0)
    {
        double height = layerHeight ?? pitch;
        lattice = new Lattice
        {
            Columns = columns,
            Rows = rows,
            Layers = layers,
            FirstColumn = 0,
            FirstRow = 0,
            PitchMetres = pitch,
            LayerMetres = height,
            OriginXMetres = pitch / 2.0 + marginMetres,
            OriginYMetres = pitch / 2.0 + marginMetres,
            TipDepthMetres = height / 2.0,
            BinXMetres = columns * pitch + 2.0 * marginMetres,
            BinYMetres = rows * pitch + 2.0 * marginMetres,
            UnderLayers = 0,
            ShiftedLayers = shifted,
        };
        grid = CellGrid.Over(lattice, cells);
        doses = new double[lattice.Count];
        starts = new double[lattice.Count];
        pumps = new double[lattice.Count];
        spreads = new double[layers];
    }

    public Lattice Lattice => lattice;

    public CellGrid Grid => grid;

    public SmallJob Dose(int i, int j, int k, double millilitres)
    {
        doses[lattice.Index(i, j, k)] = millilitres * 1e-6;
        return this;
    }

    /// <summary>Doses every position of a block of positions.</summary>
    public SmallJob DoseBlock(int first, int end, int firstLayer, int endLayer, Func<int, int, int, double> millilitres)
    {
        for (int k = firstLayer; k < endLayer; k++)
        {
            for (int j = first; j < end; j++)
            {
                for (int i = first; i < end; i++)
                {
                    Dose(i, j, k, millilitres(i, j, k));
                }
            }
        }

        return this;
    }

    /// <summary>A layer every so often, dosed as soon as it lies spread, all pumps running equally long.</summary>
    public SmallJob Layered(double secondsPerLayer = 80.0, double pumpSeconds = 8.0)
    {
        for (int k = 0; k < lattice.Layers; k++)
        {
            spreads[k] = k * secondsPerLayer;
            int perLayer = lattice.Columns * lattice.Rows;
            Array.Fill(starts, spreads[k], k * perLayer, perLayer);
        }

        Array.Fill(pumps, pumpSeconds);
        return this;
    }

    public WettingProblem Problem(BedProperties? bed = null) => new()
    {
        Lattice = lattice,
        Grid = grid,
        DosesCubicMetres = doses,
        Schedule = new DoseSchedule { LayerSpreadSeconds = spreads, DoseStartSeconds = starts, PumpSeconds = pumps },
        Bed = bed ?? ReferenceMix.Bed(),
    };

    public MoistureResult Solve(BedProperties? bed = null, int threads = 1) =>
        WettingSolver.Solve(Problem(bed), new Parallelism(threads), null, CancellationToken.None);

    /// <summary>The hardened surface of a result, placed between cells.</summary>
    public static LevelSurface Surface(MoistureResult result, int power = 3) => new(
        result.VolumetricWaterContent, new GridShape(result.Grid.Nx, result.Grid.Ny, result.Grid.Nz),
        new CellSize(result.Grid.CellMetres, result.Grid.CellHeightMetres), result.ThresholdContent, power);

    /// <summary>Diameter of the ball of a volume, mm.</summary>
    public static double EquivalentDiameter(double cubicMetres) => 1000.0 * Math.Cbrt(6.0 * cubicMetres / Math.PI);
}
