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

    private readonly UnitCells cells;
    private readonly int[] labels;
    private readonly int label;

    private BodyBricks(GridShape shape, UnitCells cells, (int Together, int High) inBrick, Size3 edges, int[] labels, int label)
    {
        (Shape, this.cells, CellsInBrick, Edges, this.labels, this.label) = (shape, cells, inBrick, edges, labels, label);
        (Filled, Kilograms, Pascals) = (new float[shape.Count], new double[shape.Count], new float[shape.Count]);
        Octants = new GridShape(2 * shape.Nx, 2 * shape.Ny, 2 * shape.Nz);
        FilledOctants = new float[Octants.Count];
        Moments = new float[FilledMoments.Count * shape.Count];
    }

    /// <summary>Bricks along each axis, unit frame.</summary>
    public GridShape Shape { get; }

    /// <summary>Lower corner, metres, unit frame.</summary>
    public Point3 Corner => cells.Corner;

    /// <summary>Edges of a brick, metres.</summary>
    public Size3 Edges { get; }

    /// <summary>Cells in a brick, along x or y, and along z.</summary>
    public (int Across, int High) CellsInBrick { get; }

    /// <summary>Cells along each axis; they begin at <see cref="Corner"/>.</summary>
    public GridShape CellCount => cells.Count;

    /// <summary>Edges of a cell, metres.</summary>
    public Size3 CellEdges => new(Edges.X / CellsInBrick.Across, Edges.Y / CellsInBrick.Across, Edges.Z / CellsInBrick.High);

    /// <summary>Hardened share of each brick, 0 to 1.</summary>
    public float[] Filled { get; }

    /// <summary>What of each brick is hardened, 27 a brick as in <see cref="FilledMoments"/>.</summary>
    public float[] Moments { get; }

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
        UnitCells ofPiece = new(grid, placement, map.Pieces[main].Box);
        int together = Together(ofPiece, grid, mostBricks), high = Math.Max(1, (int)Math.Round(together * grid.CellMetres / grid.CellHeightMetres));
        BodyBricks bricks = new(
            new GridShape(Over(ofPiece.Count.Nx, together), Over(ofPiece.Count.Ny, together), Over(ofPiece.Count.Nz, high)),
            ofPiece, (together, high), new Size3(together * grid.CellMetres, together * grid.CellMetres, high * grid.CellHeightMetres), map.Labels, main + 1);
        LayerSums[] sums = new LayerSums[bricks.Shape.Nz];
        Chunks.Run(sums.Length, 1, parallelism, (layer, _) =>
            sums[layer] = bricks.Gather(layer, moisture, looseDensity.KilogramsPerCubicMetre, strength));
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

    /// <summary>Whether a cell is hardened and of this piece.</summary>
    /// <param name="x">Cell along x, from <see cref="Corner"/>.</param>
    /// <param name="y">Cell along y.</param>
    /// <param name="z">Cell along z.</param>
    /// <returns>Whether; false outside.</returns>
    public bool HasCell(int x, int y, int z) =>
        (uint)x < (uint)cells.Count.Nx && (uint)y < (uint)cells.Count.Ny && (uint)z < (uint)cells.Count.Nz && labels[cells.Index(x, y, z)] == label;

    /// <summary>Middle of what of a brick is filled.</summary>
    /// <param name="brick">Flat index of a brick that is not empty.</param>
    /// <returns>Place in the brick, each from -1 to 1.</returns>
    public Point3 MiddleOf(int brick)
    {
        ReadOnlySpan<float> moments = Moments.AsSpan(FilledMoments.Count * brick, FilledMoments.Count);
        return new Point3(moments[1], moments[3], moments[9]) * (1.0 / moments[0]);
    }

    /// <summary>A point of a brick.</summary>
    /// <param name="brick">Brick along x, y and z.</param>
    /// <param name="point">Place in the brick, each from -1 to 1.</param>
    /// <returns>Metres, unit frame.</returns>
    public Point3 Where((int X, int Y, int Z) brick, Point3 point) => Centre(brick.X, brick.Y, brick.Z) +
        new Point3(0.5 * point.X * Edges.X, 0.5 * point.Y * Edges.Y, 0.5 * point.Z * Edges.Z);

    /// <summary>A brick's place in the grid.</summary>
    /// <param name="index">Flat index.</param>
    /// <returns>Along x, y and z.</returns>
    public (int X, int Y, int Z) At(int index) => (index % Shape.Nx, index / Shape.Nx % Shape.Ny, index / Shape.Plane);

    private static int Over(int many, int together) => (many + together - 1) / together;

    private static int Together(UnitCells piece, CellGrid grid, int mostBricks)
    {
        int across = Math.Max(piece.Count.Nx, piece.Count.Ny), up = (int)Math.Ceiling(piece.Count.Nz * grid.CellHeightMetres / grid.CellMetres);
        return Over(Math.Max(across, up), mostBricks);
    }

    private LayerSums Gather(int layer, MoistureResult moisture, double looseDensity, CellStrength strength)
    {
        CellGrid grid = moisture.Grid;
        (int together, int high) = CellsInBrick;
        LayerSums sums = new(new long[Bins]);
        double volume = grid.CellCubicMetres;
        for (int z = layer * high; z < Math.Min((layer + 1) * high, cells.Count.Nz); z++)
        {
            for (int y = 0; y < cells.Count.Ny; y++)
            {
                for (int first = 0; first < cells.Count.Nx; first += together)
                {
                    CellRow row = default;
                    double kilograms = 0.0;
                    float strengths = 0f;
                    for (int x = first; x < Math.Min(first + together, cells.Count.Nx); x++)
                    {
                        int cell = cells.Index(x, y, z);
                        if (labels[cell] != label)
                        {
                            continue;
                        }

                        double content = moisture.VolumetricWaterContent[cell], pascals = strength.Pascals(content);
                        double mass = (looseDensity + content * moisture.LiquidKilogramsPerCubicMetre) * volume;
                        row.Add(x - first, together);
                        (kilograms, strengths) = (kilograms + mass, strengths + (float)pascals);
                        sums.Add(mass, cells.Centre(x, y, z) * mass, pascals, Math.Clamp((int)(pascals / BinPascals), 0, Bins - 1));
                    }

                    if (row.Cells > 0f)
                    {
                        int brick = Shape.Index(first / together, y / together, layer);
                        (Kilograms[brick], Pascals[brick], Filled[brick]) = (Kilograms[brick] + kilograms, Pascals[brick] + strengths, Filled[brick] + row.Cells);
                        row.AddMoments(y % together, together, z % high, high, Moments.AsSpan(FilledMoments.Count * brick, FilledMoments.Count));
                        AddOctants(row, first, y, z);
                    }
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
    private void AddOctants(CellRow row, int x, int y, int z)
    {
        (int across, int high) = CellsInBrick;
        (float sy, float sz) = (CellRow.LowerShare(y % across, across), CellRow.LowerShare(z % high, high));
        for (int corner = 0; corner < 8; corner++)
        {
            float half = (corner & 1) == 0 ? row.LowerCells : row.Cells - row.LowerCells;
            FilledOctants[Octants.Index(2 * (x / across) + (corner & 1), 2 * (y / across) + ((corner >> 1) & 1), 2 * (z / high) + (corner >> 2))] +=
                half * ((corner & 2) == 0 ? sy : 1f - sy) * ((corner & 4) == 0 ? sz : 1f - sz);
        }
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
