using Dewstone.Model.Description;
using Dewstone.Model.Lattices;
using Dewstone.Model.Results;

namespace Dewstone.Compute.Estimation;

/// <summary>Works out materials, masses, carbon, cost and time of a job from the same timeline, doses and solid that everything else uses.</summary>
/// <remarks>
/// Materials: mix spread = hardened + reusable + lost. Of the loose mix the printer's <c>lost_in_bin</c> goes first, then the share that is not reusable.
/// Damp mix that did not set is counted as loose. Masses: fresh = dry mix + all water in the hardened solid; on the hook the same (no water is taken to
/// dry off before dig-out, and loose mix still held in hollows is not in it); dry = dry mix + water bound by hydration; saturated = dry + sea water
/// in all pores; submerged = saturated - sea water of the bulk volume = dry - sea water of the solids' volume. Carbon and cost: of the mix used up
/// (hardened and lost) by each solid's own factors, the cost of all liquid besides, flushing included.
/// </remarks>
public static class Estimator
{
    /// <summary>Estimates a job.</summary>
    /// <param name="job">Unit, mix, printer, site and tonight.</param>
    /// <param name="lattice">Needle positions.</param>
    /// <param name="solid">Figures of the predicted solid.</param>
    /// <param name="doses">The doses as rounded.</param>
    /// <param name="timeline">The machine's steps.</param>
    /// <returns>The estimate; kg, m3 and s.</returns>
    public static Estimate Estimate(JobDescription job, Lattice lattice, SolidSummary solid, DosePlan doses, Timeline timeline)
    {
        ArgumentNullException.ThrowIfNull(job);
        ArgumentNullException.ThrowIfNull(lattice);
        ArgumentNullException.ThrowIfNull(solid);
        ArgumentNullException.ThrowIfNull(doses);
        ArgumentNullException.ThrowIfNull(timeline);
        DryMix mix = job.Mix;
        double hardened = solid.HardenedCubicMetres * job.LooseDensity.KilogramsPerCubicMetre;
        (double spread, double flush) = SpreadAndFlush(timeline);
        (double reusable, double lost) = LooseMix(job.Printer.LooseMix, spread - hardened);
        UnitMasses masses = UnitMasses.Of(job, solid);
        double[] byLayer = WaterByLayer(lattice, doses);
        double water = doses.TotalCentiMillilitres / 1e8;
        double usedUp = hardened + lost;
        return new Estimate
        {
            SpreadKilograms = spread,
            HardenedDryKilograms = hardened,
            ReusableKilograms = reusable,
            LostKilograms = lost,
            FreshKilograms = masses.FreshKilograms,
            LiftKilograms = masses.FreshKilograms,
            DryKilograms = masses.DryKilograms,
            SaturatedKilograms = masses.SaturatedKilograms,
            SubmergedKilograms = masses.SubmergedKilograms,
            WaterCubicMetres = water,
            WaterByLayerCubicMetres = byLayer,
            FlushCubicMetres = flush,
            BinderKilograms = hardened * mix.BinderShare,
            AdditiveKilograms = [.. mix.Liquid.Additives.Select(a => new NamedAmount(a.Name, a.GramsPerLitre * (water + flush)))],
            RecycledShare = mix.RecycledShare,
            SavingAgainstFilledBox = 1.0 - solid.HardenedCubicMetres / job.Unit.OuterBox.CubicMetres,
            CarbonKilograms = usedUp * mix.Solids.Sum(s => s.Share * s.CarbonPerKilogram),
            Cost = usedUp * mix.Solids.Sum(s => s.Share * s.PricePerKilogram) + (water + flush) * 1000.0 * mix.Liquid.PricePerLitre,
            Currency = mix.Currency,
            SetupSeconds = job.Printer.Timing.Setup.Seconds,
            PrintSeconds = timeline.TotalMilliseconds / 1000.0,
            SecondsByAction = SecondsByAction(timeline),
        };
    }

    private static (double SpreadKilograms, double FlushCubicMetres) SpreadAndFlush(Timeline timeline)
    {
        double spread = 0.0;
        long flush = 0;
        foreach (MachineStep step in timeline.Steps)
        {
            spread += step.MixKilograms;
            flush += step.Action == MachineAction.Flush ? step.CentiMillilitres : 0;
        }

        return (spread, flush / 1e8);
    }

    private static (double Reusable, double Lost) LooseMix(LooseMixHandling handling, double loose)
    {
        double lostInBin = Math.Min(handling.LostInBin.Kilograms, loose);
        double reusable = (loose - lostInBin) * handling.Reusable;
        return (reusable, loose - reusable);
    }

    private static double[] WaterByLayer(Lattice lattice, DosePlan doses)
    {
        var layers = new double[lattice.Layers];
        int positions = lattice.Columns * lattice.Rows;
        for (int k = 0; k < layers.Length; k++)
        {
            long sum = 0;
            foreach (int dose in doses.CentiMillilitres.AsSpan(k * positions, positions))
            {
                sum += dose;
            }

            layers[k] = sum / 1e8;
        }

        return layers;
    }

    private static List<NamedAmount> SecondsByAction(Timeline timeline)
    {
        MachineAction[] actions = Enum.GetValues<MachineAction>();
        var milliseconds = new long[actions.Length];
        foreach (MachineStep step in timeline.Steps)
        {
            milliseconds[(int)step.Action] += step.Milliseconds;
        }

        return [.. actions.Where(action => action != MachineAction.Pause || milliseconds[(int)action] > 0).Select(action => new NamedAmount(action.ToString().ToLowerInvariant(), milliseconds[(int)action] / 1000.0))];
    }
}
