using Dewstone.Compute.Numerics;
using Dewstone.Model.Description;
using Dewstone.Model.Lattices;
using Dewstone.Model.Results;

namespace Dewstone.Compute.Dosing;

/// <summary>What the correction makes small: litres of bed that set where they should not or stay loose where they should set, plus a price on water above the wanted band.</summary>
/// <remarks>
/// Objective = sum over cells of V w (|t - s| + p e). V: cell volume. t: wanted share of the cell. s: water content brought from
/// 0.214 to 1.786 of the threshold's to 0 to 1; wide, so that a cell says how far it is from setting. w = 1 + min(|d|, 30 mm) / 15 mm with d the
/// distance to the wanted surface: a cell deep in a tunnel or deep in a wall counts three times one at the surface, which the needles cannot hold anyway.
/// e: water content above the band's top, in thresholds; p: <see cref="BandPrice"/> with a band in the description, else <see cref="FreePrice"/> above
/// water/cement <see cref="FreeTop"/>. Where e is above 0, s is 1, so that one signed residual t - s - p e carries both terms.
/// The widths come from a reference run of an independent prototype of the same model, the weights and prices from trials on the bodies of the table in
/// the contributors' guide.
/// </remarks>
internal sealed class DoseObjective
{
    /// <summary>Price of a threshold of water above the wanted band, 1.</summary>
    public const double BandPrice = 0.4;

    /// <summary>Price of a threshold of water above <see cref="FreeTop"/> when no band is asked for, 1.</summary>
    public const double FreePrice = 0.05;

    /// <summary>Water/cement from which water has a price when no band is asked for, 1.</summary>
    public const double FreeTop = 0.56;

    private const double SoftLow = 0.214;
    private const double SoftHigh = 1.786;
    private const double WeightLength = 0.015;
    private const double WeightCap = 0.03;
    private const int PlanesTogether = 4;
    private readonly CorrectionField field;
    private readonly Parallelism parallelism;
    private readonly float low;
    private readonly float inverse;
    private readonly float price;
    private readonly float top;

    /// <summary>The objective of a job on the cells of a field.</summary>
    /// <param name="job">The band.</param>
    /// <param name="field">Wanted solid.</param>
    /// <param name="forward">Contents of the bed.</param>
    /// <param name="parallelism">Threads; no result depends on them.</param>
    public DoseObjective(JobDescription job, CorrectionField field, ForwardModel forward, Parallelism parallelism)
    {
        this.field = field;
        this.parallelism = parallelism;
        double threshold = forward.ThresholdContent;
        low = (float)(SoftLow * threshold);
        inverse = (float)(1.0 / ((SoftHigh - SoftLow) * threshold));
        WaterCementBand? band = job.Unit.Require.WaterCement;
        price = (float)((band is null ? FreePrice : BandPrice) / threshold);
        top = (float)Math.Max(SoftHigh * threshold, forward.Content(band is null ? FreeTop : band.Max - NominalDose.BandMargin));
        Residual = new float[field.Grid.Count];
        Weight = new float[field.Grid.Count];
        for (int i = 0; i < Weight.Length; i++)
        {
            Weight[i] = (float)(1.0 + Math.Min(Math.Abs(field.Distance[i]), WeightCap) / WeightLength);
        }
    }

    /// <summary>Weight of each cell, 1; index order of the grid.</summary>
    public float[] Weight { get; }

    /// <summary>Weighted residual of each cell after the last <see cref="Evaluate"/>, above 0 where water is missing; index order of the grid.</summary>
    public float[] Residual { get; }

    /// <summary>Judges what the water did and keeps the residuals.</summary>
    /// <param name="moisture">Moisture on the field's cells.</param>
    /// <returns>The objective, weighted litres.</returns>
    public double Evaluate(MoistureResult moisture)
    {
        CellGrid grid = field.Grid;
        int plane = grid.Nx * grid.Ny;
        var sums = new double[grid.Nz];
        float[] content = moisture.VolumetricWaterContent, fraction = field.Target.Fraction;
        Chunks.Run(grid.Nz, PlanesTogether, parallelism, (first, end) =>
        {
            for (int z = first; z < end; z++)
            {
                double sum = 0.0;
                for (int i = z * plane; i < (z + 1) * plane; i++)
                {
                    float soft = Math.Clamp((content[i] - low) * inverse, 0f, 1f);
                    float residual = Weight[i] * (fraction[i] - soft - price * Math.Max(0f, content[i] - top));
                    Residual[i] = residual;
                    sum += Math.Abs(residual);
                }

                sums[z] = sum;
            }
        });
        double total = 0.0;
        foreach (double sum in sums)
        {
            total += sum;
        }

        return total * grid.CellCubicMetres * 1000.0;
    }
}
