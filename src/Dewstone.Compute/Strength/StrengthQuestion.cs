using Dewstone.Model.Description;
using Dewstone.Model.Lattices;
using Dewstone.Model.Results;

namespace Dewstone.Compute.Strength;

/// <summary>What strength and lifting are judged of.</summary>
public sealed record StrengthQuestion
{
    /// <summary>
    /// Most bricks along the longest side when nothing else is said: six cells a brick for a block of 900 mm with its scallops. The drawn block's tension is 4 to 8 % more with
    /// 48; 0.55 s on two threads here, against 0.93 s with 32 and 2.0 s with 48.
    /// </summary>
    public const int DefaultBricks = 26;

    /// <summary>Unit, mix and conditions.</summary>
    public required JobDescription Job { get; init; }

    /// <summary>Where the unit stands.</summary>
    public required UnitPlacement Placement { get; init; }

    /// <summary>What the water did.</summary>
    public required MoistureResult Moisture { get; init; }

    /// <summary>Figures of the predicted solid.</summary>
    public required SolidSummary Solid { get; init; }

    /// <summary>Mass on the hook without what is trapped: dry mix and all water in the hardened solid, kg.</summary>
    public required double LiftKilograms { get; init; }

    /// <summary>Loose mix that cannot be got out.</summary>
    public required TrappedMixReport Trapped { get; init; }

    /// <summary>Most bricks along an axis, 4 to 96.</summary>
    public int Bricks { get; init; } = DefaultBricks;
}
