using Dewstone.Jobs.Emission;
using Dewstone.Model.Description;
using Dewstone.Model.Diagnostics;
using Dewstone.Model.Lattices;
using Dewstone.Model.Results;

namespace Dewstone.Jobs.Bins;

/// <summary>A reef unit solved once, alone and for an ideal head: what is kept of it to stand it in any bin later. Plain data, fit to be stored.</summary>
public sealed record SolvedUnit
{
    /// <summary>The unit as described, with the seeds it was drawn with.</summary>
    public required ReefUnit Unit { get; init; }

    /// <summary>Where it stood while it was solved, printer frame.</summary>
    public required UnitPlacement Placement { get; init; }

    /// <summary>Needle positions it was solved on: the window around it.</summary>
    public required Lattice Lattice { get; init; }

    /// <summary>Cells it was solved on.</summary>
    public required CellGrid Cells { get; init; }

    /// <summary>Doses, hundredths of a millilitre; index order of <see cref="Lattice"/>.</summary>
    public required int[] CentiMillilitres { get; init; }

    /// <summary>What hardened; index order of <see cref="Cells"/>.</summary>
    public required CellBits Hardened { get; init; }

    /// <summary>Whether it was solved with a further layer over its top, because something in its bin stands higher.</summary>
    public required bool Covered { get; init; }

    /// <summary>Figures of the solid.</summary>
    public required SolidSummary Solid { get; init; }

    /// <summary>Masses, materials and water of the unit; the mix spread and the times are those of a bin of its own.</summary>
    public required Estimate Estimate { get; init; }

    /// <summary>Days before which loose mix is not cleared away; null when strength cannot be told or never suffices.</summary>
    public required double? DigOutDays { get; init; }

    /// <summary>Days before which it is not lifted; null likewise.</summary>
    public required double? LiftDays { get; init; }

    /// <summary>Mean strength at 28 equivalent days, Pa; null when it cannot be told.</summary>
    public required double? MeanPascals { get; init; }

    /// <summary>Requirements and how they came out; their places are those of the run that solved it.</summary>
    public required IReadOnlyList<RequirementResult> Requirements { get; init; }

    /// <summary>All findings; their places are those of the run that solved it.</summary>
    public required IReadOnlyList<Diagnostic> Findings { get; init; }

    /// <summary>Fingerprint of the design.</summary>
    public required Fingerprint Design { get; init; }

    /// <summary>Whether an unreleased error about the predicted solid forbids printing it.</summary>
    public bool Held => Findings.Any(f => f.Severity == Severity.Error && f.AcceptedBecause is null);
}
