namespace Dewstone.Orders.Batches;

/// <summary>How far a bin or a unit of an order is.</summary>
public enum WorkState
{
    /// <summary>Made, whole, and of the order as it is now.</summary>
    Done,

    /// <summary>Not made, or no longer whole.</summary>
    Missing,

    /// <summary>Made from another state of the order or by another release.</summary>
    Stale,

    /// <summary>Made and found wanting: a unit that no draw of passed, a bin that is held or lacks units.</summary>
    Failed,
}
