using Dewstone.Model.Description;
using Dewstone.Model.Results;
using Dewstone.Reading.Job;

namespace Dewstone.Jobs.Compilation;

/// <summary>How a unit is compiled.</summary>
public sealed record CompileOptions
{
    /// <summary>Cells a voxel side, 4 to 16; even when layers are shifted.</summary>
    public int CellsPerVoxel { get; init; } = 8;

    /// <summary>Stop after reading, shape and printer, before any dose is made.</summary>
    public bool DrawingOnly { get; init; }

    /// <summary>Correct the doses against the real wetting; false for plain doses.</summary>
    public bool Correct { get; init; } = true;

    /// <summary>Trials with perturbed inputs, 1 to 10000; 0 for none.</summary>
    public int Trials { get; init; }

    /// <summary>Job whose placement is kept and whose doses are started from; null to start anew.</summary>
    public EarlierJob? Like { get; init; }

    /// <summary>Where the unit stands, no member free, whatever its own <c>place</c> says; null to obey that and choose the rest.</summary>
    public PlacementWish? Wish { get; init; }

    /// <summary>Layers to spread at least, those over the unit's top included; 0 for no more than the unit needs.</summary>
    public int LeastLayers { get; init; }

    /// <summary>Findings the user releases.</summary>
    public IReadOnlyList<Acceptance> Accept { get; init; } = [];

    /// <summary>Told what the water did as soon as that is known, while it is still being judged; to return at once. Null when nobody asks.</summary>
    public Action<PredictedJob>? Predicted { get; init; }

    /// <summary>Version of the tool, written into the job.</summary>
    public required string ToolVersion { get; init; }
}
