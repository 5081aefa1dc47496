namespace Dewstone.Model.Results;

/// <summary>Between which doses a full voxel sets well, against what needles can hold. Volumes in mL a voxel.</summary>
public sealed record DoseWindow
{
    /// <summary>Least dose that leaves no dry pocket between needles in straight layers, mL.</summary>
    public required double ClosingMillilitres { get; init; }

    /// <summary>Greatest dose, mL.</summary>
    public required double GreatestMillilitres { get; init; }

    /// <summary>What sets the greatest dose.</summary>
    public required DoseCeiling Ceiling { get; init; }

    /// <summary>Greatest water/cement allowed, 1.</summary>
    public required double WaterCementLimit { get; init; }

    /// <summary>Water/cement that one mL a voxel gives when it stays there, 1/mL.</summary>
    public required double WaterCementPerMillilitre { get; init; }

    /// <summary>Repeatability of the printer's needles, one standard deviation as a share of the dose, 1.</summary>
    public required double Repeatability { get; init; }

    /// <summary>Drift between checks, share of the dose, 1.</summary>
    public required double Drift { get; init; }

    /// <summary>Repeatability of the worst needle in use, 1; the printer's where the needle table gives none.</summary>
    public required double WorstRepeatability { get; init; }

    /// <summary>Needles in use.</summary>
    public required int Needles { get; init; }

    /// <summary>Needles in use whose two standard deviations are more than half the window.</summary>
    public required int NeedlesTooLoose { get; init; }

    /// <summary>Middle of the window, mL.</summary>
    public double MiddleMillilitres => (ClosingMillilitres + GreatestMillilitres) / 2.0;

    /// <summary>Half its width, mL; negative when there is none.</summary>
    public double HalfMillilitres => (GreatestMillilitres - ClosingMillilitres) / 2.0;

    /// <summary>Whether anything is known of how well needles hold a dose.</summary>
    public bool SpreadIsKnown => WorstRepeatability > 0.0 || Drift > 0.0;

    /// <summary>Whether two standard deviations of every needle in use stay within the window.</summary>
    public bool IsWideEnough => HalfMillilitres > 0.0 && NeedlesTooLoose == 0;

    /// <summary>Two standard deviations of a dose in the window's middle: repeatability and drift are independent, so their squares add.</summary>
    /// <param name="repeatability">Of the needle, 1.</param>
    /// <returns>2 x sqrt(repeatability^2 + drift^2) x middle, mL.</returns>
    public double TwoDeviationsMillilitres(double repeatability) => 2.0 * Math.Sqrt(repeatability * repeatability + Drift * Drift) * MiddleMillilitres;
}
