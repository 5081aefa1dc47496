using Dewstone.Model.Quantities;

namespace Dewstone.Model.Results;

/// <summary>One line of the machine's sequence.</summary>
public sealed record MachineStep
{
    /// <summary>Number, from 1.</summary>
    public required int Number { get; init; }

    /// <summary>Layer, from 1.</summary>
    public required int Layer { get; init; }

    /// <summary>Station, from 1; 0 when it has none (spread, flush).</summary>
    public required int Station { get; init; }

    /// <summary>What is done.</summary>
    public required MachineAction Action { get; init; }

    /// <summary>Tip of the head's needle at column 1, row 1, metres, printer frame; null when the head is parked.</summary>
    public Point3? HeadTip { get; init; }

    /// <summary>Begin, milliseconds from the first spreading.</summary>
    public required long StartMilliseconds { get; init; }

    /// <summary>How long it lasts, whole milliseconds, so that sums are exact.</summary>
    public required long Milliseconds { get; init; }

    /// <summary>Water that flows, hundredths of a millilitre; 0 for none.</summary>
    public long CentiMillilitres { get; init; }

    /// <summary>Dry mix spread, kilograms; 0 for none.</summary>
    public double MixKilograms { get; init; }
}
