namespace Dewstone.Model.Results;

/// <summary>A unit on its straps or inserts.</summary>
public sealed record HangReport
{
    /// <summary>Angle of the legs from the horizontal, degrees.</summary>
    public required double SlingDegrees { get; init; }

    /// <summary>Factor for hoisting, 1.</summary>
    public required double DynamicFactor { get; init; }

    /// <summary>Legs there are: two a strap, one an insert.</summary>
    public required int Legs { get; init; }

    /// <summary>Legs counted on.</summary>
    public required int CarryingLegs { get; init; }

    /// <summary>Tension in a leg, N.</summary>
    public required double LegNewtons { get; init; }

    /// <summary>Least capacity of an insert, N: 4 times the tension; null with straps.</summary>
    public double? InsertNewtons { get; init; }

    /// <summary>Least breaking load of a leg and its hardware, N: 5 times the tension.</summary>
    public required double HardwareNewtons { get; init; }

    /// <summary>Tilt of the hang, degrees: the centre of gravity swings under the hook.</summary>
    public required double TiltDegrees { get; init; }

    /// <summary>The places it hangs by, in the order of the file.</summary>
    public required IReadOnlyList<HangPlace> Places { get; init; }
}
