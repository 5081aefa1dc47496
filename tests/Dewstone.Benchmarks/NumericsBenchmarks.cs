using BenchmarkDotNet.Attributes;
using Dewstone.Compute.Numerics;
using Dewstone.Model.Results;

namespace Dewstone.Benchmarks;

/// <summary>Speeds of the cell operations; each run measures whole calls with their allocations.</summary>
[MemoryDiagnoser]
public class NumericsBenchmarks
{
    private GridShape _shape;
    private float[] _field = [];
    private byte[] _cells = [];
    private byte[] _regions = [];
    private Parallelism _threads;

    [Params(144, 288)]
    public int Side { get; set; }

    [Params(1, 2)]
    public int Threads { get; set; }

    [GlobalSetup]
    public void Prepare()
    {
        _shape = new GridShape(Side, Side, Side);
        _field = NumericsSolid.Field(_shape);
        _cells = NumericsSolid.Cells(_field);
        _threads = new Parallelism(Threads);
        _regions = new byte[_cells.Length];
        for (int i = 0; i < _regions.Length; i += Side)
        {
            _regions[i] = PercolatingWidth.From;
            _regions[i + Side - 1] = PercolatingWidth.To;
        }

        // The two outermost cells are a gap around the box: the way through must not go around it.
        for (int i = 0; i < _regions.Length; i++)
        {
            int y = i / Side % Side, z = i / _shape.Plane;
            _regions[i] = Math.Abs(y - Side / 2) < Side / 3 && Math.Abs(z - Side / 2) < Side / 3 ? _regions[i] : (byte)0;
        }
    }

    [Benchmark]
    public int[] DistancesOfCubes() => DistanceTransform.Squared(_cells, _shape, Phase.Empty, OutsideCells.Ignored, _threads);

    [Benchmark]
    public float[] DistancesOfFlatCells() =>
        DistanceTransform.Squared(_cells, _shape, new CellSize(1.0, 0.95), Phase.Empty, OutsideCells.Ignored, _threads);

    [Benchmark]
    public ComponentMap Labels6() => Components.Label(_cells, _shape, Phase.Set, Connectivity.Faces, _threads);

    [Benchmark]
    public ComponentMap Labels26OfEmpty() =>
        Components.Label(_cells, _shape, Phase.Empty, Connectivity.FacesEdgesCorners, _threads);

    [Benchmark]
    public SurfaceMesh Surface() => IsoSurface.At(_field, _shape, CellSize.Unit, 0f, _threads);

    [Benchmark]
    public float[] Thickness() => LocalThickness.Of(
        SurfaceDistance.Of(_field, _shape, CellSize.Unit, 0f, Side / 2.0, _threads), _shape, CellSize.Unit, _threads);

    [Benchmark]
    public Passage? WidestWay()
    {
        float[] clearances = DistanceTransform.Squared(_cells, _shape, CellSize.Unit, Phase.Set, OutsideCells.Ignored, _threads);
        for (int i = 0; i < clearances.Length; i++)
        {
            clearances[i] = MathF.Sqrt(clearances[i]) - 0.5f;
        }

        return PercolatingWidth.Between(clearances, _shape, _regions, Connectivity.FacesEdgesCorners);
    }
}
