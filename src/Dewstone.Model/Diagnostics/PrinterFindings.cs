namespace Dewstone.Model.Diagnostics;

/// <summary>Findings DW4xxx: the printer. Errors among them stop before wetting.</summary>
public static class PrinterFindings
{
    private const string Practice = "common practice, no source";

    /// <summary>Pitch, layer height or origin that is no whole number of micrometres.</summary>
    public static FindingKind GridTooFine { get; } = new(
        "DW4001", Severity.Error, "Grid finer than a micrometre",
        "Pitch, layer height and origin of the grid are held in whole micrometres; this value is not one.",
        "Dose tables give positions to a tenth of a millimetre. A grid that needs finer steps than a micrometre would drift over many layers without anyone seeing it.",
        "Give the length to a micrometre at most, e.g. 50.8 mm.",
        "grid: {pitch: 50.00005 mm, ...}");

    /// <summary>Unit that does not fit between the walls.</summary>
    public static FindingKind DoesNotFit { get; } = new(
        "DW4002", Severity.Error, "Unit does not fit the bin",
        "The outer box, turned and shifted as asked, reaches beyond the bed that the needle positions of the bin can water.",
        "What lies beyond the last needle position would stay loose, or lie in the bin's wall.",
        "Use a larger bin, a smaller unit, another turn, or a smaller place.shift.",
        "place: {shift: [300 mm, 0 mm, 0 mm]}");

    /// <summary>Unit higher than the bin can be filled.</summary>
    public static FindingKind TooHigh { get; } = new(
        "DW4003", Severity.Error, "Unit stands too high for the bin",
        "The loose layers below the unit and the whole layers it needs are more than the bin's height, or a downward shift puts it below the bin's floor.",
        "A layer above the rim cannot be spread; it would run over.",
        "Lower the unit, take fewer loose layers (grid.under), or use a higher bin.");

    /// <summary>Shifted layers on a head that cannot shift.</summary>
    public static FindingKind HeadCannotShift { get; } = new(
        "DW4004", Severity.Error, "Shifted layers the head cannot make",
        "The unit asks for layers: shifted, but the printer's head has no layer_shift.",
        "Every other layer would be watered half a pitch off.",
        "Ask for layers: straight, or give the printer's head layer_shift: half pitch if it can index half a step.",
        "place: {layers: shifted}");

    /// <summary>Bin without any needle position.</summary>
    public static FindingKind NoPositions { get; } = new(
        "DW4005", Severity.Error, "No needle position in the bin",
        "Not one position of the grid keeps half a pitch from the bin's walls.",
        "There is nowhere to put water.",
        "Check grid.origin, grid.pitch and bin.size.");

    /// <summary>Head that works from several stations.</summary>
    public static FindingKind SeveralStations { get; } = new(
        "DW4006", Severity.Note, "Head works from several stations",
        "The head has fewer needles than the bin has positions, so it is moved within each layer.",
        "Each station adds a move, a plunge, a hold and a withdrawal to every layer, and neighbouring water arrives at different times.",
        "Nothing to do; the timeline and the wetting follow the stations.");

    /// <summary>Positions left out near a bin wall.</summary>
    public static FindingKind PositionsLeftOut { get; } = new(
        "DW4007", Severity.Note, "Positions near a bin wall left out",
        "Some positions are nearer than half a pitch to a bin wall and get no water.",
        "Their water would run along the wall.",
        "Nothing to do while the unit keeps clear of the wall; otherwise move the unit or the grid's origin.");

    /// <summary>Blocked needles over the unit.</summary>
    public static FindingKind BlockedNeedles { get; } = new(
        "DW4008", Severity.Warning, "Blocked needles over the unit",
        "The needle table calls these needles blocked: no water comes from them, and the needles around them give more in their place as far as that helps.",
        "A blocked needle leaves a dry channel through every layer, which may cut a wall in two.",
        "Clear the needle and calibrate it again, or turn or shift the unit so that it does not matter.",
        "column,row,...,state,... / 5,7,...,blocked,...", Practice);

    /// <summary>Limited needles over the unit.</summary>
    public static FindingKind LimitedNeedles { get; } = new(
        "DW4009", Severity.Note, "Limited needles over the unit",
        "The needle table calls these needles limited; they are used as calibrated.",
        "Their gain and offset are less certain than those of sound needles.",
        "Calibrate them before a unit that matters.");

