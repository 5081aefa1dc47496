using Dewstone.Model.Description;
using Dewstone.Model.Quantities;
using Dewstone.Model.Results;

namespace Dewstone.Jobs.Bins;

/// <summary>A bin to compile.</summary>
public sealed record BinQuestion
{
    /// <summary>Name of the bin, such as <c>yard-001</c>.</summary>
    public required string Name { get; init; }

    /// <summary>Mix, real printer, needles and night; its unit is not looked at.</summary>
    public required JobDescription Conditions { get; init; }

    /// <summary>The units, at least one, all solved for this printer, mix and night, with the same layers and cells.</summary>
    public required IReadOnlyList<PlacedUnit> Units { get; init; }

    /// <summary>Least distance between the outer boxes of two units.</summary>
    public required Length Gap { get; init; }

    /// <summary>How long a bin sets at least before anything is dug out; null when nothing is said, and strength alone decides.</summary>
    public Duration? SetBeforeDig { get; init; }

    /// <summary>Findings the user releases.</summary>
    public IReadOnlyList<Acceptance> Accept { get; init; } = [];

    /// <summary>Files it is made from.</summary>
    public IReadOnlyList<InputFile> Inputs { get; init; } = [];

    /// <summary>Version of the tool, written into the job.</summary>
    public required string ToolVersion { get; init; }
}
