using Dewstone.Compute.Estimation;
using Dewstone.Compute.Seabed;
using Dewstone.Model.Description;
using Dewstone.Model.Results;

namespace Dewstone.Jobs.Compilation;

/// <summary>Stands a compiled job at another site: the same solid in other water.</summary>
public static class SiteComparison
{
    /// <summary>Stands it.</summary>
    /// <param name="job">The job.</param>
    /// <param name="site">The other site.</param>
    /// <param name="parallelism">Threads; no result depends on them.</param>
    /// <returns>Report, requirements and findings there; they do not hold the job.</returns>
    public static SeabedResult Stand(CompiledJob job, Site site, Parallelism parallelism)
    {
        ArgumentNullException.ThrowIfNull(job);
        JobDescription there = job.Description with { Site = site };
        UnitMasses masses = UnitMasses.Of(there, job.Solid);
        Estimate estimate = job.Estimate with { SaturatedKilograms = masses.SaturatedKilograms, SubmergedKilograms = masses.SubmergedKilograms };
        return SeabedSolver.Solve(there, job.Moisture.Grid, job.Moisture.Hardened, job.Placement, estimate, parallelism);
    }
}
