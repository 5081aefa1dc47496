using Dewstone.Compute.Numerics;
using Dewstone.Model.Description;
using Dewstone.Model.Lattices;
using Dewstone.Model.Results;

namespace Dewstone.Compute.Inspection;

/// <summary>Measures the predicted solid against the wanted one.</summary>
/// <remarks>
/// The hardened volume is what the hardened surface encloses; cells counted whole would fall short of it, the more the coarser they are (see
/// <see cref="HardenedSurface"/>). Match and shares are counts of cells. The water in the solid is that of the hardened cells, and of the rim between them and
/// the surface at the threshold's content: a lone ball of 35 mL at 8 cells a voxel, whose exact solid has a mean water/cement of 0.394, then has 0.397, by its
/// hardened cells alone 0.411; the smallest example holds 6.91 and 6.90 L of water at 4 and 8 cells a voxel, its hardened cells 6.80 and 6.86 L. Sums are in double, one partial sum a plane of cells, added from the lowest plane up, whatever the number of threads elsewhere.
/// </remarks>
public static class SolidMeasure
{
    /// <summary>Measures the solid.</summary>
    /// <param name="target">Wanted solid.</param>
    /// <param name="moisture">Moisture and hardened cells on the same cells.</param>
    /// <param name="surface">Where the hardened solid ends.</param>
    /// <param name="band">Wanted water/cement band; null for none.</param>
    /// <returns>Volumes, match and water/cement; means and shares are 0 when nothing hardened, the match then too.</returns>
    /// <exception cref="ArgumentException">Target and moisture on different cells.</exception>
    public static SolidSummary Measure(TargetField target, MoistureResult moisture, HardenedSurface surface, WaterCementBand? band)
    {
        ArgumentNullException.ThrowIfNull(target);
        ArgumentNullException.ThrowIfNull(moisture);
        ArgumentNullException.ThrowIfNull(surface);
        CellGrid grid = moisture.Grid;
        if (target.Fraction.Length != grid.Count || moisture.Hardened.Length != grid.Count || moisture.VolumetricWaterContent.Length != grid.Count)
        {
            throw new ArgumentException($"Target, moisture and hardened need {grid.Count} cells each.", nameof(target));
        }

        double perContent = moisture.LiquidKilogramsPerCubicMetre / moisture.BinderKilogramsPerCubicMetre;
        var total = new Tally();
        for (int z = 0; z < grid.Nz; z++)
        {
            total.Add(Plane(moisture, z * grid.Nx * grid.Ny, grid.Nx * grid.Ny, perContent, band));
        }

        double cell = grid.CellCubicMetres;
        double hardened = surface.Mesh.Volume;
        double withRim = total.Content * cell + (hardened - total.Hardened * cell) * moisture.ThresholdContent;
        double water = Math.Clamp(withRim, 0.0, total.AllContent * cell);
        return new SolidSummary
        {
            TargetCubicMetres = target.CubicMetres,
            HardenedCubicMetres = hardened,
            ShapeMatch = Match(target, moisture.Hardened),
            WaterInHardenedCubicMetres = water,
            MeanWaterCement = hardened <= 0.0 ? 0.0 : water / hardened * perContent,
            LargestWaterCement = total.Largest * perContent,
            ShareInBand = band is null ? null : total.Hardened == 0 ? 0.0 : (double)total.InBand / total.Hardened,
        };
    }

    /// <summary>Shape match: cells both wanted and hardened over cells that are either.</summary>
    /// <param name="target">Wanted solid; a cell is wanted from half of it on.</param>
    /// <param name="hardened">1 where the mix set, else 0; on the same cells.</param>
    /// <returns>0 to 1; 0 when neither holds a cell.</returns>
    public static double Match(TargetField target, byte[] hardened)
    {
        ArgumentNullException.ThrowIfNull(target);
        ArgumentNullException.ThrowIfNull(hardened);
        long both = 0, either = 0;
        for (int i = 0; i < hardened.Length; i++)
        {
            int wanted = target.Fraction[i] >= 0.5f ? 1 : 0;
            both += wanted & hardened[i];
            either += wanted | hardened[i];
        }

        return either == 0 ? 0.0 : (double)both / either;
    }

    private static Tally Plane(MoistureResult moisture, int first, int count, double perContent, WaterCementBand? band)
    {
        ReadOnlySpan<float> content = moisture.VolumetricWaterContent.AsSpan(first, count);
        ReadOnlySpan<byte> hardened = moisture.Hardened.AsSpan(first, count);
        double low = band?.Min ?? double.NegativeInfinity;
        double high = band?.Max ?? double.PositiveInfinity;
        var tally = new Tally();
        for (int i = 0; i < content.Length; i++)
        {
            tally.AllContent += content[i];
            if (hardened[i] == 0)
            {
                continue;
            }

            tally.Hardened++;
            tally.Content += content[i];
            tally.Largest = Math.Max(tally.Largest, content[i]);
            double waterCement = content[i] * perContent;
            tally.InBand += waterCement >= low && waterCement <= high ? 1 : 0;
        }

        return tally;
    }

    private struct Tally
    {
        public long Hardened;
        public long InBand;
        public double Content;
        public double AllContent;
        public double Largest;

        public void Add(Tally other)
        {
            Hardened += other.Hardened;
            InBand += other.InBand;
            Content += other.Content;
            AllContent += other.AllContent;
            Largest = Math.Max(Largest, other.Largest);
        }
    }
}
