using Dewstone.Compute.Numerics;
using Dewstone.Model.Lattices;
using Dewstone.Model.Results;

namespace Dewstone.Compute.Dosing;

/// <summary>Evaluates the objective of <see cref="CorrectionRule"/> for a moisture field, cell by cell.</summary>
internal sealed class DoseMisfit
{
    private const int PlanesTogether = 4;
    private const double LitresPerCubicMetre = 1000.0;

    private readonly CorrectionField field;
    private readonly Parallelism parallelism;
    private readonly float dry;
    private readonly float perContent;
    private readonly float dear;
    private readonly float price;
    private readonly float tooWet;
    private readonly float bandPrice;

    /// <summary>The objective on one level of cells.</summary>
    /// <param name="field">Wanted solid and weights.</param>
    /// <param name="rule">The constants.</param>
    /// <param name="forward">Gives the contents of the mix.</param>
    /// <param name="nominal">Dose of a full voxel.</param>
    /// <param name="mostWaterCement">Upper end of the wanted band, 1; null for none.</param>
    /// <param name="parallelism">Threads; no result depends on them.</param>
    public DoseMisfit(
        CorrectionField field, CorrectionRule rule, ForwardModel forward, NominalDose nominal, double? mostWaterCement, Parallelism parallelism)
    {
        this.field = field;
        this.parallelism = parallelism;
        double threshold = forward.ThresholdContent;
        dry = (float)(rule.DryShare * threshold);
        perContent = (float)(1.0 / ((rule.SetShare - rule.DryShare) * threshold));
        dear = (float)forward.Content(nominal.WaterCement + rule.WaterRoom);
        price = (float)(rule.WaterPrice / threshold);
        tooWet = mostWaterCement is { } most ? (float)forward.Content(most - NominalDose.BandMargin) : float.MaxValue;
        bandPrice = (float)(rule.BandPrice / threshold);
        Weighted = new float[field.Grid.Count];
    }

    /// <summary>Weight x (t - s - e) of each cell at the last evaluation, above 0 where water is missing; index order of the grid.</summary>
    public float[] Weighted { get; }

    /// <summary>Evaluates a field.</summary>
    /// <param name="moisture">What the water did, on the cells of this level.</param>
    /// <returns>J, litres; planes of cells summed from the lowest up.</returns>
    public double Evaluate(MoistureResult moisture)
    {
        CellGrid grid = field.Grid;
        int plane = grid.Nx * grid.Ny;
        double[] planes = new double[grid.Nz];
        Chunks.Run(grid.Nz, PlanesTogether, parallelism, (first, end) =>
        {
            for (int z = first; z < end; z++)
            {
                planes[z] = Plane(moisture.VolumetricWaterContent.AsSpan(z * plane, plane), z * plane);
            }
        });
        double sum = 0.0;
        foreach (double part in planes)
        {
            sum += part;
        }

        return sum * grid.CellCubicMetres * LitresPerCubicMetre;
    }

    private double Plane(ReadOnlySpan<float> content, int first)
    {
        ReadOnlySpan<float> wanted = field.Target.Fraction.AsSpan(first, content.Length);
        ReadOnlySpan<float> weights = field.Weights.AsSpan(first, content.Length);
        ReadOnlySpan<float> dryWeights = field.DryWeights.AsSpan(first, content.Length);
        Span<float> weighted = Weighted.AsSpan(first, content.Length);
        double sum = 0.0;
        for (int i = 0; i < content.Length; i++)
        {
            float hardened = Math.Clamp((content[i] - dry) * perContent, 0f, 1f);
            float cost = Math.Max(0f, content[i] - dear) * price + Math.Max(0f, content[i] - tooWet) * bandPrice;
            float misfit = wanted[i] - hardened - cost;
            misfit *= misfit > 0f ? dryWeights[i] : weights[i];
            weighted[i] = misfit;
            sum += Math.Abs(misfit);
        }

        return sum;
    }
}
