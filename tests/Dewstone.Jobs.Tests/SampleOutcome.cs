using Dewstone.Jobs.Emission;
using Dewstone.Model.Lattices;
using Dewstone.Model.Quantities;
using Dewstone.Model.Results;

namespace Dewstone.Jobs.Tests;

/// <summary>What the doses of <see cref="Samples"/> lead to: water in the cells, the machine's steps, the estimate.</summary>
internal static class SampleOutcome
{
    public static MoistureResult Moisture(DosePlan doses)
    {
        CellGrid grid = CellGrid.Over(Samples.Lattice, 4);
        float[] content = new float[grid.Count];
        byte[] hardened = new byte[grid.Count];
        double sum = 0.0;
        for (int z = 0; z < grid.Nz; z++)
        {
            for (int y = 0; y < grid.Ny; y++)
            {
                for (int x = 0; x < grid.Nx; x++)
                {
                    int cell = (z * grid.Ny + y) * grid.Nx + x;
                    int dose = doses.CentiMillilitres[Samples.Lattice.Index(x / 4, y / 4, z / 4)];
                    content[cell] = (float)(dose * 1e-8 / (64 * grid.CellCubicMetres));
                    hardened[cell] = (byte)(dose > 0 ? 1 : 0);
                    sum += content[cell];
                }
            }
        }

        double water = doses.TotalCentiMillilitres * 1e-8;
        return new MoistureResult
        {
            Grid = grid,
            VolumetricWaterContent = content,
            Hardened = hardened,
            BinderKilogramsPerCubicMetre = Samples.Binder,
            LiquidKilogramsPerCubicMetre = 1000.0,
            Porosity = Samples.Mix.Porosity(Samples.Mix.LooseDensity),
            ThresholdContent = 0.0935,
            InjectedCubicMetres = water,
            RefusedCubicMetres = 0.0,
            FieldCubicMetres = sum * grid.CellCubicMetres,
            Refused = [],
            LargestContent = 0.23,
            TimeSteps = 100,
            CellUpdates = 1000,
        };
    }

    public static Timeline Timeline(DosePlan doses)
    {
        List<MachineStep> steps = [];
        long clock = 0;
        void Add(int layer, int station, MachineAction action, long milliseconds, Point3? tip = null, long water = 0, double mix = 0.0)
        {
            steps.Add(new MachineStep
            {
                Number = steps.Count + 1,
                Layer = layer,
                Station = station,
                Action = action,
                HeadTip = tip,
                StartMilliseconds = clock,
                Milliseconds = milliseconds,
                CentiMillilitres = water,
                MixKilograms = mix,
            });
            clock += milliseconds;
        }

        for (int layer = 1; layer <= 3; layer++)
        {
            Add(layer, 0, MachineAction.Spread, 50_000, mix: 0.6 * 0.4 * 0.05 * 1700.0);
            long water = Enumerable.Range(0, 12).Sum(position => (long)doses.CentiMillilitres[(layer - 1) * 12 + position]);
            if (water == 0)
            {
                continue;
            }

            Point3 tip = new(0.025, 0.025, layer * 0.05 - 0.025);
            Add(layer, 1, MachineAction.Move, 6_000, tip);
            Add(layer, 1, MachineAction.Plunge, 4_000, tip);
            Add(layer, 1, MachineAction.Dose, 7_055, tip, water);
            Add(layer, 1, MachineAction.Hold, 1_000, tip);
            Add(layer, 1, MachineAction.Withdraw, 4_000, tip);
            if (layer == 2)
            {
                Add(layer, 0, MachineAction.Flush, 2_000, water: 76_800);
            }
        }

        return new Timeline { Steps = steps };
    }

    public static Estimate EstimateOf(DosePlan doses, Timeline timeline)
    {
        double water = doses.TotalCentiMillilitres * 1e-8;
        return new Estimate
        {
            SpreadKilograms = 61.2,
            HardenedDryKilograms = 0.85,
            ReusableKilograms = 53.682,
            LostKilograms = 6.668,
            FreshKilograms = 0.96246,
            LiftKilograms = 0.95,
            DryKilograms = 0.89,
            SaturatedKilograms = 1.04,
            SubmergedKilograms = 0.53,
            WaterCubicMetres = water,
            WaterByLayerCubicMetres = [0.0, water / 2.0, water / 2.0],
            FlushCubicMetres = 0.000768,
            BinderKilograms = 0.2125,
            AdditiveKilograms = [new NamedAmount("thickener", 0.000224932)],
            RecycledShare = 0.3,
            SavingAgainstFilledBox = 1.0 / 3.0,
            CarbonKilograms = 1.6,
            Cost = 0.47,
            Currency = "EUR",
            SetupSeconds = 1200.0,
            PrintSeconds = timeline.TotalMilliseconds / 1000.0,
            SecondsByAction =
            [
                .. timeline.Steps.GroupBy(step => step.Action).OrderBy(group => group.Key)
                    .Select(group => new NamedAmount(SequenceEmitter.ActionName(group.Key), group.Sum(step => step.Milliseconds) / 1000.0)),
            ],
        };
    }
}
