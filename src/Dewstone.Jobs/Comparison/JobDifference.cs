namespace Dewstone.Jobs.Comparison;

/// <summary>What differs between two jobs.</summary>
public sealed record JobDifference
{
    /// <summary>Before.</summary>
    public required ComparedJob Old { get; init; }

    /// <summary>Now.</summary>
    public required ComparedJob New { get; init; }

    /// <summary>Values of the description.</summary>
    public required IReadOnlyList<KeyChange> Description { get; init; }

    /// <summary>The wanted solid.</summary>
    public required SolidChange Target { get; init; }

    /// <summary>The predicted solid.</summary>
    public required SolidChange Predicted { get; init; }

    /// <summary>The doses; null when either job has none.</summary>
    public required DoseChanges? Doses { get; init; }

    /// <summary>Findings.</summary>
    public required IReadOnlyList<FindingChange> Findings { get; init; }

    /// <summary>Requirements.</summary>
    public required IReadOnlyList<RequirementChange> Requirements { get; init; }

    /// <summary>Materials, time, cost.</summary>
    public required IReadOnlyList<FigureChange> Figures { get; init; }

    /// <summary>Whether the unit stands elsewhere in the bin.</summary>
    public required bool Moved { get; init; }

    /// <summary>Whether anything differs beyond the tolerance.</summary>
    public required bool Differs { get; init; }

    /// <summary>Compares two jobs.</summary>
    /// <param name="old">Before.</param>
    /// <param name="now">Now.</param>
    /// <param name="tolerance">What does not count.</param>
    /// <returns>What differs.</returns>
    public static JobDifference Between(ComparedJob old, ComparedJob now, ComparisonTolerance tolerance)
    {
        ArgumentNullException.ThrowIfNull(old);
        ArgumentNullException.ThrowIfNull(now);
        ArgumentNullException.ThrowIfNull(tolerance);
        CommonCells cells = new(old, now);
        SolidChange target = SolidComparison.Compare(cells, old.Target, now.Target), predicted = SolidComparison.Compare(cells, old.Hardened, now.Hardened);
        IReadOnlyList<KeyChange> description = DescriptionComparison.Compare(old.Description, now.Description);
        DoseChanges? doses = DoseChanges.Compare(old, now, tolerance.DoseMillilitres);
        IReadOnlyList<FindingChange> findings = FindingChange.Compare(old.Findings, now.Findings);
        IReadOnlyList<RequirementChange> requirements = RequirementChange.Compare(old.Requirements, now.Requirements);
        IReadOnlyList<FigureChange> figures = FigureChange.Compare(old.Figures, now.Figures);
        bool moved = old.Placement != now.Placement;
        bool exact = tolerance.VolumeLitres <= 0.0 && tolerance.DoseMillilitres <= 0.0;
        return new JobDifference
        {
            Old = old,
            New = now,
            Description = description,
            Target = target,
            Predicted = predicted,
            Doses = doses,
            Findings = findings,
            Requirements = requirements,
            Figures = figures,
            Moved = moved,
            Differs = (!tolerance.ResultsOnly && description.Count > 0) || Volume(target) > tolerance.VolumeLitres || Volume(predicted) > tolerance.VolumeLitres ||
                doses is { Positions.Count: > 0 } || old.Held != now.Held || findings.Any(f => f.Kind is not "changed") ||
                requirements.Any(r => r.VerdictChanged) || (exact && (figures.Count > 0 || requirements.Count > 0 || moved)),
        };
    }

    private static double Volume(SolidChange change) => change.AddedLitres + change.RemovedLitres;
}
