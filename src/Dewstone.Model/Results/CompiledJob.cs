using Dewstone.Model.Description;
using Dewstone.Model.Diagnostics;
using Dewstone.Model.Lattices;

namespace Dewstone.Model.Results;

/// <summary>A compiled job, complete: all that the files are made from. Everything after the doses is computed from the doses as rounded.</summary>
public sealed record CompiledJob
{
    /// <summary>What was asked for.</summary>
    public required JobDescription Description { get; init; }

    /// <summary>Why the unit stands where it stands.</summary>
    public required Registration Registration { get; init; }

    /// <summary>Where the unit stands.</summary>
    public required UnitPlacement Placement { get; init; }

    /// <summary>Needle positions.</summary>
    public required Lattice Lattice { get; init; }

    /// <summary>The wanted solid on the cells.</summary>
    public required TargetField Target { get; init; }

    /// <summary>The doses as rounded.</summary>
    public required DosePlan Doses { get; init; }

    /// <summary>How the doses were found.</summary>
    public required DosingSummary Dosing { get; init; }

    /// <summary>The machine's steps.</summary>
    public required Timeline Timeline { get; init; }

    /// <summary>When water flows where.</summary>
    public required DoseSchedule Schedule { get; init; }

    /// <summary>What the water did.</summary>
    public required MoistureResult Moisture { get; init; }

    /// <summary>Figures of the predicted solid.</summary>
    public required SolidSummary Solid { get; init; }

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

    /// <summary>Materials, carbon, cost, time.</summary>
    public required Estimate Estimate { get; init; }

    /// <summary>Requirements and how they came out.</summary>
    public required IReadOnlyList<RequirementResult> Requirements { get; init; }

    /// <summary>All findings, placed, in order: reading, shape, printer, wetting and later.</summary>
    public required IReadOnlyList<Diagnostic> Findings { get; init; }

    /// <summary>Findings the user released.</summary>
    public IReadOnlyList<Acceptance> Accepted { get; init; } = [];

    /// <summary>Files it was made from.</summary>
    public required IReadOnlyList<InputFile> Inputs { get; init; }

    /// <summary>Version of the tool, e.g. 0.1.0.</summary>
    public required string ToolVersion { get; init; }

    /// <summary>Whether an unreleased error about the predicted solid holds the job back from printing.</summary>
    public bool Held => Findings.Any(f => f.Severity == Severity.Error && f.AcceptedBecause is null);
}
