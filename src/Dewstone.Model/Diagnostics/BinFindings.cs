namespace Dewstone.Model.Diagnostics;

/// <summary>Findings DW702x: several units in one bin.</summary>
public static class BinFindings
{
    /// <summary>Two units closer than the gap.</summary>
    public static FindingKind TooNear { get; } = new(
        "DW7020", Severity.Error, "Units too near",
        "The outer boxes of two units of a bin come nearer to each other than the order's gap.",
        "Water of the one may reach the other: they would grow together, or set thicker than they were designed.",
        "Plan the bin anew, move one of the two by whole pitches, or state a smaller `gap` in the order if that has been tried.");

    /// <summary>A unit that the needles do not reach in full.</summary>
    public static FindingKind BeyondNeedles { get; } = new(
        "DW7021", Severity.Error, "Unit beyond the needles",
        "Where a unit is to stand in the bin, some of its doses lie where the printer has no needle position: beyond the ends of the grid, or, in a shifted layer, nearer than half a pitch to a wall.",
        "Those doses could not be given, and the unit would lack that part of itself.",
        "Plan the bin anew, or move the unit inwards; with shifted layers it keeps one pitch from the ends of the grid.");

    /// <summary>A unit that was solved for something else than its bin.</summary>
    public static FindingKind OtherBin { get; } = new(
        "DW7022", Severity.Error, "Unit solved for another bin",
        "A unit was solved for another grid, other layers or other cells than those of the bin it is to stand in, or for straight layers while its bin is shifted.",
        "Its doses belong to needles that stand elsewhere; in this bin they would print something else.",
        "Plan the order anew for these printers, and let the units be solved again.");

    /// <summary>A unit that does not come out of its bin as it was designed.</summary>
    public static FindingKind UnitDiffers { get; } = new(
        "DW7023", Severity.Error, "Unit not as designed",
        "Simulated in its bin, a unit overlaps with itself as solved alone by less than 99.5 %, or its volume is off by more than 0.5 %.",
        "What was checked of the unit (mass, walls, openings, strength) was checked of the unit alone and does not hold for what this bin would give.",
        "Turn or move the unit so that no blocked needle stands over it, put it in a bin of another printer, or release the finding with a reason.");

    /// <summary>Doses that were found anew because of the bin's own needles or times.</summary>
    public static FindingKind Redosed { get; } = new(
        "DW7024", Severity.Note, "Doses of a unit found anew in its bin",
        "With the doses it was solved with a unit would not have come out of this bin as designed: needles over it are blocked, or the stations water it at other times. Its doses were corrected against the wetting of the whole bin.",
        "The dose tables of this unit differ from those of its like in other bins.",
        "Nothing to do.");

    /// <summary>A command that takes jobs of one unit.</summary>
    public static FindingKind NotForBins { get; } = new(
        "DW7025", Severity.Error, "Not for bin jobs",
        "The command looks at one unit, and the job named is of a bin with several.",
        "What it would say of the bin as a whole would hold for none of its units.",
        "Name the job of a single unit.");

    /// <summary>A unit that is held back.</summary>
    public static FindingKind HeldUnit { get; } = new(
        "DW7026", Severity.Error, "Unit held back",
        "A unit of the bin was solved, but an error about its predicted solid holds it back.",
        "It would be printed with the others although it is not what was asked for.",
        "Mend what its findings say, draw other seeds, leave it out of the bin, or release the finding with a reason.");

    /// <summary>All of them, by code.</summary>
    public static IReadOnlyList<FindingKind> All { get; } = [TooNear, BeyondNeedles, OtherBin, UnitDiffers, Redosed, NotForBins, HeldUnit];
}
