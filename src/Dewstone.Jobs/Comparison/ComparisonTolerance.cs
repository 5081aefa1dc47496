namespace Dewstone.Jobs.Comparison;

/// <summary>Differences that do not count.</summary>
public sealed record ComparisonTolerance
{
    /// <summary>Volume added and removed together, litres, of the wanted or of the predicted solid.</summary>
    public double VolumeLitres { get; init; }

    /// <summary>Change of a dose, mL.</summary>
    public double DoseMillilitres { get; init; }

    /// <summary>Whether only results count, not what the description says.</summary>
    public bool ResultsOnly { get; init; }
}
