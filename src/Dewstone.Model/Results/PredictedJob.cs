using Dewstone.Model.Description;
using Dewstone.Model.Lattices;

namespace Dewstone.Model.Results;

/// <summary>A job up to what its water did, not yet judged. Everything after the doses is computed from the doses as rounded.</summary>
public record PredictedJob
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

    /// <summary>Materials, carbon, cost, time.</summary>
    public required Estimate Estimate { get; init; }

    /// <summary>Files it was made from.</summary>
    public required IReadOnlyList<InputFile> Inputs { get; init; }

    /// <summary>Version of the tool, e.g. 0.1.0.</summary>
    public required string ToolVersion { get; init; }
}
