using Dewstone.Compute.Habitat;
using Dewstone.Compute.Numerics;
using Dewstone.Compute.Seabed;
using Dewstone.Model.Description;
using Dewstone.Model.Quantities;
using Dewstone.Model.Results;

namespace Dewstone.Jobs.Tests.Emission;

/// <summary>The sample job stood at an invented site.</summary>
internal static class SeaJobs
{
    public static Site Site { get; } = new()
    {
        Name = "Wrackline shoal",
        Water = new SiteWater { Depth = new Length(6), Low = new Length(-0.3), High = new Length(1.4), Salinity = 30, Temperature = new Temperature(12) },
        Wave = new DesignWave
        {
            SignificantHeight = new Length(1.2),
            PeakPeriod = new Duration(7),
            Direction = new Angle(250),
            HeightRule = DesignHeightRule.HighestTenth,
        },
        Current = new SeaCurrent(new Speed(0.6), new Angle(90)),
        Seabed = new SeabedSoil
        {
            Soil = SoilKind.Sand,
            Friction = 0.55,
            FrictionAngle = new Angle(30),
            EffectiveWeight = new UnitWeight(8500),
            Grain = new Length(3e-4),
            Slope = new Angle(2),
        },
        Animals = new ShelterAnimals(new Length(0.05), new Length(0.09)),
    };

    /// <summary>A job with what the sea and its animals make of it.</summary>
    public static CompiledJob At(CompiledJob job, Site site)
    {
        JobDescription there = job.Description with { Site = site };
        Parallelism one = new(1);
        return job with
        {
            Description = there,
            Sea = SeabedSolver.Solve(there, job.Moisture.Grid, job.Moisture.Hardened, job.Placement, job.Estimate, one).Report,
            Habitat = HabitatSurvey.Survey(there, job.Placement, HardenedSurface.Of(job.Moisture, job.Description.Mix.Wetting, one), one).Report,
        };
    }
}
