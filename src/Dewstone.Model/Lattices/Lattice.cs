using Dewstone.Model.Quantities;

namespace Dewstone.Model.Lattices;

/// <summary>
/// The needle positions of a job: a window of the bin's raster, over all spread layers. Index order (k * Rows + j) * Columns + i with i along x,
/// j along y and k the layer from the lowest (spread) one, all from 0. Files call it the grid and count from 1. Printer frame.
/// </summary>
public sealed record Lattice
{
    /// <summary>Positions of the window along x.</summary>
    public required int Columns { get; init; }

    /// <summary>Positions of the window along y.</summary>
    public required int Rows { get; init; }

    /// <summary>Spread layers, the loose ones below the unit included.</summary>
    public required int Layers { get; init; }

    /// <summary>Column of the bin's raster at which the window begins, from 0.</summary>
    public required int FirstColumn { get; init; }

    /// <summary>Row of the bin's raster at which the window begins, from 0.</summary>
    public required int FirstRow { get; init; }

    /// <summary>Distance between neighbouring positions, metres.</summary>
    public required double PitchMetres { get; init; }

    /// <summary>Layer height, metres.</summary>
    public required double LayerMetres { get; init; }

    /// <summary>x of raster position 0 in a straight layer, metres.</summary>
    public required double OriginXMetres { get; init; }

    /// <summary>y of raster position 0 in a straight layer, metres.</summary>
    public required double OriginYMetres { get; init; }

    /// <summary>Depth of the tip below the top of its layer, metres.</summary>
    public required double TipDepthMetres { get; init; }

    /// <summary>Inner bin size along x, metres.</summary>
    public required double BinXMetres { get; init; }

    /// <summary>Inner bin size along y, metres.</summary>
    public required double BinYMetres { get; init; }

    /// <summary>Loose layers below the unit.</summary>
    public required int UnderLayers { get; init; }

    /// <summary>Whether every other layer, counted from the unit's second, is shifted by half a pitch in x and y.</summary>
    public bool ShiftedLayers { get; init; }

    /// <summary>Number of positions, all layers.</summary>
    public int Count => Columns * Rows * Layers;

    /// <summary>Flat index of a position.</summary>
    /// <param name="i">Along x, from 0.</param>
    /// <param name="j">Along y, from 0.</param>
    /// <param name="k">Layer, from 0.</param>
    /// <returns>Index into dose arrays.</returns>
    public int Index(int i, int j, int k) => (k * Rows + j) * Columns + i;

    /// <summary>Whether a layer is shifted by half a pitch.</summary>
    /// <param name="k">Layer, from 0.</param>
    /// <returns>True when shifted.</returns>
    public bool IsShifted(int k) => ShiftedLayers && ((k - UnderLayers) & 1) != 0;

    /// <summary>Tip of a needle, metres, printer frame.</summary>
    /// <param name="i">Along x, from 0.</param>
    /// <param name="j">Along y, from 0.</param>
    /// <param name="k">Layer, from 0.</param>
    /// <returns>Where the water comes out.</returns>
    public Point3 Tip(int i, int j, int k)
    {
        double shift = IsShifted(k) ? PitchMetres / 2.0 : 0.0;
        return new Point3(
            OriginXMetres + (FirstColumn + i) * PitchMetres + shift,
            OriginYMetres + (FirstRow + j) * PitchMetres + shift,
            (k + 1) * LayerMetres - TipDepthMetres);
    }

    /// <summary>Whether a position keeps at least half a pitch from every bin wall (to a micrometre).</summary>
    /// <param name="i">Along x, from 0.</param>
    /// <param name="j">Along y, from 0.</param>
    /// <param name="k">Layer, from 0.</param>
    /// <returns>False for positions that are left out.</returns>
    public bool IsUsable(int i, int j, int k)
    {
        Point3 tip = Tip(i, j, k);
        double least = PitchMetres / 2.0 - 1e-6;
        return tip.X >= least && tip.Y >= least && tip.X <= BinXMetres - least && tip.Y <= BinYMetres - least;
    }
}
