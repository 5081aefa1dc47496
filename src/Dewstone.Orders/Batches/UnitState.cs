namespace Dewstone.Orders.Batches;

/// <summary>What became of a unit.</summary>
public enum UnitState
{
    /// <summary>A draw passed all checks: it is printed with its bin.</summary>
    Solved,

    /// <summary>No draw passed: its bin is made without it.</summary>
    Failed,
}
