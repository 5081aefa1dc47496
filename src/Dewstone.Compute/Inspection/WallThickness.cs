using Dewstone.Compute.Numerics;

namespace Dewstone.Compute.Inspection;

/// <summary>How thick the hardened solid is over its volume: local thickness on every second cell along each axis, thickest first.</summary>
/// <remarks>Distances are those of the full cells, so only the places where balls are laid and counted are coarser.</remarks>
internal sealed class WallThickness
{
    private readonly float[] descending;

    private WallThickness(float[] descending) => this.descending = descending;

    /// <summary>Measures.</summary>
    /// <param name="solid">Predicted solid.</param>
    /// <returns>The thickness.</returns>
    public static WallThickness Of(PredictedSolid solid)
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
        return new WallThickness([.. order.Select(cell => thickness[cell])]);
    }

    /// <summary>Thickness that a share of the volume stays below.</summary>
    /// <param name="share">Share of the volume, 0 to 1.</param>
    /// <returns>Metres; 0 when nothing hardened.</returns>
    public double Below(double share) =>
        descending.Length == 0 ? 0.0 : descending[Math.Clamp((int)((1.0 - share) * descending.Length), 0, descending.Length - 1)];

    /// <summary>How the volume is shared out over bins of thickness.</summary>
    /// <param name="binMetres">Width of a bin, metres.</param>
    /// <returns>Share of the volume in each bin, the first from 0; none when nothing hardened.</returns>
    public double[] Shares(double binMetres)
    {
        double[] shares = new double[descending.Length == 0 ? 0 : (int)(descending[0] / binMetres) + 1];
        foreach (float thickness in descending)
        {
            shares[(int)(thickness / binMetres)] += 1.0;
        }

        for (int bin = 0; bin < shares.Length; bin++)
        {
            shares[bin] /= descending.Length;
        }

        return shares;
    }
}
