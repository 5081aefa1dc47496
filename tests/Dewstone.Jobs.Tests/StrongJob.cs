using Dewstone.Compute.Strength;
using Dewstone.Model.Description;
using Dewstone.Model.Quantities;
using Dewstone.Model.Results;

namespace Dewstone.Jobs.Tests;

/// <summary>A job with its strength reckoned, on two straps, of a bed that is said to be compacted.</summary>
internal static class StrongJob
{
    public static CompiledJob Make(bool strapped = true) => Of(Samples.Job(), strapped);

    public static CompiledJob Of(CompiledJob plain, bool strapped = true)
    {
        JobDescription description = plain.Description with
        {
            Mix = plain.Description.Mix with { Strength = new StrengthLaw { Rule = StrengthRule.Feret, Compacted = true } },
            Unit = plain.Description.Unit with { Lifting = strapped ? Straps(plain) : null },
        };
        CompiledJob job = plain with { Description = description };
        StrengthResult strength = StrengthCheck.Check(
            new StrengthQuestion
            {
                Job = description,
                Placement = job.Placement,
                Moisture = job.Moisture,
                Solid = job.Solid,
                LiftKilograms = job.Estimate.LiftKilograms,
                Trapped = new TrappedMixReport(0.025, 0.0, []),
            },
            new Parallelism(1), TestContext.Current.CancellationToken);
        return job with { Strength = strength.Report };
    }

    private static StrapLifting Straps(CompiledJob job)
    {
        double across = job.Description.Unit.OuterBox.X;
        return new StrapLifting { Lines = [new StrapLine(Axis.Y, new Length(0.25 * across)), new StrapLine(Axis.Y, new Length(0.75 * across))] };
    }
}
