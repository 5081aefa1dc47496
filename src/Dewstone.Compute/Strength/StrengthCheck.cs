using Dewstone.Compute.Numerics;
using Dewstone.Model.Description;
using Dewstone.Model.Diagnostics;
using Dewstone.Model.Quantities;
using Dewstone.Model.Results;

namespace Dewstone.Compute.Strength;

/// <summary>How strong the hardened solid is, when it may be dug out and lifted, how it hangs, and where it comes nearest to cracking.</summary>
/// <remarks>
/// Strength at 28 equivalent days cell by cell (<see cref="CellStrength"/>), with age by <see cref="AgeFactor"/> and <see cref="Maturity"/> at the curing temperature, held constant. Loose mix is
/// cleared away from a mean strength of <see cref="DigOutPascals"/> on and not within the first day; the unit is lifted from <see cref="LiftPascals"/> on (PCI practice of 10 to 14 MPa; from
/// memory), and when tension keeps its factor (<see cref="CrackingStress"/>). A mix that says nothing of strength is taken as gel/space with air, class N, and that is told.
/// </remarks>
public static class StrengthCheck
{
    /// <summary>Mean strength at which mix is cleared away, Pa: edges bear a trowel; common practice for striking forms, no source.</summary>
    public const double DigOutPascals = 2e6;

    /// <summary>Mean strength at which a unit is lifted, Pa.</summary>
    public const double LiftPascals = 10e6;

    /// <summary>Diameter of the ball that tension is the mean over, pitches.</summary>
    public const double BallPitches = 1.0;

    private static readonly double[] AgesInDays = [1.0, 2.0, 3.0, 7.0, 14.0, 28.0, 90.0];

    /// <summary>Checks.</summary>
    /// <param name="question">What of.</param>
    /// <param name="parallelism">Threads; no result depends on them.</param>
    /// <param name="cancellation">Looked at in between.</param>
    /// <returns>Figures and findings.</returns>
    /// <exception cref="OperationCanceledException">Cancelled.</exception>
    public static StrengthResult Check(StrengthQuestion question, Parallelism parallelism, CancellationToken cancellation)
    {
        ArgumentNullException.ThrowIfNull(question);
        DiagnosticBag findings = new();
        JobDescription job = question.Job;
        StrengthLaw law = job.Mix.Strength ?? new StrengthLaw();
        CellStrength strength = new(law, job.Mix, question.Moisture, job.Mix.Hardening.ActivationKelvin);
        if (strength.Rule is StrengthRule.GelSpace or StrengthRule.HandbookCurve && !law.Compacted)
        {
            double air = question.Moisture.Porosity - question.Solid.MeanWaterCement * question.Moisture.BinderKilogramsPerCubicMetre / question.Moisture.LiquidKilogramsPerCubicMetre;
            findings.Add(StrengthFindings.AirLeftOut.At(
                $"the strength rule leaves out the air in the bed, which is {100.0 * air:0.#} % of what hardens",
                "write `law: gel_space_with_air` or `law: feret`, give measured cubes, or `compacted: true` if it is",
                new KeyPath(DescriptionKind.Mix, "strength.law")));
            return new StrengthResult(null, findings.Items);
        }

        if (BodyBricks.Of(question.Moisture, question.Placement, job.LooseDensity, strength, question.Bricks, parallelism) is not { } bricks)
        {
            return new StrengthResult(null, []);
        }

        if (bricks.MeanPascals <= 0.0)
        {
            return new StrengthResult(null, [TooWeak(bricks.MeanPascals)]);
        }

        AgeFactor factor = AgeFactor.Of(law.CementClass);
        double curing = job.CuringTemperature.Celsius, rate = Maturity.Rate(curing, job.Mix.Hardening.ActivationKelvin);
        if (curing is < 0.0 or > 40.0)
        {
            findings.Add(StrengthFindings.CuringOutside.At(
                $"cured at {curing:0.#} degC; ages and strengths hold from 0 to 40 degC", "cure warmer or cooler", new KeyPath(DescriptionKind.Tonight, "curing_temperature")));
        }

        IReadOnlyList<Support> places = HangCheck.Places(job.Unit.Lifting, job.Unit.OuterBox, bricks);
        LiftingReport lifting = Lifting(question, bricks, places, findings);
        (IReadOnlyList<TensionResult> tension, BodyMap map) = Tension(question, bricks, places, parallelism, cancellation);
        double? lift = LiftAge(bricks.MeanPascals, tension, factor) / rate;
        double atLift = lift is { } days ? Math.Sqrt(factor.At(days * rate)) : 1.0;
        tension = [.. tension.Select(held => held with { FactorAtLift = held.Factor * atLift })];
        Judge(bricks.MeanPascals, tension, factor, findings);
        return new StrengthResult(
            new StrengthReport
            {
                Rule = strength.Rule,
                RuleAssumed = job.Mix.Strength is null,
                CementClass = law.CementClass,
                CuringCelsius = curing,
                AgeRate = rate,
                MeanPascals = bricks.MeanPascals,
                Percentiles = (bricks.Percentile(0.05), bricks.Percentile(0.5), bricks.Percentile(0.95)),
                Ages = [.. AgesInDays.Select(age => new StrengthAtAge(
                    age, age * rate, bricks.MeanPascals * factor.At(age * rate), bricks.Percentile(0.05) * factor.At(age * rate)))],
                DigOutDays = factor.DaysTo(DigOutPascals / bricks.MeanPascals) is { } dig ? Math.Max(1.0, dig / rate) : null,
                LiftDays = lift,
                LiftPascals = LiftPascals,
                Tension = tension,
                Bricks = Math.Max(Math.Max(bricks.Shape.Nx, bricks.Shape.Ny), bricks.Shape.Nz),
                Map = map,
                Lifting = lifting,
                Paste = Paste(question),
                HeatRiseKelvin = HeatRise(question),
                Exposure = [.. ExposureRules.All.Select(rule => new ExposureVerdict(rule, ExposureRules.Met(
                    rule, question.Solid.MeanWaterCement, bricks.MeanPascals, question.Moisture.BinderKilogramsPerCubicMetre)))],
            },
            findings.Items);
    }