    /// <summary>Station that draws more than the supply gives.</summary>
    public static FindingKind FlowAboveSupply { get; } = new(
        "DW4010", Severity.Error, "Pumps draw more than the supply gives",
        "All needles of a station start together; the sum of their flows is above supply.flow.",
        "Every needle would get less than it measures, and nobody would know which.",
        "Lower needle.flow, fit a stronger supply, or use a head that reaches fewer positions at once.");

    /// <summary>Tank smaller than the job's liquid.</summary>
    public static FindingKind TankTooSmall { get; } = new(
        "DW4011", Severity.Warning, "Tank smaller than the job's liquid",
        "Doses and flushing together are more than supply.tank holds.",
        "A pump that draws air doses short; a refill in the middle of a layer makes a cold joint.",
        "Top up during a spreading, or fit a larger tank.", "", Practice);

    /// <summary>Needle tip outside its layer.</summary>
    public static FindingKind TipOutsideLayer { get; } = new(
        "DW4012", Severity.Error, "Needle tip outside its layer",
        "needle.tip_depth is not between nothing and the layer height.",
        "The dose belongs to the voxel the tip stands in; a deeper tip would water the layer below, which may have set.",
        "Give a tip depth within the layer, usually half of it.",
        "needle: {tip_depth: 60 mm, ...} with layer: 50 mm");

    /// <summary>Bed without pores.</summary>
    public static FindingKind NoPores { get; } = new(
        "DW4013", Severity.Error, "Bed without pore space",
        "At this loose density the grains alone fill the bed: porosity = 1 - loose density x sum of (share / grain density) is not positive.",
        "There is no room for water, so one of the densities is wrong.",
        "Weigh a known volume of the spread bed again, and check the grain densities of the mix.",
        "loose_density: 3000 kg/m3");

    /// <summary>Grid of cells too large to compute.</summary>
    public static FindingKind TooManyCells { get; } = new(
        "DW4014", Severity.Error, "Too many cells",
        "The window over the unit has more fine cells than can be computed on one machine.",
        "Memory would run out after a long wait.",
        "Use fewer cells a voxel (--cells), or a coarser grid.");

    /// <summary>Odd number of cells with shifted layers.</summary>
    public static FindingKind OddCells { get; } = new(
        "DW4015", Severity.Error, "Odd number of cells with shifted layers",
        "A layer shifted by half a pitch needs an even number of cells a voxel side, so that its voxels fall on whole cells.",
        "Half a cell cannot be watered.",
        "Give an even number to --cells.");

    /// <summary>Head larger than the raster of the bin.</summary>
    public static FindingKind HeadOverhangs { get; } = new(
        "DW4016", Severity.Warning, "Head wider than the bin's positions",
        "The head has more columns or rows than the bin has positions, so its outer needles would stand in or over the wall.",
        "Needles that touch the rim bend.",
        "Check head.columns, head.rows and bin.size.", "", Practice);

    /// <summary>Needle table that names needles the head does not have.</summary>
    public static FindingKind NeedleOffHead { get; } = new(
        "DW4017", Severity.Error, "Needle not on the head",
        "The needle table names a column or row that the printer's head does not have.",
        "The table probably belongs to another head, and then every gain in it is wrong.",
        "Name the needles file of this printer, or correct head.columns and head.rows.");

    /// <summary>Unit moved or turned clear of blocked needles.</summary>
    public static FindingKind MovedClear { get; } = new(
        "DW4018", Severity.Note, "Moved or turned to avoid blocked needles",
        "The unit's file leaves its turn or its place in the bin free, and elsewhere less of it lies under needles that the table calls blocked or limited; it is printed there.",
        "A blocked needle leaves a dry channel through every layer. Neighbours make some of it good, in thin walls the least; keeping clear of it costs nothing.",
        "Nothing to do. To print it in the middle, clear the needles, or fix place.turn and place.shift in the unit's file.");

    /// <summary>All of them, by code.</summary>
    public static IReadOnlyList<FindingKind> All { get; } =
    [
        GridTooFine, DoesNotFit, TooHigh, HeadCannotShift, NoPositions, SeveralStations, PositionsLeftOut, BlockedNeedles, LimitedNeedles,
        FlowAboveSupply, TankTooSmall, TipOutsideLayer, NoPores, TooManyCells, OddCells, HeadOverhangs, NeedleOffHead,
        MovedClear,
    ];
}
