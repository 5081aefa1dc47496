using System.Diagnostics.CodeAnalysis;
using Dewstone.Model.Diagnostics;

namespace Dewstone.Model.Results;

/// <summary>A compiled job, complete: what the water did, and how that was judged. All that the files are made from.</summary>
public sealed record CompiledJob : PredictedJob
{
    /// <summary>A job whose every member is named.</summary>
    public CompiledJob()
    {
    }

    /// <summary>A judged job.</summary>
    /// <param name="predicted">What was judged.</param>
    /// <param name="requirements">Requirements and how they came out.</param>
    /// <param name="findings">All findings, in order.</param>
    [SetsRequiredMembers]
    public CompiledJob(PredictedJob predicted, IReadOnlyList<RequirementResult> requirements, IReadOnlyList<Diagnostic> findings)
        : base(predicted)
    {
        Requirements = requirements;
        Findings = findings;
    }

    /// <summary>What the checks of the predicted solid found; null for a job simulated again from its tables alone.</summary>
    public InspectionReport? Inspection { get; init; }

    /// <summary>How strong it is and how it hangs; null when nothing hardened, when the mix's rule does not hold, or for a job simulated again from its tables alone.</summary>
    public StrengthReport? Strength { get; init; }

    /// <summary>How it stands at its site; null without a site, with absurd figures of it, or for a job simulated again from its tables alone.</summary>
    public StabilityReport? Sea { get; init; }

    /// <summary>What it offers as a place to live; null when nothing hardened, or for a job simulated again from its tables alone.</summary>
    public HabitatReport? Habitat { get; init; }

    /// <summary>How it comes out when its inputs are not as assumed; null when no trials were asked for.</summary>
    public TrialsReport? Trials { get; init; }

    /// <summary>Requirements and how they came out.</summary>
    public required IReadOnlyList<RequirementResult> Requirements { get; init; }

    /// <summary>All findings, placed, in order: reading, shape, printer, wetting and later.</summary>
    public required IReadOnlyList<Diagnostic> Findings { get; init; }

    /// <summary>Findings the user released.</summary>
    public IReadOnlyList<Acceptance> Accepted { get; init; } = [];

    /// <summary>Whether an unreleased error about the predicted solid holds the job back from printing.</summary>
    public bool Held => Findings.Any(f => f.Severity == Severity.Error && f.AcceptedBecause is null);
}
