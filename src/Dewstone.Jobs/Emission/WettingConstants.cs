namespace Dewstone.Jobs.Emission;

/// <summary>Constants of the wetting that no description holds; a job is simulated again with exactly these.</summary>
public sealed record WettingConstants
{
    /// <summary>Time from the first dose of a layer after which its water no longer moves, at the bed's temperature in force, s.</summary>
    public required double WindowSeconds { get; init; }

    /// <summary>Equal shots in which a dose is given over its pump time.</summary>
    public required int ShotsPerDose { get; init; }

    /// <summary>Share of the largest monotone time step that is taken, 0 to 1.</summary>
    public required double StepShare { get; init; }

    /// <summary>Steps after which the time step is set anew when nothing else sets it.</summary>
    public required int StepsPerSetting { get; init; }

    /// <summary>How much longer than the others the last step before an event may be, 1 or more.</summary>
    public required double LastStepStretch { get; init; }
}
