using Dewstone.Compute.Numerics;
using Dewstone.Model.Lattices;
using Dewstone.Model.Quantities;
using Dewstone.Model.Results;

namespace Dewstone.Compute.Strength;

/// <summary>The largest hardened piece in bricks of many cells, unit frame: how much of each is hardened, how heavy and how strong it is.</summary>
internal sealed class BodyBricks
{
    private const int Bins = 4096;
    private const double BinPascals = 250e6 / Bins;

    private readonly long[] histogram = new long[Bins];
    private double strengthSum;
    private Point3 moment;

    private BodyBricks(GridShape shape, Point3 corner, Size3 edges)
    {
        (Shape, Corner, Edges) = (shape, corner, edges);
        (Filled, Kilograms, Pascals) = (new float[shape.Count], new double[shape.Count], new float[shape.Count]);
        Octants = new GridShape(2 * shape.Nx, 2 * shape.Ny, 2 * shape.Nz);
        FilledOctants = new float[Octants.Count];
    }

    /// <summary>Bricks along each axis, unit frame.</summary>
    public GridShape Shape { get; }

    /// <summary>Lower corner, metres, unit frame.</summary>
    public Point3 Corner { get; }

    /// <summary>Edges of a brick, metres.</summary>
    public Size3 Edges { get; }

    /// <summary>Hardened share of each brick, 0 to 1.</summary>
    public float[] Filled { get; }

    /// <summary>Octants of bricks along each axis.</summary>
    public GridShape Octants { get; }

    /// <summary>Hardened share of each octant, 0 to 1.</summary>
    public float[] FilledOctants { get; }

    /// <summary>Mass of each brick, kg: dry mix and water of its hardened cells.</summary>
    public double[] Kilograms { get; }

    /// <summary>Mean strength of each brick's hardened cells at 28 days, Pa.</summary>
    public float[] Pascals { get; }

    /// <summary>Hardened cells in all.</summary>
    public long Cells { get; private set; }

    /// <summary>Mass in all, kg.</summary>
    public double TotalKilograms { get; private set; }

    /// <summary>Centre of gravity, metres, unit frame.</summary>
    public Point3 CentreOfGravity => moment * (1.0 / TotalKilograms);

    /// <summary>Mean strength at 28 days, Pa.</summary>
    public double MeanPascals => strengthSum / Cells;

    /// <summary>Takes the cells together.</summary>
    /// <param name="moisture">What the water did.</param>
    /// <param name="placement">Where the unit stands.</param>
    /// <param name="looseDensity">Density of the bed as spread.</param>
    /// <param name="strength">Strength of a cell.</param>
    /// <param name="mostBricks">Most bricks along an axis.</param>
    /// <param name="parallelism">Threads; no result depends on them.</param>
    /// <returns>The bricks; null when nothing hardened.</returns>
    public static BodyBricks? Of(
        MoistureResult moisture, UnitPlacement placement, Density looseDensity, CellStrength strength, int mostBricks, Parallelism parallelism)
    {
        CellGrid grid = moisture.Grid;
        ComponentMap map = Components.Label(moisture.Hardened, new GridShape(grid.Nx, grid.Ny, grid.Nz), Phase.Set, Connectivity.Faces, parallelism);
        if (map.Pieces.Count == 0)
        {
            return null;
        }

        int main = map.Pieces.Index().MaxBy(piece => piece.Item.Cells).Index;
        UnitCells cells = new(grid, placement, map.Pieces[main].Box);
        int together = Together(cells, grid, mostBricks), high = Math.Max(1, (int)Math.Round(together * grid.CellMetres / grid.CellHeightMetres));
        BodyBricks bricks = new(
            new GridShape(Over(cells.Count.Nx, together), Over(cells.Count.Ny, together), Over(cells.Count.Nz, high)),
            cells.Corner, new Size3(together * grid.CellMetres, together * grid.CellMetres, high * grid.CellHeightMetres));
        LayerSums[] sums = new LayerSums[bricks.Shape.Nz];
        Chunks.Run(sums.Length, 1, parallelism, (layer, _) =>
            sums[layer] = bricks.Gather(layer, together, high, cells, moisture, map.Labels, main + 1, looseDensity.KilogramsPerCubicMetre, strength));
        foreach (LayerSums sum in sums)
        {
            bricks.Add(sum);
        }

        return bricks;
    }

    /// <summary>Strength that a share of the hardened cells does not reach.</summary>
    /// <param name="share">0 to 1.</param>
    /// <returns>Pa at 28 days, to 0.03 MPa.</returns>
    public double Percentile(double share)
    {
        long seen = 0, wanted = (long)Math.Ceiling(share * Cells);
        int bin = 0;
        while (bin < Bins - 1 && (seen += histogram[bin]) < wanted)
        {
            bin++;
        }

        return (bin + 0.5) * BinPascals;
    }

