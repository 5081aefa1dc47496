namespace Dewstone.Model.Diagnostics;

/// <summary>Findings DW700x and DW701x: planning an order.</summary>
public static class OrderFindings
{
    /// <summary>A unit fits no bin.</summary>
    public static FindingKind NoBin { get; } = new(
        "DW7001", Severity.Error, "No bin for a unit",
        "On none of the order's printers can this unit be made: it does not fit between the bin's walls or under its height, or a full bin of it is heavier than may be handled.",
        "The order cannot be completed, so no plan is made.",
        "Add a printer with a larger bin, raise the handling mass, or draw the unit smaller. The message says what was in the way on each printer.",
        "bins: {count: 20, change: 10 min, curing_places: 18, handling: 900 kg, set_before_dig: 36 h}");

    /// <summary>Print longer than a shift.</summary>
    public static FindingKind ShiftTooShort { get; } = new(
        "DW7002", Severity.Error, "Shift shorter than a print",
        "Setting up, printing and changing one bin take longer than the longest shift. A print is attended from its setting up to the change of the bin, and lies in one shift as a whole.",
        "A print that stops at the end of a shift has a cold joint where it stopped.",
        "Lengthen the shift, or plan around the clock; fewer layers or a larger head shorten the print.",
        "shifts: {days: [mon], from: \"08:00\", to: \"08:30\"}");

    /// <summary>Never strong enough to dig out.</summary>
    public static FindingKind NeverDug { get; } = new(
        "DW7003", Severity.Error, "Unit never strong enough to lift out",
        "By the mix's strength rule, at the water/cement of its first dosing, this unit never reaches the strength at which units are lifted.",
        "It would break on the hook. The bin would never come free.",
        "Raise the binder share or the loose density of the mix, or give measured cubes.",
        "", "EN 1992-1-1:2004 equation (3.2) for the age, 10 MPa for lifting (from memory)");

    /// <summary>Mix runs short.</summary>
    public static FindingKind MixShort { get; } = new(
        "DW7004", Severity.Error, "Too little mix",
        "The mix on hand, delivered and won back from dug-out bins does not last for the whole order: what hardens and what is lost in the bins is more than there is, or no bin can be filled any more.",
        "Printing stops in the middle of the order with bins and crew idle.",
        "Order the missing mass, or deliver earlier or in smaller loads where the silo was full. The message names the mass.",
        "mix_stock: {on_hand: 5 t, silo: 40 t}");

    /// <summary>Not done by the due date.</summary>
    public static FindingKind Late { get; } = new(
        "DW7005", Severity.Error, "Not done by the due date",
        "In the best plan found some units are dug out after the order's due date. The message says how many, and whether it is proved that fewer cannot be late.",
        "What is late misses the boat. The plan is written all the same, to see where the time goes.",
        "Relax one of the constraints that are named beside it, or agree on a later date.",
        "start: 2027-03-01\ndue: 2027-03-05");

    /// <summary>A constraint that binds.</summary>
    public static FindingKind Binds { get; } = new(
        "DW7006", Severity.Error, "Constraint that stands in the way",
        "With this one constraint of the order left out and all others kept, everything is done by the due date; with it, not.",
        "It is the cheapest place to look: without relaxing one of those named, nothing else that is tried alone helps.",
        "Relax it as far as it takes: more bins, places, hours, shifts or mix. How far is not told; plan again to see.",
        "bins: {count: 2, change: 10 min, curing_places: 2, handling: 3500 kg, set_before_dig: 36 h}");

    /// <summary>No single constraint binds.</summary>
    public static FindingKind BindTogether { get; } = new(
        "DW7007", Severity.Error, "Several constraints stand in the way",
        "No constraint that is left out alone lets everything be done by the due date; the message says what does.",
        "Relaxing one of them only shows the next.",
        "Relax all that are named, or agree on a later date.");

    /// <summary>A delivery that the silo cannot take.</summary>
    public static FindingKind DeliveryTooLarge { get; } = new(
        "DW7008", Severity.Warning, "Delivery that does not fit in the silo",
        "On the day of this delivery the silo, by the plan, has less room than the delivery brings. The plan reckons only with what fits; the rest is turned away.",
        "Mix that is turned away is paid for and missing later.",
        "Deliver later or in smaller loads, or print more before that day.",
        "mix_stock: {on_hand: 40 t, silo: 40 t, deliveries: [{on: 2027-03-02, mass: 25 t}]}");

    /// <summary>One stock of mix for several mixes.</summary>
    public static FindingKind OneStock { get; } = new(
        "DW7009", Severity.Warning, "One stock for several mixes",
        "The units of the order are made of different mixes, but the order tells of one silo and its deliveries. The plan takes all mixes as one mass.",
        "One mix may run out while the plan still counts on the other.",
        "Name one mix for the whole order with `mix:`, or split the order by mix.");

    /// <summary>Plan that cannot be read.</summary>
    public static FindingKind PlanUnreadable { get; } = new(
        "DW7010", Severity.Error, "Plan cannot be read",
        "The file plan.json is missing, cut short, of a later version, or was changed by hand so that it no longer says what a plan must say.",
        "Bins would be filled by guess.",
        "Plan the order again with `dewstone order plan`.");

    /// <summary>Plan of another order.</summary>
    public static FindingKind PlanOfOtherOrder { get; } = new(
        "DW7011", Severity.Error, "Plan of another order",
        "The plan was made from an order file with other content than this one's: its hash differs.",
        "Units may have been added, taken away or changed since.",
        "Plan the order again with `dewstone order plan`.");

    /// <summary>Plan not proved best.</summary>
    public static FindingKind NotProved { get; } = new(
        "DW7012", Severity.Note, "Plan not proved to be the best",
        "The search was stopped at its limit of work with a plan that holds every constraint. The message says between which bounds the best plan lies.",
        "A plan that is done earlier may exist.",
        "Nothing to do unless every day counts; a smaller order is searched through.");

    /// <summary>Too long to dig out in a day.</summary>
    public static FindingKind CrewTooShort { get; } = new(
        "DW7013", Severity.Error, "Digging out one unit takes longer than the crew's day",
        "The crew's time for one unit is longer than its working day. A bin is dug out in one day, so that no unit stands half free overnight.",
        "No bin would ever come free.",
        "Correct `dig_out` or `hours` of the crew.",
        "crew: {hours: 30 min, dig_out: 45 min}");

    /// <summary>All of them, by code.</summary>
    public static IReadOnlyList<FindingKind> All { get; } =
    [
        NoBin, ShiftTooShort, NeverDug, MixShort, Late, Binds, BindTogether, DeliveryTooLarge, OneStock, PlanUnreadable, PlanOfOtherOrder, NotProved, CrewTooShort,
    ];
}
