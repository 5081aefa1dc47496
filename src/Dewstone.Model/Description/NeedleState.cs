using Dewstone.Model.Quantities;

namespace Dewstone.Model.Description;

/// <summary>One needle of the head as calibrated: delivered = gain x asked + offset.</summary>
public sealed record NeedleState
{
    /// <summary>Column in the head, from 1.</summary>
    public required int Column { get; init; }

    /// <summary>Row in the head, from 1.</summary>
    public required int Row { get; init; }

    /// <summary>Pump board, as printed on it; empty when not given.</summary>
    public string Board { get; init; } = "";

    /// <summary>Channel of the board; empty when not given.</summary>
    public string Channel { get; init; } = "";

    /// <summary>Whether it can be used.</summary>
    public NeedleCondition Condition { get; init; }

    /// <summary>Gain, 1.</summary>
    public double Gain { get; init; } = 1.0;

    /// <summary>Offset, millilitres.</summary>
    public double OffsetMillilitres { get; init; }

    /// <summary>Flow; null for the printer's.</summary>
    public FlowRate? Flow { get; init; }

    /// <summary>Repeatability, one standard deviation as a share; null for the printer's.</summary>
    public double? Repeatability { get; init; }
}
