using Dewstone.Model.Quantities;

namespace Dewstone.Model.Results;

/// <summary>How a unit hangs. Early-age mass: dry mix, all its water, and the loose mix that cannot be got out.</summary>
public sealed record LiftingReport
{
    /// <summary>Mass on the hook, kg.</summary>
    public required double Kilograms { get; init; }

    /// <summary>Of which loose mix that cannot be got out, kg.</summary>
    public required double TrappedKilograms { get; init; }

    /// <summary>Centre of gravity, metres, unit frame.</summary>
    public required Point3 CentreOfGravity { get; init; }

    /// <summary>Least and greatest reading of the load cell that agrees with the prediction, kg.</summary>
    public required (double Least, double Most) LoadCellKilograms { get; init; }

    /// <summary>The hang by straps or inserts; null when the file does not say how it is lifted.</summary>
    public HangReport? Hang { get; init; }
}
