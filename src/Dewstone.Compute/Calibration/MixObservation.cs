namespace Dewstone.Compute.Calibration;

/// <summary>One measured figure with what the fit makes of it.</summary>
public sealed record MixObservation
{
    /// <summary>What was measured.</summary>
    public required MeasuredKind Kind { get; init; }

    /// <summary>File as shown in findings.</summary>
    public required string File { get; init; }

    /// <summary>Line in the file, from 1.</summary>
    public required int Line { get; init; }

    /// <summary>Dose in mL, spacing in mm for pairs; 0 where neither means anything. Equal ones with one dose are repeats.</summary>
    public required double At { get; init; }

    /// <summary>What was measured, in the unit of its kind.</summary>
    public required double Measured { get; init; }

    /// <summary>What the fitted mix gives, in the unit of its kind.</summary>
    public double Fitted { get; init; }

    /// <summary>Measured over fitted, less 1.</summary>
    public double Residual => Measured / Fitted - 1.0;

    /// <summary>The same, against the fit without this measurement (first order).</summary>
    public double LeftOutResidual { get; init; }

    /// <summary>How repeats are told: what was tried.</summary>
    internal string Trial { get; init; } = "";

    /// <summary>Computes it from figures, in the unit of its kind.</summary>
    internal Func<MixForward, MixFigures, double> Model { get; init; } = (_, _) => double.NaN;
}
