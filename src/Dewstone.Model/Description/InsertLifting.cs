using Dewstone.Model.Quantities;

namespace Dewstone.Model.Description;

/// <summary>Lifted by inserts; allowed only with a tested capacity.</summary>
public sealed record InsertLifting : Lifting
{
    /// <summary>Insert positions, metres, unit frame.</summary>
    public required IReadOnlyList<Point3> Points { get; init; }

    /// <summary>Embedment depth.</summary>
    public required Length Embedment { get; init; }

    /// <summary>Capacity of one insert found by test in this bed; null when not given, which is an error.</summary>
    public Force? TestedCapacity { get; init; }

    /// <summary>Which test; empty when not given.</summary>
    public string Test { get; init; } = "";
}
