using Dewstone.Jobs.Compilation;
using Dewstone.Model.Results;

namespace Dewstone.Jobs.Tests.Compilation;

public sealed class JobVerifierTests
{
    [Fact]
    public void Verify_sound_job_passes() => JobVerifier.Verify(Samples.Job());

    [Theory]
    [InlineData("not a number", float.NaN)]
    [InlineData("below nothing", -0.001f)]
    [InlineData("above the porosity", 0.3841f)]
    [InlineData("wet but not hardened", 0.2f)]
    public void Verify_bad_cell_is_named(string what, float content)
    {
        CompiledJob job = Samples.Job();
        job.Moisture.VolumetricWaterContent[3] = content;

        Assert.True(Message(job).Contains("cell 3", StringComparison.Ordinal), what);
    }

    [Fact]
    public void Verify_dry_cell_called_hardened_is_named()
    {
        CompiledJob job = Samples.Job();
        job.Moisture.Hardened[5] = 1;

        Assert.Contains("cell 5", Message(job), StringComparison.Ordinal);
    }

    [Fact]
    public void Verify_water_lost_between_tables_and_field_is_named()
    {
        // Two millionths of the water are missing: twice the tolerance. Half a millionth may be.
        CompiledJob job = Samples.Job();
        double injected = job.Moisture.InjectedCubicMetres;

        Assert.Contains("water in the field", Message(job with { Moisture = With(job.Moisture, injected, job.Moisture.FieldCubicMetres * (1.0 - 2e-6)) }), StringComparison.Ordinal);
        Assert.Contains("water of the tables", Message(job with { Moisture = With(job.Moisture, injected * (1.0 + 2e-6), job.Moisture.FieldCubicMetres) }), StringComparison.Ordinal);
        JobVerifier.Verify(job with { Moisture = With(job.Moisture, injected, job.Moisture.FieldCubicMetres * (1.0 - 5e-7)) });
    }

    [Fact]
    public void Verify_dose_changed_after_the_solve_is_named()
    {
        CompiledJob job = Samples.Job();
        int index = Samples.Lattice.Index(1, 1, 1);
        job.Doses.CentiMillilitres[index]++;

        Assert.Contains("water of the tables", Message(job), StringComparison.Ordinal);
    }

    [Fact]
    public void Verify_water_without_pump_steps_is_named()
    {
        CompiledJob job = Samples.Job();
        job.Doses.Steps[Samples.Lattice.Index(1, 1, 1)] = 0;

        Assert.Contains("no pump step, no water", Message(job), StringComparison.Ordinal);
    }

    [Fact]
    public void Verify_broken_timelines_are_named()
    {
        CompiledJob job = Samples.Job();
        IReadOnlyList<MachineStep> steps = job.Timeline.Steps;

        Assert.Contains("begins when the one before ends", Message(Timed(job, [.. steps.Take(4), steps[4] with { StartMilliseconds = 1 }, .. steps.Skip(5)])), StringComparison.Ordinal);
        Assert.Contains("numbered from 1", Message(Timed(job, [.. steps.Skip(1)])), StringComparison.Ordinal);
        Assert.Contains("every layer is spread once", Message(Timed(job, [.. steps.Take(8)])), StringComparison.Ordinal);
        Assert.Contains("water of layer 2", Message(Timed(job, [.. steps.Select(step => step.Number == 5 ? step with { CentiMillilitres = 1 } : step)])), StringComparison.Ordinal);
    }

    [Fact]
    public void Verify_estimate_that_does_not_close_is_named()
    {
        CompiledJob job = Samples.Job();

        Assert.Contains("hardened, reusable or lost", Message(job with { Estimate = job.Estimate with { LostKilograms = 6.669 } }), StringComparison.Ordinal);
        Assert.Contains("printing time", Message(job with { Estimate = job.Estimate with { PrintSeconds = 200.0 } }), StringComparison.Ordinal);
    }

    private static string Message(CompiledJob job) => Assert.Throws<InvalidOperationException>(() => JobVerifier.Verify(job)).Message;

    private static CompiledJob Timed(CompiledJob job, IReadOnlyList<MachineStep> steps) => job with { Timeline = new Timeline { Steps = steps } };

    private static MoistureResult With(MoistureResult moisture, double injected, double field) => new()
    {
        Grid = moisture.Grid,
        VolumetricWaterContent = moisture.VolumetricWaterContent,
        Hardened = moisture.Hardened,
        BinderKilogramsPerCubicMetre = moisture.BinderKilogramsPerCubicMetre,
        LiquidKilogramsPerCubicMetre = moisture.LiquidKilogramsPerCubicMetre,
        Porosity = moisture.Porosity,
        ThresholdContent = moisture.ThresholdContent,
        InjectedCubicMetres = injected,
        RefusedCubicMetres = moisture.RefusedCubicMetres,
        FieldCubicMetres = field,
        Refused = moisture.Refused,
        LargestContent = moisture.LargestContent,
        TimeSteps = moisture.TimeSteps,
        CellUpdates = moisture.CellUpdates,
    };
}
