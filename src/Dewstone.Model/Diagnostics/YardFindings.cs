namespace Dewstone.Model.Diagnostics;

/// <summary>Findings DW7050 to DW7069: an order gathered, carried out and set down at sea.</summary>
public static class YardFindings
{
    /// <summary>Something of the order is not there yet.</summary>
    public static FindingKind NotComplete { get; } = new(
        "DW7050", Severity.Error, "Order not complete",
        "Units or bins of the order have no result yet, or the plan is missing. Nothing was written.",
        "A list for the barge that leaves units out is worse than none.",
        "Run the missing tasks again, or dewstone order compile --continue, then gather again.",
        "dewstone order gather spring.order.yaml -o out");

    /// <summary>A result is not as it was written.</summary>
    public static FindingKind ResultChanged { get; } = new(
        "DW7051", Severity.Error, "Result is not as it was written",
        "A file of a bin's job is missing, or its hash differs from the one it was written with.",
        "A dose table changed by hand or by a fault of the disk is no longer what was simulated.",
        "Remove the named folder or file and run dewstone order compile --continue.");

    /// <summary>A result was made from another state of the order.</summary>
    public static FindingKind OtherOrder { get; } = new(
        "DW7052", Severity.Error, "Made from another state of the order",
        "A bin was made from other descriptions than the order names now, or by another release.",
        "Marks may mean other units, and bins other fillings.",
        "Compile the order as it stands now, or put the files back as they were.");

    /// <summary>A unit or bin failed.</summary>
    public static FindingKind HasFailed { get; } = new(
        "DW7053", Severity.Error, "Unit or bin failed",
        "A unit had an error in its last draw, or a bin's job was held back.",
        "The order cannot be delivered whole.",
        "Look at its record or report, mend the description or release the finding, and compile again.");

    /// <summary>No layout at sea or no transport.</summary>
    public static FindingKind NotPlannedAtSea { get; } = new(
        "DW7054", Severity.Note, "Nothing said about the sea",
        "The order has no site_plan, or no transport.",
        "Without a site plan there is no deployment list and no map; without transport there are no barge loads.",
        "Add the key if these lists are wanted.",
        "site_plan: {anchor: [41.5 N, 30.2 W], heading: 40 deg, spacing: 3 m, rows: 4}");

    /// <summary>Two units stand too near.</summary>
    public static FindingKind TooNear { get; } = new(
        "DW7055", Severity.Error, "Units stand nearer than the spacing",
        "The clear distance between two footprints, measured back from the positions as written, is less than site_plan.spacing.",
        "Units lowered too near strike one another, and currents between them scour the ground.",
        "Give the plan more room.",
        "site_plan: {spacing: 3 m}", "spacing stands in the permit; no published number is general");

    /// <summary>Too little water over units.</summary>
    public static FindingKind WaterBelow { get; } = new(
        "DW7056", Severity.Error, "A rule of the site is not kept",
        "At low water a unit leaves less water over it than the site's clearance, stands higher than its permit allows, or the site is shallower than its permit asks.",
        "Vessels may strike it, and the permit would not cover it.",
        "Set it deeper or make it lower.",
        "clearance: 1.83 m", "such rules stand in permits; Florida Administrative Code 62-330.600 asks 6 ft and at most half the depth");

    /// <summary>Units of one plan name different sites.</summary>
    public static FindingKind SitesDiffer { get; } = new(
        "DW7057", Severity.Warning, "One plan, several sites",
        "The units of the order name different sites, but the order has one layout at sea.",
        "Each was judged for the waves, depth and ground of its own site.",
        "Order them apart, or name one site in all.");

    /// <summary>No site named.</summary>
    public static FindingKind SiteUnknown { get; } = new(
        "DW7058", Severity.Note, "Water over the units not judged",
        "The order has a layout at sea, but none of its units names a site.",
        "Clearance, permit rules and stability need one.",
        "Name a site in the unit's file.",
        "site: ../sites/wrackline-shoal.site.yaml");

    /// <summary>Heavier than a trip.</summary>
    public static FindingKind TooHeavyToCarry { get; } = new(
        "DW7059", Severity.Error, "Unit heavier than the payload",
        "A unit's mass on the hook is more than transport.payload.",
        "No trip can carry it.",
        "Hire a larger barge, or make the unit lighter.",
        "transport: {payload: 1 t, deck: 4 places, stack: 1}");

    /// <summary>An anchor no plan can be drawn about.</summary>
    public static FindingKind AnchorUnsuited { get; } = new(
        "DW7060", Severity.Error, "Anchor unsuited for a plan",
        "The anchor lies near a pole, or the plan crosses the meridian of 180 degrees.",
        "East and north turn within the plan there, or its map would have to be cut in two (RFC 7946, section 3.1.9).",
        "Choose another anchor.",
        "site_plan: {anchor: [89 N, 0 E], spacing: 3 m, rows: 1}", "RFC 7946, section 3.1.9");

    /// <summary>More rows than units.</summary>
    public static FindingKind RowsUnused { get; } = new(
        "DW7061", Severity.Warning, "More rows than units",
        "The site plan asks for more rows than the order has units.",
        "Rows stay empty.",
        "Ask for fewer rows.",
        "site_plan: {rows: 40}");

    /// <summary>Units stand on each other on deck.</summary>
    public static FindingKind StackedOnDeck { get; } = new(
        "DW7062", Severity.Note, "Units stand on each other on deck",
        "Some trip carries more units than there are places on deck, so lighter ones stand on heavier ones.",
        "Whether a unit bears another is said on its sheet to dig out and lift; a deck that rolls asks more of it.",
        "Look at the sheets of those below, lash each level, or set transport.stack to 1.",
        "transport: {payload: 20 t, deck: 4 places, stack: 2}", "common practice, no source");

    /// <summary>The plan digs out before units may be lifted.</summary>
    public static FindingKind DugTooEarly { get; } = new(
        "DW7063", Severity.Warning, "Dug out before it may be lifted",
        "Some bin is planned to be dug out sooner after its last layer than the strength of its units, as compiled, allows them to be lifted.",
        "The plan is made before the units are: it knows one water/cement for all cells of a unit, and a wetter place hardens more slowly. A unit lifted too early cracks, or comes off its inserts.",
        "Leave the bin in its mix until the age on its sheet, or set bins.set_before_dig to the time named and plan again. Break cubes of the same bed first; a licensed engineer decides.",
        "bins: {count: 6, change: 15 min, curing_places: 6, handling: 3500 kg, set_before_dig: 36 h}", "common practice, no source");

    /// <summary>All of them, by code.</summary>
    public static IReadOnlyList<FindingKind> All { get; } =
    [
        NotComplete, ResultChanged, OtherOrder, HasFailed, NotPlannedAtSea, TooNear, WaterBelow, SitesDiffer, SiteUnknown, TooHeavyToCarry, AnchorUnsuited,
        RowsUnused, StackedOnDeck, DugTooEarly,
    ];
}
