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

        if (PercolatingWidth.Between(clearances, opening.Window, regions, Connectivity.FacesEdgesCorners) is not { } coarse)
        {
            return null;
        }

        float middle = (float)(coarse.Width / 2.0), band = (float)Math.Max(solid.Size.Width, solid.Size.Height);
        for (int i = 0; i < clearances.Length; i++)
        {
            if (clearances[i] > 0f && Math.Abs(clearances[i] - middle) <= band)
            {
                clearances[i] += RidgePeak.Gain(solid.Distances, 1f, solid.Cells, solid.Size, opening.InGrid(i));
            }
        }

        return PercolatingWidth.Between(clearances, opening.Window, regions, Connectivity.FacesEdgesCorners);
    }
}
