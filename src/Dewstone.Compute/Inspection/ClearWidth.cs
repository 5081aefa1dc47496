using Dewstone.Compute.Numerics;

namespace Dewstone.Compute.Inspection;

/// <summary>Width of the way through the cells of an opening, from distances to the surface between the cells.</summary>
/// <remarks>
/// The ball's centre may stand anywhere in a cell: where the way at cell centres is narrowest to a cell, the cells are given the largest clearance
/// within them (<see cref="RidgePeak"/>), so that a centre line between cell centres costs no width. Cells that are wider at their centres are open
/// anyhow; those narrower by a cell cannot be.
/// </remarks>
internal static class ClearWidth
{
    /// <summary>Measures.</summary>
    /// <param name="opening">Cells of the opening.</param>
    /// <param name="regions">Where the way begins and ends, marks of <see cref="PercolatingWidth"/>; index order of the opening's window.</param>
    /// <param name="solid">What the ball must not touch.</param>
    /// <returns>Width in metres and the narrowest cell of the window; null when it is closed.</returns>
    public static Passage? Measure(RegionCells opening, byte[] regions, SolidField solid)
    {
        var clearances = new float[opening.Depths.Length];
        for (int i = 0; i < clearances.Length; i++)
        {
            clearances[i] = opening.Depths[i] > 0f ? Math.Max(0f, solid.Distances[opening.InGrid(i)]) : 0f;
        }

        return Measure(clearances, opening.Window, regions, solid.Size, i => RidgePeak.Gain(solid.Distances, 1f, solid.Cells, solid.Size, opening.InGrid(i)));
    }

    /// <summary>Measures a way whose clearances are known.</summary>
    /// <param name="clearances">Distance of each cell to the surface, metres, 0 off the way; given what their cells hold more of where the way is narrow.</param>
    /// <param name="window">The cells.</param>
    /// <param name="regions">Where the way begins and ends, marks of <see cref="PercolatingWidth"/>.</param>
    /// <param name="size">Edges of a cell, metres.</param>
    /// <param name="gain">How much larger the clearance gets somewhere within a cell, metres.</param>
    /// <returns>Width in metres and the narrowest cell; null when it is closed.</returns>
    public static Passage? Measure(float[] clearances, GridShape window, byte[] regions, CellSize size, Func<int, float> gain)
    {
        if (PercolatingWidth.Between(clearances, window, regions, Connectivity.FacesEdgesCorners) is not { } coarse)
        {
            return null;
        }

        float middle = (float)(coarse.Width / 2.0), band = (float)Math.Max(size.Width, size.Height);
        for (int i = 0; i < clearances.Length; i++)
        {
            if (clearances[i] > 0f && Math.Abs(clearances[i] - middle) <= band)
            {
                clearances[i] += gain(i);
            }
        }

        return PercolatingWidth.Between(clearances, window, regions, Connectivity.FacesEdgesCorners);
    }
}
