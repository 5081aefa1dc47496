using Dewstone.Model.Results;
using Dewstone.Reading.Job;

namespace Dewstone.Jobs.Compilation;

/// <summary>A job simulated again from what its folder holds, without findings and requirements.</summary>
internal static class SimulatedJob
{
    /// <summary>Puts one together.</summary>
    /// <param name="core">What the job was simulated with.</param>
    /// <param name="doses">Doses.</param>
    /// <param name="target">Wanted solid on the cells.</param>
    /// <param name="predicted">What the doses give.</param>
    /// <param name="toolVersion">Version of the tool that made the job.</param>
    /// <returns>The job.</returns>
    public static CompiledJob Of(JobCore core, DosePlan doses, TargetField target, Prediction predicted, string toolVersion)
    {
        return new CompiledJob
        {
            Description = core.Description,
            Registration = new Registration { Wish = core.Description.Unit.Place, Fixed = true },
            Placement = core.Placement,
            Lattice = core.Lattice,
            Target = target,
            Doses = doses,
            Dosing = DosingSummary.Given(DoseFigures.Of(doses, predicted.Solid)),
            Timeline = predicted.Timeline,
            Schedule = predicted.Schedule,
            Moisture = predicted.Moisture,
            Solid = predicted.Solid,
            Estimate = predicted.Estimate,
            Requirements = [],
            Findings = [],
            Inputs = [],
            ToolVersion = toolVersion,
        };
    }
}
