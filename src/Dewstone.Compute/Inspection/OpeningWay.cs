using Dewstone.Compute.Numerics;
using Dewstone.Model.Lattices;
using Dewstone.Model.Quantities;
using Dewstone.Model.Results;

namespace Dewstone.Compute.Inspection;

/// <summary>The way through one opening: what of its passage follows from the drawing alone, so that many hardened solids can be measured against it.</summary>
/// <param name="placement">Where the unit stands.</param>
/// <param name="drawn">Its passage as drawn, nothing predicted yet.</param>
/// <param name="cells">Its cells; null when it holds none.</param>
/// <param name="regions">Where the way begins and ends, marks of <see cref="PercolatingWidth"/>; index order of the cells' window.</param>
internal sealed class OpeningWay(UnitPlacement placement, OpeningPassage drawn, RegionCells? cells = null, byte[]? regions = null)
{
    /// <summary>Measures it in a hardened solid.</summary>
    /// <param name="hardened">The hardened solid.</param>
    /// <returns>Its passage.</returns>
    public OpeningPassage Through(SolidField hardened)
    {
        if (cells is null || regions is null)
        {
            return drawn;
        }

        Passage? predicted = ClearWidth.Measure(cells, regions, hardened);
        ClearOpening clear = drawn.Clear with
        {
            PredictedMetres = predicted?.Width ?? 0.0,
            Narrowest = predicted is { } narrow ? Point(cells, hardened.Grid, narrow.NarrowestCell) : drawn.Clear.Narrowest,
        };
        return drawn with { Clear = clear, LowestMetres = Lowest(cells, hardened) };
    }

    private double Lowest(RegionCells own, SolidField hardened)
    {
        double lowest = double.PositiveInfinity;
        for (int cell = 0; cell < own.Depths.Length; cell++)
        {
            bool isLoose = own.Depths[cell] > 0f && hardened.Distances[own.InGrid(cell)] > 0f;
            lowest = isLoose ? Math.Min(lowest, Point(own, hardened.Grid, cell).Z) : lowest;
        }

        return lowest;
    }

    private Point3 Point(RegionCells own, CellGrid grid, int cell) => placement.ToUnit(own.Centre(grid, cell));
}
