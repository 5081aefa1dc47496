namespace Dewstone.Model.Diagnostics;

/// <summary>Findings DW2xxx: the shape.</summary>
public static class ShapeFindings
{
    private const string TradeRule = "common practice, no source";

    /// <summary>A scatter that finds no room for all its hollows.</summary>
    public static FindingKind ScatterCannotPlace { get; } = new(
        "DW2001", Severity.Error, "Scatter finds no room",
        "A scatter was to place a number of hollows with a gap between them and found no room for all of them.",
        "A unit with fewer hollows than asked for is not the unit that was ordered.",
        "Ask for fewer or smaller hollows, a smaller gap, a wider band or more faces, or try another seed.",
        "cavities:\n  - name: niches\n    scatter: {count: 500, diameter: [110 mm, 160 mm], gap: 100 mm, faces: [top], seed: 1}");

    /// <summary>A tunnel that does not touch the unit.</summary>
    public static FindingKind TunnelMisses { get; } = new(
        "DW2002", Severity.Error, "Tunnel misses the unit",
        "The whole tunnel lies beside the outer box, so it removes nothing.",
        "A tunnel is named in the description and will be looked for on the printed unit; most likely a coordinate or its unit of measure is wrong.",
        "Bring its centre line into the box; coordinates run from the lower corner of the outer box.",
        "box: [900 mm, 900 mm, 900 mm]\ntunnels:\n  - name: low way\n    along: x\n    at: {y: 450 mm, z: 2700 mm}\n    section: {diameter: 200 mm}");

    /// <summary>A path tunnel that ends in the solid.</summary>
    public static FindingKind TunnelEndsInside { get; } = new(
        "DW2003", Severity.Error, "Tunnel ends inside the unit",
        "An end of a tunnel's path lies inside the outer box.",
        "A tunnel with a blind end traps loose mix and an animal, and is no way through.",
        "Move the end to a face of the outer box or beyond, or describe a blind hollow as a cavity.",
        "tunnels:\n  - name: bend\n    path: [[0 mm, 450 mm, 300 mm], [450 mm, 450 mm, 300 mm]]\n    section: {diameter: 200 mm}");

    /// <summary>A cavity that does not touch the unit.</summary>
    public static FindingKind CavityOutside { get; } = new(
        "DW2004", Severity.Error, "Cavity lies outside the unit",
        "The whole cavity lies outside the outer box, so it removes nothing.",
        "Most likely a coordinate or its unit of measure is wrong.",
        "Bring its centre into the box or onto a face; coordinates run from the lower corner of the outer box.",
        "box: [900 mm, 900 mm, 900 mm]\ncavities:\n  - name: den\n    sphere: {centre: [450 mm, 450 mm, 1200 mm], diameter: 200 mm}");

    /// <summary>A feature smaller than the distance between two needle positions.</summary>
    public static FindingKind UnderOnePitch { get; } = new(
        "DW2005", Severity.Error, "Feature under one pitch",
        "An opening, a keep zone or the box itself is smaller than the distance between two needle positions, or lower than a layer.",
        "The printer waters whole voxels: what is smaller than one cannot be printed, only hit or missed by chance.",
        "Make it at least one pitch wide and one layer high (two are better), or use a printer with a finer grid.",
        "# on a grid of 50 mm\ntunnels:\n  - name: drain\n    along: x\n    at: {y: 450 mm, z: 100 mm}\n    section: {diameter: 30 mm}");

    /// <summary>A wall thinner than two needle positions.</summary>
    public static FindingKind WallUnderTwoPitches { get; } = new(
        "DW2006", Severity.Warning, "Wall under two pitches",
        "Between two openings, or between an opening and an outer face, less than two pitches of solid are left.",
        "A wall with fewer than two needle positions across it hangs on single doses: one blocked needle makes a hole, and its thickness follows the grid.",
        "Move the openings apart or make one smaller, so that at least two pitches stay between them.",
        "# on a grid of 50 mm: 60 mm are left\ntunnels:\n  - {name: a, along: x, at: {y: 300 mm, z: 300 mm}, section: {diameter: 200 mm}}\n"
        + "  - {name: b, along: x, at: {y: 560 mm, z: 300 mm}, section: {diameter: 200 mm}}",
        TradeRule);

    /// <summary>A keep zone that keeps nothing.</summary>
    public static FindingKind KeepOutside { get; } = new(
        "DW2007", Severity.Warning, "Keep zone lies outside the unit",
        "The whole keep zone lies outside the outer box, so it keeps nothing.",
        "Whatever it was meant to protect, such as the place of a strap, is not protected.",
        "Bring it into the box; coordinates run from the lower corner of the outer box.",
        "box: [900 mm, 900 mm, 900 mm]\nkeep:\n  - name: foot\n    block: {centre: [450 mm, 450 mm, -50 mm], size: [900 mm, 900 mm, 100 mm]}");

    /// <summary>A blend radius larger than an opening.</summary>
    public static FindingKind BlendTooLarge { get; } = new(
        "DW2008", Severity.Warning, "Blend larger than an opening's radius",
        "The blend radius is larger than half the narrowest side of an opening.",
        "The fillet then eats far more than the edge: mouths grow into funnels and thin bridges vanish.",
        "Make the blend at most half the narrowest opening, or the opening wider.",
        "blend: 80 mm\ntunnels:\n  - name: drain\n    along: x\n    at: {y: 450 mm, z: 300 mm}\n    section: {diameter: 100 mm}",
        TradeRule);

