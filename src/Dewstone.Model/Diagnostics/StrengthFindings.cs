namespace Dewstone.Model.Diagnostics;

/// <summary>Findings DW5xxx: strength and lifting. Errors among them hold the job back from printing.</summary>
public static class StrengthFindings
{
    /// <summary>Heavier than the unit may be.</summary>
    public static FindingKind MassAbove { get; } = new(
        "DW5001", Severity.Error, "Heavier than required",
        "The predicted mass on the hook at dig-out is above require.mass.max.",
        "Slings, crane and deck are chosen from that mass.",
        "Open the unit further, make it smaller, or raise mass.max if everything that lifts it can bear it.",
        "require: {mass: {max: 500 kg}}");

    /// <summary>Heavier than the yard can lift.</summary>
    public static FindingKind LiftAbove { get; } = new(
        "DW5002", Severity.Error, "Heavier than the yard can lift",
        "The predicted mass on the hook at dig-out is above lift.max_mass of the printer's file.",
        "It could not be taken out of the bin.",
        "Open the unit further, make it smaller, or print it where a stronger lift stands.",
        "lift: {max_mass: 500 kg}");

    /// <summary>A rule without air for a loose bed.</summary>
    public static FindingKind AirLeftOut { get; } = new(
        "DW5003", Severity.Error, "Strength rule without air",
        "The mix names a strength rule for compacted concrete (gel/space ratio without air, or a handbook curve of water/cement), but does not say that the bed is compacted.",
        "A bed that is spread and not compacted keeps air between its grains, about a sixth of its volume when it sets. Without it these rules promise several times the strength there will be.",
        "Write `law: gel_space_with_air` or `law: feret`, give measured cubes, or, of a bed that really is compacted, add `compacted: true`.",
        "strength: {law: gel_space}",
        "Powers 1958, Journal of the American Ceramic Society 41 (from memory)");

    /// <summary>Inserts that were not tested to enough.</summary>
    public static FindingKind InsertTooWeak { get; } = new(
        "DW5004", Severity.Error, "Inserts bear too little",
        "The tested capacity of an insert is below four times the tension in its leg.",
        "An insert that is torn out drops the unit.",
        "Use more inserts or steeper legs, test a stronger insert in this bed, or lift by straps.",
        "lifting: {by: inserts, points: [[200 mm, 450 mm, 900 mm], [700 mm, 450 mm, 900 mm]], embedment: 150 mm, tested_capacity: 2 kN, test: \"report 14\"}",
        "29 CFR 1926.704 (b) and (c)");

    /// <summary>Sling legs that lie too flat.</summary>
    public static FindingKind SlingTooFlat { get; } = new(
        "DW5005", Severity.Error, "Sling legs too flat",
        "The legs of the sling make less than 30 degrees with the horizontal.",
        "The tension in a leg grows as one over the sine of that angle: at 30 degrees it is twice the leg's share of the weight, below it grows without bound.",
        "Use longer legs or a spreader beam.",
        "lifting: {by: straps, lines: [{along: y, x: 200 mm}, {along: y, x: 700 mm}], sling_angle: 20 deg}",
        "ASME B30.9 (from memory)");

    /// <summary>A hang that cannot be in balance.</summary>
    public static FindingKind HangUnbalanced { get; } = new(
        "DW5006", Severity.Error, "Unit turns out of its straps",
        "The centre of gravity lies beyond what the straps or inserts bear on: one of them would have to push down, or nothing hardened lies on them.",
        "A strap cannot push. The unit turns until it falls.",
        "Set the straps on both sides of the centre of gravity that is told, over hardened mix.",
        "lifting: {by: straps, lines: [{along: y, x: 100 mm}, {along: y, x: 200 mm}]}");

    /// <summary>A hang that is not level.</summary>
    public static FindingKind HangTilted { get; } = new(
        "DW5007", Severity.Warning, "Unit hangs tilted",
        "The centre of gravity is not under the middle of the straps or inserts, so that the unit tilts by more than 5 degrees when it leaves the bed.",
        "A tilted unit drags in its bed, loads one leg more than the others and slides in its straps.",
        "Shift the straps towards the centre of gravity that is told, or use legs of different length.",
        "", "common practice, no source");

    /// <summary>A strap that lies on little.</summary>
    public static FindingKind StrapBearsLittle { get; } = new(
        "DW5008", Severity.Warning, "Strap bears on little",
        "Less than half of a strap's length under the unit lies on hardened mix.",
        "What bears carries all of the load, and the strap can slip into the gap.",
        "Move the strap clear of openings in the underside.",
        "", "common practice, no source");

    /// <summary>Tension too near to cracking.</summary>
    public static FindingKind TensionHigh { get; } = new(
        "DW5009", Severity.Error, "Unit cracks under its own weight",
        "The largest principal tension is more than the cracking stress at 28 days divided by 1.5: an error when lifted as the file says, a warning when it stands on two edges or with another on top.",
        "Plain concrete that cracks in the slings falls in pieces.",
        "Move the straps, thicken the place that is told, or never set the unit down that way.",
        "",
        "ACI 318-19 equation (19.2.3.1) and the PCI Design Handbook's factor 1.5 (from memory)");

    /// <summary>A concrete that stays too weak to lift.</summary>
    public static FindingKind NeverStrongEnough { get; } = new(
        "DW5010", Severity.Warning, "Too weak to lift at any age",
        "The predicted mean strength does not reach 10 MPa, at which precast is commonly lifted, at any age.",
        "Edges crush under straps and the prediction of tension has nothing to stand on.",
        "Raise the binder share or the loose density, or give measured cubes if they are stronger.",
        "strength: {measured: [[28 d, 20 degC, 4 MPa]]}",
        "common practice, no source");

    /// <summary>Curing beyond what the maturity rule covers.</summary>
    public static FindingKind CuringOutside { get; } = new(
        "DW5011", Severity.Warning, "Curing temperature beyond the rule of maturity",
        "The curing temperature is below 0 or above 40 degC.",
        "Strength with age is reckoned by equivalent age, which does not hold there: in frost young concrete does not harden and may be destroyed.",
        "Cure warmer or cooler; until then the ages told mean nothing.",
        "curing_temperature: -2 degC",
        "ASTM C1074 (range of the method)");

    /// <summary>All of them, by code.</summary>
    public static IReadOnlyList<FindingKind> All { get; } =
    [
        MassAbove, LiftAbove, AirLeftOut, InsertTooWeak, SlingTooFlat, HangUnbalanced, HangTilted, StrapBearsLittle, TensionHigh, NeverStrongEnough, CuringOutside,
    ];
}
