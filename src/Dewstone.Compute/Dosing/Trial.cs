using Dewstone.Compute.Geometry;
using Dewstone.Model.Description;
using Dewstone.Model.Lattices;
using Dewstone.Model.Results;

namespace Dewstone.Compute.Dosing;

/// <summary>x.</summary>
public static class Trial
{
    public static (DosePlan Plan, List<string> Log) Run(JobDescription job, ReefShape shape, UnitPlacement placement, Lattice lattice, Tuning t, Parallelism par)
    {
        List<string> log = [];
        DoseRounder rounder = new(job, lattice);
        ForwardModel forward = new(job, lattice, par);
        double ub = rounder.Limits.UpperMillilitres;
        double nominal = t.Start > 0 ? t.Start : NominalDose.Choose(job, lattice).Millilitres;
        double[]? wish = null;
        double[] velocity = new double[lattice.Count];
        double best = double.PositiveInfinity;
        DosePlan? bestPlan = null;
        foreach ((int cells, int its) in new[] { (t.CoarseCells, t.Coarse), (t.FineCells, t.Fine) })
        {
            if (its == 0) { continue; }
            CorrectionField field = CorrectionField.Over(shape, placement, lattice, cells, par, default);
            DoseObjective objective = new(field, lattice, forward.ThresholdContent, par, t);
            double[] fractions = VoxelFractions.Average(lattice, field.Target);
            wish ??= Array.ConvertAll(fractions, f => f < 0.02 ? 0 : f * nominal);
            bool[] active = Array.ConvertAll(fractions, f => f >= 0.02);
            double[] errors = new double[lattice.Count];
            best = double.PositiveInfinity;
            for (int it = 0; it < its; it++)
            {
                DosePlan plan = rounder.Round(wish);
                MoistureResult m = forward.Wet(plan, field.Grid, default);
                (double misfit, double over, double under) = objective.Evaluate(m);
                double total = misfit;
                if (total < best) { best = total; bestPlan = plan; }
                log.Add($"{cells} {it} {misfit:0.000} over {over:0.00} under {under:0.00} water {plan.TotalCentiMillilitres / 1e5:0.0}");
                if (it + 1 == its && cells == t.FineCells) { break; }
                objective.Errors(active, errors);
                for (int i = 0; i < wish.Length; i++)
                {
                    if (!active[i]) { continue; }
                    velocity[i] = t.Momentum * velocity[i] + Math.Clamp(t.Alpha * (errors[i] - t.Water), -t.Clamp, t.Clamp);
                    wish[i] = Math.Clamp(wish[i] * Math.Exp(velocity[i]), 0.5, ub);
                }
            }
        }

        return (bestPlan!, log);
    }

    public static MoistureResult Wet(JobDescription job, Lattice lattice, DosePlan plan, CellGrid grid, Parallelism par) =>
        new ForwardModel(job, lattice, par).Wet(plan, grid, default);
}
