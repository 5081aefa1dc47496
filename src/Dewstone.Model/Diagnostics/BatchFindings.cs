namespace Dewstone.Model.Diagnostics;

/// <summary>Findings DW703x and DW704x: compiling an order.</summary>
public static class BatchFindings
{
    /// <summary>Folder of another order.</summary>
    public static FindingKind OtherOrder { get; } = new(
        "DW7030", Severity.Error, "Folder begun with another order",
        "The folder was begun with an order file of other content, or its order.json cannot be read. The order's hash is pinned when the folder is begun, and every task holds it.",
        "Half of the bins would be made to one order and half to another.",
        "Compile into another folder, or put the order file back as it was. To begin anew, remove the folder.");

    /// <summary>A file of the order changed.</summary>
    public static FindingKind OtherInputs { get; } = new(
        "DW7031", Severity.Error, "Files of the order changed since its folder was begun",
        "A unit, mix, printer, needles or site file that the order is made from has other content than when the folder was begun.",
        "Units of one line would be made to two designs, and the plan may no longer hold.",
        "Compile into another folder, or put the file back as it was. To begin anew, remove the folder.");

    /// <summary>Other cells.</summary>
    public static FindingKind OtherCells { get; } = new(
        "DW7032", Severity.Error, "Folder begun with other cells",
        "The folder was begun with another number of cells a voxel side than asked for now.",
        "Doses found on different cells differ a little; one order is made on one grid.",
        "Ask for the same --cells, or compile into another folder.");

    /// <summary>A unit that failed.</summary>
    public static FindingKind UnitFailed { get; } = new(
        "DW7033", Severity.Error, "Unit that cannot be made",
        "Every draw of this unit that the order allows has an error, in its shape or in what will set.",
        "It is left out of its bin, which is made without it; the order is not complete.",
        "Look at the errors in its record in units/, and mend the unit's file, allow more draws with `redraw`, or release nothing and order one less.",
        "units:\n  - {file: units/wrack-block.unit.yaml, quantity: 80, vary: {seed: 1, redraw: 5}, mark: WB}");

    /// <summary>A unit drawn again.</summary>
    public static FindingKind Redrawn { get; } = new(
        "DW7034", Severity.Note, "Unit drawn again",
        "The first draw of this unit had an error, so the next was taken. Both stand in the unit's record.",
        "Its niches and relief are not those of its first seed.",
        "Nothing to do. When many units are drawn again, the line's shape leaves its draws too little room.");

    /// <summary>A bin without some of its units.</summary>
    public static FindingKind BinIncomplete { get; } = new(
        "DW7035", Severity.Warning, "Bin made without some of its units",
        "A unit planned for this bin cannot be made. The others stand where they were planned; with none left, no job is written.",
        "Bin, mix and machine time are spent on fewer units than planned.",
        "Mend the unit that failed before this bin is printed, or print it as it is.");

    /// <summary>A plan that does not fit.</summary>
    public static FindingKind PlanDoesNotFit { get; } = new(
        "DW7036", Severity.Error, "Plan does not fit the order",
        "The plan does not name each unit of the order just once, or names a printer or a standing that the order does not give.",
        "A unit would be missing or made twice.",
        "Remove plan.json and plan the order again.");

    /// <summary>A fault of ours in one bin.</summary>
    public static FindingKind BinFault { get; } = new(
        "DW7037", Severity.Error, "Bin stopped by a fault of the program",
        "While this bin was made something happened that the program does not provide for. The other bins were made.",
        "The bin was not written.",
        "Report it with the order's files.");

    /// <summary>A bin that ran out of memory.</summary>
    public static FindingKind BinOutOfMemory { get; } = new(
        "DW7038", Severity.Error, "Bin stopped for want of memory",
        "This bin needs more memory than there was.",
        "The bin was not written; another try may go well.",
        "Run again with --continue and fewer --threads, or on a larger machine.");

    /// <summary>A damaged entry of the store.</summary>
    public static FindingKind EntryDamaged { get; } = new(
        "DW7039", Severity.Note, "Damaged entry of the store replaced",
        "A solved unit in the store was cut short or changed: its hash differs. It was solved anew.",
        "A disk or a network store that changes files may change dose tables too.",
        "Check the disk when this is said more than once.");

    /// <summary>All of them, by code.</summary>
    public static IReadOnlyList<FindingKind> All { get; } =
    [
        OtherOrder, OtherInputs, OtherCells, UnitFailed, Redrawn, BinIncomplete, PlanDoesNotFit, BinFault, BinOutOfMemory, EntryDamaged,
    ];
}
