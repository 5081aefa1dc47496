using Dewstone.Compute.Numerics;

namespace Dewstone.Compute.Inspection;

/// <summary>How thick the hardened solid is over its volume: percentiles of local thickness, on every second cell along each axis.</summary>
/// <remarks>Distances are those of the full cells, so only the places where balls are laid and counted are coarser.</remarks>
internal static class WallThickness
{
    /// <summary>Measures.</summary>
    /// <param name="solid">Predicted solid.</param>
    /// <param name="shares">Shares of the volume, 0 to 1.</param>
    /// <returns>For each share the thickness that it stays below, metres; 0 when nothing hardened.</returns>
    public static double[] Percentiles(PredictedSolid solid, params ReadOnlySpan<double> shares)
    {
        SolidField field = solid.Field;
        GridShape shape = new((field.Cells.Nx + 1) / 2, (field.Cells.Ny + 1) / 2, (field.Cells.Nz + 1) / 2);
        float[] distances = new float[shape.Count];
        for (int z = 0; z < shape.Nz; z++)
        {
            for (int y = 0; y < shape.Ny; y++)
            {
                for (int x = 0; x < shape.Nx; x++)
                {
                    distances[shape.Index(x, y, z)] = field.Distances[field.Cells.Index(2 * x, 2 * y, 2 * z)];
                }
            }
        }

        float[] thickness = LocalThickness.Of(distances, shape, new CellSize(2.0 * field.Size.Width, 2.0 * field.Size.Height), solid.Threads);
        int[] order = DescendingOrder.OfPositive(thickness);
        double[] percentiles = new double[shares.Length];
        for (int i = 0; i < percentiles.Length && order.Length > 0; i++)
        {
            percentiles[i] = thickness[order[Math.Clamp((int)((1.0 - shares[i]) * order.Length), 0, order.Length - 1)]];
        }

        return percentiles;
    }
}
