using Dewstone.Compute.Numerics;
using Dewstone.Model.Results;

namespace Dewstone.Compute.Habitat;

/// <summary>Counts holes: water that a ball as small as the least entrance reaches, and that lies deep behind what the largest ball does when no seabed stops it.</summary>
/// <remarks>
/// Holes of 42 cm3 and more with entrances of 30 mm and more are counted, the sizes met on a fringing reef by Menard et al., 2012, PLoS ONE 7, e38450. A hole begins
/// <see cref="LeastDepthMetres"/> behind what the largest ball reaches, so that scallops of the faces do not join them; its volume counts from there, its depth from outside. A mouth is a
/// patch of the hole that touches water outside it; depth is measured straight, so a winding hole is deeper than it says.
/// </remarks>
internal static class HoleSurvey
{
    /// <summary>What is less deep than this is no hole, m; a rule of ours.</summary>
    public const float LeastDepthMetres = 0.02f;

    private const double LeastCubicMetres = 42e-6;

    /// <summary>Finds the holes.</summary>
    /// <param name="field">The field.</param>
    /// <param name="clearances">Distance to the surface, m.</param>
    /// <param name="small">Reach of the ball of the least entrance: below 0 where it gets.</param>
    /// <param name="large">Reach of the largest ball, told to more than the least depth beyond it.</param>
    /// <param name="parallelism">Threads; no result depends on them.</param>
    /// <returns>Holes, largest first; equal ones in index order.</returns>
    public static IReadOnlyList<HabitatHole> Find(WaterField field, float[] clearances, float[] small, float[] large, Parallelism parallelism)
    {
        GridShape shape = field.Shape;
        byte[] isHole = new byte[shape.Count];
        for (int i = 0; i < isHole.Length; i++)
        {
            isHole[i] = small[i] <= 0f && large[i] > LeastDepthMetres && InBox(field, i) ? (byte)1 : (byte)0;
        }

        ComponentMap holes = Components.Label(isHole, shape, Phase.Set, Connectivity.Faces, parallelism);
        byte[] isMouth = Mouths(isHole, small, shape);
        ComponentMap mouths = Components.Label(isMouth, shape, Phase.Set, Connectivity.FacesEdgesCorners, parallelism);
        double cell = field.Size.Width * field.Size.Width * field.Size.Height;
        (int Hole, float Clearance, double Height)[] patches = Patches(field, clearances, holes, mouths);
        float[] depths = mouths.Pieces.Count == 0
            ? new float[isHole.Length]
            : DistanceTransform.Squared(isMouth, shape, field.Size, Phase.Set, OutsideCells.Ignored, parallelism);
        float[] deepest = new float[holes.Pieces.Count];
        for (int i = 0; i < isHole.Length; i++)
        {
            if (isHole[i] != 0)
            {
                int hole = holes.Labels[i] - 1;
                deepest[hole] = Math.Max(deepest[hole], depths[i]);
            }
        }

        List<HabitatHole> found = [];
        for (int hole = 0; hole < holes.Pieces.Count; hole++)
        {
            (int Hole, float Clearance, double Height)[] own =
                [.. patches.Where(patch => patch.Hole == hole && 2f * patch.Clearance >= HabitatReport.LeastEntranceMetres)];
            double volume = holes.Pieces[hole].Cells * cell;
            if (own.Length > 0 && volume >= LeastCubicMetres)
            {
                (int Hole, float Clearance, double Height) widest = own.MaxBy(patch => patch.Clearance);
                found.Add(new HabitatHole(volume, own.Length, 2.0 * widest.Clearance, widest.Height, LeastDepthMetres + Math.Sqrt(deepest[hole])));
            }
        }

        return [.. found.OrderByDescending(hole => hole.CubicMetres)];
    }

    private static bool InBox(WaterField field, int cell)
    {
        int x = cell % field.Shape.Nx, y = cell / field.Shape.Nx % field.Shape.Ny, z = cell / field.Shape.Plane;
        return field.InBoxX[x] >= 0.5 && field.InBoxY[y] >= 0.5 && field.InBoxZ[z] >= 0.5;
    }

    // Holes lie within the box, and the box within a margin: no neighbour is beyond the grid.
    private static byte[] Mouths(byte[] isHole, float[] small, GridShape shape)
    {
        byte[] isMouth = new byte[isHole.Length];
        int[] steps = [1, -1, shape.Nx, -shape.Nx, shape.Plane, -shape.Plane];
        for (int i = 0; i < isHole.Length; i++)
        {
            if (isHole[i] != 0)
            {
                foreach (int step in steps)
                {
                    if (isHole[i + step] == 0 && small[i + step] <= 0f)
                    {
                        isMouth[i] = 1;
                    }
                }
            }
        }

        return isMouth;
    }

    private static (int Hole, float Clearance, double Height)[] Patches(WaterField field, float[] clearances, ComponentMap holes, ComponentMap mouths)
    {
        (int Hole, float Clearance, double Height)[] patches = new (int, float, double)[mouths.Pieces.Count];
        for (int i = 0; i < mouths.Labels.Length; i++)
        {
            if (mouths.Labels[i] > 0)
            {
                ref (int Hole, float Clearance, double Height) patch = ref patches[mouths.Labels[i] - 1];
                if (clearances[i] > patch.Clearance)
                {
                    patch = (holes.Labels[i] - 1, clearances[i], (i / field.Shape.Plane - field.BedPlanes + 0.5) * field.Size.Height);
                }
            }
        }

        return patches;
    }
}
