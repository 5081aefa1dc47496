namespace Dewstone.Orders.Packing;

/// <summary>How often each offer is taken.</summary>
/// <param name="Times">By offer.</param>
/// <param name="Bound">Least possible value of the goal: bins, or minutes of the busiest printer.</param>
/// <param name="Proved">Whether the choice is proved to reach it.</param>
public sealed record BinChoice(IReadOnlyList<int> Times, long Bound, bool Proved)
{
    /// <summary>Bins in all.</summary>
    public int Bins => Times.Sum();
}