    private static PasteVolumes? Paste(StrengthQuestion question)
    {
        Constituent[] binders = [.. question.Job.Mix.Solids.Where(solid => solid.IsBinder)];
        double density = binders.Sum(binder => binder.Share) / binders.Sum(binder => binder.Share / binder.GrainDensity.KilogramsPerCubicMetre);
        double water = question.Solid.MeanWaterCement;
        return water > 0.0 && density > 0.0 ? PasteModel.Of(water, Hydration.Of(water, 28.0 * 24.0), density, question.Moisture.LiquidKilogramsPerCubicMetre) : null;
    }

    private static double HeatRise(StrengthQuestion question)
    {
        double cement = question.Moisture.BinderKilogramsPerCubicMetre, water = question.Solid.MeanWaterCement;
        double capacity = question.Job.LooseDensity.KilogramsPerCubicMetre * HydrationHeat.OfSolids + water * cement * HydrationHeat.OfWater;
        return HydrationHeat.AdiabaticRise(cement, Hydration.Of(water, 3.0 * 24.0), HydrationHeat.Plain, capacity);
    }

    private static LiftingReport Lifting(StrengthQuestion question, BodyBricks bricks, IReadOnlyList<Support> places, DiagnosticBag findings)
    {
        ReefUnit unit = question.Job.Unit;
        double trapped = question.Trapped.Kilograms, solid = question.LiftKilograms, all = solid + trapped;
        Point3 moment = bricks.CentreOfGravity * solid;
        foreach (SolidPiece pocket in question.Trapped.Pockets)
        {
            moment += pocket.Centre * pocket.Kilograms;
        }

        Point3 centre = moment * (1.0 / (solid + question.Trapped.Pockets.Sum(pocket => pocket.Kilograms)));
        // Two standard deviations of the loose density; upward as much again for mix that clings. Common practice, no source.
        double spread = Math.Max(0.03, 2.0 * (question.Job.Mix.Uncertainty?.LooseDensity ?? 0.0));
        return new LiftingReport
        {
            Kilograms = all,
            TrappedKilograms = trapped,
            CentreOfGravity = centre,
            LoadCellKilograms = (all * (1.0 - spread), all * (1.0 + 2.0 * spread)),
            Hang = unit.Lifting is { } lifting ? HangCheck.Check(lifting, unit.OuterBox, places, all, centre, findings) : null,
        };
    }

