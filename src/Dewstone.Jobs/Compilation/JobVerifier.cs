using Dewstone.Model.Lattices;
using Dewstone.Model.Results;

namespace Dewstone.Jobs.Compilation;

/// <summary>
/// Holds a compiled job against what must be true of every job, whatever was asked for: a breach is a fault of the program, never of the
/// user, and stops the job before anything is written.
/// </summary>
public static class JobVerifier
{
    /// <summary>Water that may be lost or gained in rounding, share of the water injected.</summary>
    public const double WaterTolerance = 1e-6;

    private const double CubicMetresPerCentiMillilitre = 1e-8;

    // What single-precision contents may exceed an exact bound by, relative.
    private const double ContentTolerance = 1e-6;

    private const double MassTolerance = 1e-9;

    /// <summary>Checks a job.</summary>
    /// <param name="job">The compiled job.</param>
    /// <exception cref="InvalidOperationException">Something that must hold does not; the message names it with its figures.</exception>
    public static void Verify(CompiledJob job)
    {
        ArgumentNullException.ThrowIfNull(job);
        CheckSizes(job);
        CheckDoses(job.Doses);
        CheckWater(job);
        CheckCells(job.Moisture);
        CheckSteps(job.Timeline);
        CheckLayers(job);
        CheckEstimate(job);
    }

    private static void CheckSizes(CompiledJob job)
    {
        CellGrid grid = job.Moisture.Grid;
        Same("doses belong to the job's lattice", job.Doses.Lattice, job.Lattice);
        Same("target and moisture lie on the same cells", job.Target.Grid, grid);
        Same("dose steps, one a position", job.Doses.Steps.Length, job.Lattice.Count);
        Same("dose volumes, one a position", job.Doses.CentiMillilitres.Length, job.Lattice.Count);
        Same("moisture, one a cell", job.Moisture.VolumetricWaterContent.Length, grid.Count);
        Same("hardened, one a cell", job.Moisture.Hardened.Length, grid.Count);
        Same("cells along z", grid.Nz, job.Lattice.Layers * grid.CellsPerLayer);
        Same("cells along x", grid.Nx, job.Lattice.Columns * grid.CellsPerPitch);
        Same("cells along y", grid.Ny, job.Lattice.Rows * grid.CellsPerPitch);
    }

    private static void CheckDoses(DosePlan doses)
    {
        Lattice lattice = doses.Lattice;
        for (int k = 0; k < lattice.Layers; k++)
        {
            for (int j = 0; j < lattice.Rows; j++)
            {
                for (int i = 0; i < lattice.Columns; i++)
                {
                    int index = lattice.Index(i, j, k);
                    int steps = doses.Steps[index], dose = doses.CentiMillilitres[index];
                    Hold(steps >= 0 && dose >= 0, "doses are not negative", $"position {i},{j},{k} has {steps} steps, {dose} hundredths of a mL");
                    Hold(steps > 0 || dose == 0, "no pump step, no water", $"position {i},{j},{k} has {dose} hundredths of a mL");
                    Hold(dose == 0 || lattice.IsUsable(i, j, k), "no dose beside a bin wall", $"position {i},{j},{k} has {dose} hundredths of a mL");
                }
            }
        }
    }

    private static void CheckWater(CompiledJob job)
    {
        MoistureResult moisture = job.Moisture;
        double tables = job.Doses.TotalCentiMillilitres * CubicMetresPerCentiMillilitre;
        Near("water of the tables was injected", moisture.InjectedCubicMetres, tables, WaterTolerance * tables);
        Near(
            "water in the field and refused is the water injected",
            moisture.FieldCubicMetres + moisture.RefusedCubicMetres, moisture.InjectedCubicMetres, WaterTolerance * moisture.InjectedCubicMetres);
        Near(
            "refused doses add up", moisture.Refused.Sum(refused => refused.CubicMetres), moisture.RefusedCubicMetres,
            WaterTolerance * moisture.InjectedCubicMetres);
    }

