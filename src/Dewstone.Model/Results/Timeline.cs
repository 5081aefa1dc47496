namespace Dewstone.Model.Results;

/// <summary>The machine's steps in order: one timeline for wetting, estimate and sequence.</summary>
public sealed record Timeline
{
    /// <summary>The steps, in order of time.</summary>
    public required IReadOnlyList<MachineStep> Steps { get; init; }

    /// <summary>Time from the first spreading to the end of the last step, milliseconds; setup is not in it.</summary>
    public long TotalMilliseconds => Steps.Count == 0 ? 0 : Steps[^1].StartMilliseconds + Steps[^1].Milliseconds;
}