    private static (IReadOnlyList<TensionResult> Results, BodyMap Map) Tension(
        StrengthQuestion question, BodyBricks bricks, IReadOnlyList<Support> places, Parallelism parallelism, CancellationToken cancellation)
    {
        GridShape shape = bricks.Shape;
        ElasticSolver solver = new(
            new BrickElement(bricks.Edges.X, bricks.Edges.Y, bricks.Edges.Z, TensionStudy.Poisson), shape, bricks.Moments, parallelism);
        double pitch = question.Job.Printer.Grid.Pitch.Metres;
        var cases = TensionStudy.Load(solver, bricks, places, question.Job.Unit.OuterBox, question.Job.Unit.Lifting?.DynamicFactor ?? 1.0, pitch);
        solver.Solve(cancellation);
        List<TensionResult> results = [];
        float[] use = [];
        double worst = 0.0;
        foreach ((LoadCase held, bool overturns) in cases)
        {
            TensionField field = TensionStudy.Judge(solver, bricks, (int)held, BallPitches * pitch, parallelism);
            TensionBall ball = new(solver, bricks, (int)held, BallPitches * pitch);
            IReadOnlyList<Point3> starts = field.Worst();
            TensionPlace[] near = new TensionPlace[starts.Count];
            Chunks.Run(near.Length, 1, parallelism, (start, _) => near[start] = ball.Climb(starts[start]));
            if (near.Length == 0)
            {
                continue;
            }

            TensionPlace most = near.MaxBy(place => place.Use)!;
            results.Add(new TensionResult(held, most.Tension, most.Cracking, most.Where, 0.0, overturns));
            if (use.Length == 0 || (cases[0].Case != LoadCase.Lifted && results[^1].Factor < worst))
            {
                (use, worst) = (field.ByBrick(), results[^1].Factor);
            }
        }

        BodyMap map = new()
        {
            Nx = shape.Nx,
            Ny = shape.Ny,
            Nz = shape.Nz,
            Corner = bricks.Corner,
            Edges = bricks.Edges,
            Filled = bricks.Filled,
            Pascals = bricks.Pascals,
            Use = use,
        };
        return (results, map);
    }

    // Equivalent days to the mean strength, and to the factor against cracking when lifted, whichever comes later; null when one never comes.
    private static double? LiftAge(double mean, IReadOnlyList<TensionResult> tension, AgeFactor factor)
    {
        double needed = LiftPascals / mean;
        if (tension.FirstOrDefault(held => held.Case == LoadCase.Lifted) is { } lifted)
        {
            double share = CrackingStress.LeastFactor / lifted.Factor;
            needed = Math.Max(needed, share * share);
        }

        return factor.DaysTo(needed);
    }

    private static void Judge(double mean, IReadOnlyList<TensionResult> tension, AgeFactor factor, DiagnosticBag findings)
    {
        if (factor.DaysTo(LiftPascals / mean) is null)
        {
            findings.Add(TooWeak(mean));
        }

        foreach (TensionResult held in tension.Where(held => held.Factor < CrackingStress.LeastFactor))
        {
            findings.Add(StrengthFindings.TensionHigh.At(
                string.Create(null, $"{LoadCaseWords.Of(held.Case)}: {held.TensionPascals * 1e-6:0.###} MPa of tension at ({held.Where.X * 1e3:0}, {held.Where.Y * 1e3:0}, {held.Where.Z * 1e3:0}) mm, cracks at {held.CrackingPascals * 1e-6:0.###} MPa at 28 days: factor {held.Factor:0.##}, at least {CrackingStress.LeastFactor} is wanted"),
                held.Case == LoadCase.Lifted ? "move the straps or thicken that place" : "thicken that place, or never set the unit down that way",
                new KeyPath(DescriptionKind.Unit, "lifting")) with
            { Severity = held.Case == LoadCase.Lifted ? Severity.Error : Severity.Warning, Where = held.Where });
        }
    }

    private static Diagnostic TooWeak(double mean) => StrengthFindings.NeverStrongEnough.At(
        $"{mean * 1e-6:0.#} MPa at 28 days on the mean; units are lifted from {LiftPascals * 1e-6:0} MPa on", "raise the binder share or the loose density, or give measured cubes",
        new KeyPath(DescriptionKind.Mix, "strength"));
}