    private static void CheckCells(MoistureResult moisture)
    {
        double most = moisture.Porosity * (1.0 + ContentTolerance);
        double dry = moisture.ThresholdContent * (1.0 - ContentTolerance);
        double wet = moisture.ThresholdContent * (1.0 + ContentTolerance);
        double sum = 0.0;
        int perLayer = moisture.Grid.Nx * moisture.Grid.Ny;
        for (int z = 0; z < moisture.Grid.Nz; z++)
        {
            double plane = 0.0;
            for (int cell = z * perLayer; cell < (z + 1) * perLayer; cell++)
            {
                double content = moisture.VolumetricWaterContent[cell];
                int hardened = moisture.Hardened[cell];
                if (!(content >= 0.0 && content <= most) || hardened > 1 || (hardened == 1 ? content < dry : content > wet))
                {
                    throw Broken(
                        "contents lie between 0 and the porosity, and cells harden from the threshold on",
                        $"cell {cell} holds {content}, hardened {hardened}; porosity {moisture.Porosity}, threshold {moisture.ThresholdContent}");
                }

                plane += content;
            }

            sum += plane;
        }

        Near(
            "water stated is the water in the cells", moisture.FieldCubicMetres, sum * moisture.Grid.CellCubicMetres,
            WaterTolerance * moisture.InjectedCubicMetres);
    }

    private static void CheckSteps(Timeline timeline)
    {
        long clock = 0;
        for (int i = 0; i < timeline.Steps.Count; i++)
        {
            MachineStep step = timeline.Steps[i];
            Same("steps are numbered from 1", step.Number, i + 1);
            Same($"step {step.Number} begins when the one before ends, ms", step.StartMilliseconds, clock);
            Hold(step.Milliseconds >= 0, "no step lasts less than nothing", $"step {step.Number} lasts {step.Milliseconds} ms");
            clock += step.Milliseconds;
        }

        Same("the timeline's length is the sum of its steps, ms", timeline.TotalMilliseconds, clock);
    }

    private static void CheckLayers(CompiledJob job)
    {
        int[] spread = [.. job.Timeline.Steps.Where(step => step.Action == MachineAction.Spread).Select(step => step.Layer)];
        Hold(
            spread.SequenceEqual(Enumerable.Range(1, job.Lattice.Layers)),
            "every layer is spread once, from the lowest up", $"spread are {string.Join(' ', spread)} of {job.Lattice.Layers}");
        long[] dosed = new long[job.Lattice.Layers];
        foreach (MachineStep step in job.Timeline.Steps.Where(step => step.Action == MachineAction.Dose))
        {
            dosed[step.Layer - 1] += step.CentiMillilitres;
        }

        int perLayer = job.Lattice.Columns * job.Lattice.Rows;
        for (int k = 0; k < job.Lattice.Layers; k++)
        {
            long table = 0;
            foreach (int dose in job.Doses.CentiMillilitres.AsSpan(k * perLayer, perLayer))
            {
                table += dose;
            }

            Same($"water of layer {k + 1} in the sequence is that of its table, hundredths of a mL", dosed[k], table);
        }
    }

    private static void CheckEstimate(CompiledJob job)
    {
        Estimate estimate = job.Estimate;
        double tables = job.Doses.TotalCentiMillilitres * CubicMetresPerCentiMillilitre;
        Near("printing time is that of the sequence, s", estimate.PrintSeconds, job.Timeline.TotalMilliseconds / 1000.0, 1e-6);
        Near("times by action add up, s", estimate.SecondsByAction.Sum(action => action.Amount), estimate.PrintSeconds, 1e-6);
        Near("water of the estimate is that of the tables, m3", estimate.WaterCubicMetres, tables, WaterTolerance * tables);
        Near("water by layer adds up, m3", estimate.WaterByLayerCubicMetres.Sum(), tables, WaterTolerance * tables);
        Near(
            "mix spread is hardened, reusable or lost, kg",
            estimate.HardenedDryKilograms + estimate.ReusableKilograms + estimate.LostKilograms, estimate.SpreadKilograms,
            MassTolerance * estimate.SpreadKilograms);
    }

    private static void Near(string what, double value, double wanted, double tolerance) =>
        Hold(Math.Abs(value - wanted) <= tolerance, what, $"{value} is not {wanted}");

    private static void Same<T>(string what, T value, T wanted)
    {
        if (!EqualityComparer<T>.Default.Equals(value, wanted))
        {
            throw Broken(what, $"{value} is not {wanted}");
        }
    }

    private static void Hold(bool holds, string what, FormattableString found)
    {
        if (!holds)
        {
            throw Broken(what, FormattableString.Invariant(found));
        }
    }

    private static InvalidOperationException Broken(string what, string found) => new($"The compiled job is not sound: {what}: {found}.");
}