    /// <summary>Middle of a brick.</summary>
    /// <param name="x">Brick along x.</param>
    /// <param name="y">Brick along y.</param>
    /// <param name="z">Brick along z.</param>
    /// <returns>Metres, unit frame.</returns>
    public Point3 Centre(int x, int y, int z) => Corner + new Point3((x + 0.5) * Edges.X, (y + 0.5) * Edges.Y, (z + 0.5) * Edges.Z);

    private static int Over(int cells, int together) => (cells + together - 1) / together;

    private static int Together(UnitCells cells, CellGrid grid, int mostBricks)
    {
        int across = Math.Max(cells.Count.Nx, cells.Count.Ny), up = (int)Math.Ceiling(cells.Count.Nz * grid.CellHeightMetres / grid.CellMetres);
        return Over(Math.Max(across, up), mostBricks);
    }

    private LayerSums Gather(
        int layer, int together, int high, UnitCells cells, MoistureResult moisture, int[] labels, int main, double looseDensity, CellStrength strength)
    {
        CellGrid grid = moisture.Grid;
        LayerSums sums = new(new long[Bins]);
        double volume = grid.CellCubicMetres;
        for (int z = layer * high; z < Math.Min((layer + 1) * high, cells.Count.Nz); z++)
        {
            for (int y = 0; y < cells.Count.Ny; y++)
            {
                for (int x = 0; x < cells.Count.Nx; x++)
                {
                    int cell = cells.Index(x, y, z);
                    if (labels[cell] != main)
                    {
                        continue;
                    }

                    double content = moisture.VolumetricWaterContent[cell], pascals = strength.Pascals(content);
                    double mass = (looseDensity + content * moisture.LiquidKilogramsPerCubicMetre) * volume;
                    int brick = Shape.Index(x / together, y / together, layer);
                    Filled[brick]++;
                    AddOctants(x, y, z, together, high);
                    Kilograms[brick] += mass;
                    Pascals[brick] += (float)pascals;
                    sums.Add(mass, cells.Centre(x, y, z) * mass, pascals, Math.Clamp((int)(pascals / BinPascals), 0, Bins - 1));
                }
            }
        }

        float octantCells = together * together * high / 8f;
        for (int octant = 2 * layer * Octants.Plane; octant < 2 * (layer + 1) * Octants.Plane; octant++)
        {
            FilledOctants[octant] /= octantCells;
        }

        for (int brick = layer * Shape.Plane; brick < (layer + 1) * Shape.Plane; brick++)
        {
            Pascals[brick] /= Math.Max(1f, Filled[brick]);
            Filled[brick] /= together * together * high;
        }

        return sums;
    }

    // The middle cell of an odd number of cells counts to both halves of a brick.
    private void AddOctants(int x, int y, int z, int together, int high)
    {
        (int ox, float sx) = Half(x, together);
        (int oy, float sy) = Half(y, together);
        (int oz, float sz) = Half(z, high);
        for (int corner = 0; corner < 8; corner++)
        {
            float share = ((corner & 1) == 0 ? sx : 1f - sx) * ((corner & 2) == 0 ? sy : 1f - sy) * ((corner & 4) == 0 ? sz : 1f - sz);
            if (share > 0f)
            {
                FilledOctants[Octants.Index(ox + (corner & 1), oy + ((corner >> 1) & 1), oz + (corner >> 2))] += share;
            }
        }

        static (int Octant, float LowerShare) Half(int cell, int cells) => (2 * (cell / cells), Math.Clamp(0.5f * cells - cell % cells, 0f, 1f));
    }

    private void Add(LayerSums sums)
    {
        (Cells, TotalKilograms, moment, strengthSum) = (Cells + sums.Cells, TotalKilograms + sums.Kilograms, moment + sums.Moment, strengthSum + sums.Strength);
        for (int bin = 0; bin < Bins; bin++)
        {
            histogram[bin] += sums.Histogram[bin];
        }
    }

    /// <summary>Sums of one layer of bricks.</summary>
    private sealed class LayerSums(long[] histogram)
    {
        public long[] Histogram { get; } = histogram;

        public long Cells { get; private set; }

        public double Kilograms { get; private set; }

        public double Strength { get; private set; }

        public Point3 Moment { get; private set; }

        public void Add(double kilograms, Point3 moment, double pascals, int bin)
        {
            (Cells, Kilograms, Moment, Strength) = (Cells + 1, Kilograms + kilograms, Moment + moment, Strength + pascals);
            Histogram[bin]++;
        }
    }
}