    /// <summary>A relief that is steep for its wavelength.</summary>
    public static FindingKind ReliefTooSteep { get; } = new(
        "DW2009", Severity.Warning, "Relief deeper than half its shortest wavelength",
        "The relief's amplitude is more than half of its shortest wavelength.",
        "Slopes get so steep that bumps overhang or break off at dig-out.",
        "Lower the amplitude or lengthen the shortest wavelength.",
        "relief: {amplitude: 60 mm, length: [80 mm, 250 mm], faces: [sides, top], seed: 7}",
        TradeRule);

    /// <summary>A relief finer than the grid.</summary>
    public static FindingKind ReliefTooFine { get; } = new(
        "DW2010", Severity.Note, "Relief finer than two pitches",
        "The relief's shortest wavelength is under two pitches of the grid.",
        "Bumps shorter than two needle positions cannot be followed by single doses; they come out weaker or not at all.",
        "Nothing, if the longer waves matter; else lengthen the shortest wavelength to two pitches.",
        "# on a grid of 50 mm\nrelief: {amplitude: 12 mm, length: [60 mm, 250 mm], faces: [top], seed: 7}",
        "A wave needs two samples: Shannon 1949, Communication in the Presence of Noise, theorem 1");

    /// <summary>A cavity that opens nowhere.</summary>
    public static FindingKind CavityClosed { get; } = new(
        "DW2011", Severity.Warning, "Cavity opens nowhere",
        "A cavity touches neither a face nor another opening that does.",
        "Loose mix cannot be dug out of a closed hollow: it stays, weighs, and may set when the unit is put in water.",
        "Move it to a face or let a tunnel cut it; accept the warning if the loose mix may stay.",
        "box: [900 mm, 900 mm, 900 mm]\ncavities:\n  - name: den\n    sphere: {centre: [450 mm, 450 mm, 450 mm], diameter: 200 mm}");

    /// <summary>A path that cannot be followed.</summary>
    public static FindingKind PathFoldsBack { get; } = new(
        "DW2012", Severity.Error, "Path folds back or has no length",
        "A tunnel's path has fewer than two different corners, or turns by more than 120 degrees at one.",
        "A section cannot be carried around so sharp a bend without cutting into itself.",
        "Give two or more different corners, and spread a sharp bend over two.",
        "tunnels:\n  - name: hairpin\n    path: [[0 mm, 300 mm, 300 mm], [600 mm, 300 mm, 300 mm], [0 mm, 400 mm, 300 mm]]\n    section: {diameter: 100 mm}");

    /// <summary>A clear opening that the drawing itself denies.</summary>
    public static FindingKind ClearLargerThanOpening { get; } = new(
        "DW2013", Severity.Error, "Clear opening larger than the opening",
        "The ball that must pass is larger than the opening as drawn.",
        "It cannot pass, however well the unit is printed; wet edges make openings smaller, never larger.",
        "Widen the opening or ask for a smaller ball.",
        "tunnels:\n  - name: way\n    along: x\n    at: {y: 450 mm, z: 300 mm}\n    section: {diameter: 200 mm}\n    clear: 250 mm");

    /// <summary>A keep zone across a tunnel.</summary>
    public static FindingKind KeepBlocksTunnel { get; } = new(
        "DW2014", Severity.Warning, "Keep zone blocks a tunnel",
        "A keep zone lies across the centre line of a tunnel inside the unit.",
        "Keep zones win over openings: the tunnel is walled up there, wholly or in part.",
        "Move one of them, or make the keep zone smaller.",
        "tunnels:\n  - {name: way, along: x, at: {y: 450 mm, z: 300 mm}, section: {diameter: 200 mm}}\n"
        + "keep:\n  - name: core\n    sphere: {centre: [450 mm, 450 mm, 300 mm], diameter: 300 mm}");

    /// <summary>A unit of which nothing is left.</summary>
    public static FindingKind NothingLeft { get; } = new(
        "DW2015", Severity.Error, "Nothing is left to print",
        "The openings take away the whole body.",
        "There is no solid to dose for.",
        "Make the openings smaller, or name what must stay under keep.",
        "box: [300 mm, 300 mm, 300 mm]\ncavities:\n  - name: all\n    sphere: {centre: [150 mm, 150 mm, 150 mm], diameter: 600 mm}");

    /// <summary>A straight tunnel whose centre line lies outside the box.</summary>
    public static FindingKind TunnelIsGroove { get; } = new(
        "DW2016", Severity.Warning, "Tunnel runs outside the box",
        "The centre line of a straight tunnel lies outside the outer box, so that at most one side of it cuts into a face.",
        "What is called a tunnel is then an open groove, or nothing at all; most likely a coordinate is mistyped.",
        "Bring the centre line into the box, or leave it where a groove is meant.",
        "box: [900 mm, 900 mm, 900 mm]\ntunnels:\n  - {name: way, along: x, at: {y: 450 mm, z: 970 mm}, section: {diameter: 200 mm}}");

    /// <summary>All of them, by code.</summary>
    public static IReadOnlyList<FindingKind> All =>
    [
        ScatterCannotPlace, TunnelMisses, TunnelEndsInside, CavityOutside, UnderOnePitch, WallUnderTwoPitches, KeepOutside,
        BlendTooLarge, ReliefTooSteep, ReliefTooFine, CavityClosed, PathFoldsBack, ClearLargerThanOpening, KeepBlocksTunnel, NothingLeft,
        TunnelIsGroove,
    ];
}
