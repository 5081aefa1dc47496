namespace Dewstone.Model.Diagnostics;

/// <summary>Findings DW6001 to DW6019: how the unit stands at its site. Errors among them hold the job back from printing.</summary>
public static class SeaFindings
{
    private const string FromMemory = "Coastal Engineering Manual (USACE EM 1110-2-1100), part VI chapter 5; from memory";

    /// <summary>It slides.</summary>
    public static FindingKind SlidingBelow { get; } = new(
        "DW6001", Severity.Error, "Slides on the seabed",
        "In the design wave and current, at the worst heading, water level and phase, friction holds less than safety.sliding times the push of the sea.",
        "A unit that walks damages what lives there, cables and nets, and is lost.",
        "Make it heavier, lower or wider, open it further, turn it to the safe heading, or choose a calmer site; a licensed engineer decides on marine stability.",
        "safety: {sliding: 1.3}", FromMemory);

    /// <summary>It turns over.</summary>
    public static FindingKind OverturningBelow { get; } = new(
        "DW6002", Severity.Error, "Turns over on the seabed",
        "In the design wave and current the weight turns back less than safety.overturning times what the sea turns, about some edge of its foot.",
        "A unit on its side shelters nobody and is higher or lower than its permit says.",
        "Widen its foot, make it lower or heavier, or choose a calmer site; a licensed engineer decides on marine stability.",
        "safety: {overturning: 1.5}", FromMemory);

    /// <summary>The seabed gives way.</summary>
    public static FindingKind BearingBelow { get; } = new(
        "DW6003", Severity.Error, "The seabed does not bear it",
        "The seabed bears less than safety.bearing times the pressure under the unit, on the width that still bears when the sea pushes.",
        "It would tilt and sink.",
        "Widen its foot, make it lighter, lay stone under it, or choose firmer ground.",
        "seabed: {soil: clay, undrained_strength: 2 kPa}", "Terzaghi (1943), Meyerhof (1963), Vesic (1973)");

    /// <summary>Too little water over it.</summary>
    public static FindingKind ClearanceBelow { get; } = new(
        "DW6004", Severity.Error, "Too little water over it",
        "At low water the top of the predicted solid comes nearer to the surface than the site's clearance.",
        "Vessels may strike it.",
        "Make it lower or place it deeper; the permit and the coast guard decide on the charted depth.",
        "clearance: 1.83 m", "such rules stand in permits; Florida Administrative Code 62-330.600 asks 6 ft");

    /// <summary>Too high for the depth.</summary>
    public static FindingKind HeightAbove { get; } = new(
        "DW6005", Severity.Error, "Too high for the depth",
        "The predicted solid is higher than the share of the depth at low water that the permit allows.",
        "The permit would not cover it.",
        "Make it lower or place it deeper.",
        "permit: {height_share: 50 %}", "such rules stand in permits; Florida Administrative Code 62-330.600 allows half the depth");

    /// <summary>Too shallow a site.</summary>
    public static FindingKind TooShallow { get; } = new(
        "DW6006", Severity.Error, "Site too shallow for the permit",
        "At low water the site is shallower than the permit allows units to stand.",
        "The permit would not cover it.",
        "Choose a deeper site.",
        "permit: {least_depth: 3.66 m}", "such rules stand in permits; Florida Administrative Code 62-330.600 asks 12 ft in estuaries");

    /// <summary>A figure no sea has.</summary>
    public static FindingKind AbsurdFigure { get; } = new(
        "DW6007", Severity.Error, "Figure of the site that cannot be",
        "The site's file holds a figure that no sea has, or that lies outside what the formulas were made for; nothing is computed from it.",
        "A factor of safety from such a figure would be worse than none.",
        "Mend the figure from a survey of the site.",
        "seabed: {friction: 0}", "ranges of the formulas used");

    /// <summary>Waves break there.</summary>
    public static FindingKind WavesBreak { get; } = new(
        "DW6008", Severity.Warning, "Design waves break at the site",
        "The depth bears no wave as high as the site's rule asks; the highest unbroken one is used.",
        "A breaking wave hits harder than an unbroken one of the same height, and no factor here has that in it.",
        "Let a licensed engineer judge it, or place it deeper.",
        "wave: {significant_height: 4 m}", "Weggel (1972), Coastal Engineering Manual equations II-4-5 to II-4-7; Miche (1944)");

    /// <summary>Stands out of the water.</summary>
    public static FindingKind StandsOut { get; } = new(
        "DW6009", Severity.Warning, "Stands out of the water",
        "At this water level the unit is higher than the water is deep.",
        "Waves slam and run over it; the factors of safety are made for a covered unit.",
        "Let a licensed engineer judge it, make it lower, or place it deeper.",
        "water: {depth: 0.5 m}", "validity of the Morison equation");

    /// <summary>Falls dry.</summary>
    public static FindingKind DryLevel { get; } = new(
        "DW6010", Severity.Note, "Falls dry",
        "At this level of the water the site has less than 0.1 m of it, and no waves to judge by.",
        "Only the other level was judged.",
        "Nothing, when it is meant to fall dry there.");

    /// <summary>Light until its pores fill.</summary>
    public static FindingKind FreshUnstable { get; } = new(
        "DW6011", Severity.Warning, "Too light until its pores fill",
        "With its pores full of sea water it stands, but not with the air it has when it is lowered.",
        "Dry concrete from a loose bed holds a third of its volume in pores; they take hours to days to fill.",
        "Soak it before it is lowered, or lower it in a calm season.");

    /// <summary>Sand moves.</summary>
    public static FindingKind SandMoves { get; } = new(
        "DW6012", Severity.Warning, "The sea moves the sand",
        "Waves and current of the design storm move the sand of the seabed even without the unit.",
        "Beside a unit the water is faster: it scours, the unit tilts or sinks in.",
        "Lay stone or a mattress around it, sink it in on purpose, or watch it after storms.",
        "seabed: {grain: 0.2 mm}", "Soulsby (1997), Dynamics of marine sands, equation 77");

    /// <summary>No grain size.</summary>
    public static FindingKind GrainMissing { get; } = new(
        "DW6013", Severity.Note, "Scour not judged",
        "The seabed is sand, but its grain size is not given.",
        "Whether the sea moves the sand decides on scour.",
        "Give seabed.grain, the median size of a sample.");

    /// <summary>It sinks in.</summary>
    public static FindingKind Sinks { get; } = new(
        "DW6014", Severity.Warning, "Sinks into the seabed",
        "In still water the unit sinks more than a twentieth of its height before the seabed bears it.",
        "Its lowest openings may close, and it stands lower than planned.",
        "Widen its foot, or lay stone under it.",
        "seabed: {soil: clay, undrained_strength: 1 kPa}", "from memory");

    /// <summary>Bearing cannot be judged.</summary>
    public static FindingKind BearingUnknown { get; } = new(
        "DW6015", Severity.Note, "Bearing not judged",
        "The strength of the soil is not given, or the unit has no foot to speak of.",
        "Whether the seabed bears it is left open.",
        "Give seabed.friction_angle of sand or seabed.undrained_strength of clay.");

    /// <summary>All of them, by code.</summary>
    public static IReadOnlyList<FindingKind> All { get; } =
    [
        SlidingBelow, OverturningBelow, BearingBelow, ClearanceBelow, HeightAbove, TooShallow, AbsurdFigure, WavesBreak, StandsOut, DryLevel,
        FreshUnstable, SandMoves, GrainMissing, Sinks, BearingUnknown,
    ];
}
