namespace Dewstone.Compute.Survey;

/// <summary>A point at which a rule of the control chart is broken.</summary>
/// <param name="Index">Point that completes the pattern, from 0.</param>
/// <param name="First">First point of the pattern, from 0.</param>
/// <param name="Rule">The rule.</param>
public readonly record struct ControlSignal(int Index, int First, ControlRule Rule);
