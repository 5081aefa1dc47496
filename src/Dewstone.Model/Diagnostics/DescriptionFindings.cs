namespace Dewstone.Model.Diagnostics;

/// <summary>Findings DW1xxx: description files.</summary>
public static class DescriptionFindings
{
    /// <summary>Not readable YAML.</summary>
    public static FindingKind BrokenYaml { get; } = new(
        "DW1001", Severity.Error, "Not readable YAML",
        "The text breaks the rules of YAML, so that nothing after this place can be read: a quote or bracket is not " +
            "closed, a colon is missing, the indentation does not fit, or a control character stands in the text.",
        "A description that is read half would print half a reef unit. Reading stops here, and faults further down are " +
            "found only on the next run.",
        "Look at the line named and the one above it. Close quotes and brackets, put a space after each colon, indent the " +
            "keys of one table alike, and put text that holds a colon or a # in quotes.",
        "box: [900 mm, 900 mm");

    /// <summary>Tab in the indentation.</summary>
    public static FindingKind TabInIndentation { get; } = new(
        "DW1002", Severity.Error, "Tab in the indentation",
        "A line is indented with a tab. YAML allows only spaces there.",
        "A tab is as wide as the editor pleases; a key would belong to one table for one reader and to another for the " +
            "next.",
        "Replace the tab with spaces, two for each level. Most editors have a setting that types spaces when Tab is " +
            "pressed.",
        "grid:\n\tpitch: 50 mm");

    /// <summary>Alias, anchor or tag.</summary>
    public static FindingKind AliasOrTag { get; } = new(
        "DW1003", Severity.Error, "Alias, anchor or tag",
        "The text uses a YAML anchor (&name), an alias (*name) or a tag (!name). Descriptions are written without them.",
        "An alias makes one line change values elsewhere, and a few of them can blow up a small file to millions of " +
            "values. What the printer gets should stand where it is read.",
        "Write the value out in each place. Put text that really begins with one of these signs in quotes.",
        "rounding: &r 50 mm\nblend: *r");

    /// <summary>Nested too deeply.</summary>
    public static FindingKind TooDeep { get; } = new(
        "DW1004", Severity.Error, "Nested too deeply",
        "Lists and tables stand in each other more than 32 deep. The deepest description needs six.",
        "Nesting like this is a slip of brackets or a damaged file, and reading on would only waste time and memory.",
        "Look for stray brackets or dashes at the place named.",
        "box: [[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[");

    /// <summary>Too many values.</summary>
    public static FindingKind TooManyValues { get; } = new(
        "DW1005", Severity.Error, "Too many values",
        "The file holds more than 100,000 values, or one table of it more than 1,000 keys.",
        "A description is a few hundred lines. A file this full is not one, and its faults could not be listed usefully.",
        "Check that the right file was named. Split a very long order into several.");

    /// <summary>The same key twice.</summary>
    public static FindingKind DuplicateKey { get; } = new(
        "DW1006", Severity.Error, "The same key twice",
        "A key stands twice in the same table.",
        "One of the two values would be dropped without a word, perhaps the right one.",
        "Keep one of the two lines and delete the other.",
        "rounding: 50 mm\nrounding: 60 mm");

    /// <summary>Several documents in one file.</summary>
    public static FindingKind SeveralDocuments { get; } = new(
        "DW1007", Severity.Error, "Several documents in one file",
        "The file holds a second YAML document after a line of three dashes.",
        "One file describes one thing, so that its name, its hash and its findings mean that thing.",
        "Move the second document to a file of its own.",
        "kind: mix\n---\nkind: printer");

    /// <summary>Empty file.</summary>
    public static FindingKind EmptyFile { get; } = new(
        "DW1008", Severity.Error, "Empty file",
        "The file holds nothing, or comments only.",
        "There is nothing to print from. Often the file was not saved, or an upload broke off.",
        "Save the file again, or begin with the template that `dewstone new` writes.");

    /// <summary>Wrong kind of description.</summary>
    public static FindingKind WrongKind { get; } = new(
        "DW1009", Severity.Error, "Wrong kind of description",
        "The first key `kind:` is missing, names no kind there is, or names another kind than is due here.",
        "A printer read as a mix would fail in a hundred places, none of them the cause.",
        "Write kind: unit, mix, printer, site, order or tonight. If the kind is right, the file is named in the wrong " +
            "place: look at the key or option that names it.",
        "kind: cement");

    /// <summary>Version missing or not known.</summary>
    public static FindingKind WrongVersion { get; } = new(
        "DW1010", Severity.Error, "Version missing or not known",
        "The key `version:` is missing, or is not 1.",
        "The version says how the file is to be understood. A file of another version might mean something else by the " +
            "same words, so it is not guessed at.",
        "Write `version: 1`. A file of a later version needs a later release of this program.",
        "version: 2");

    /// <summary>Unknown key.</summary>
    public static FindingKind UnknownKey { get; } = new(
        "DW1011", Severity.Error, "Unknown key",
        "A key is not among those of its table, often through a slip of the keyboard.",
        "A key that is passed over leaves its default in force: the tunnel would be printed without its rounding, and " +
            "nobody would be told.",
        "Correct the key as suggested, or delete the line. `dewstone schema` lists all keys of a kind.",
        "roundig: 50 mm");

    /// <summary>Missing key.</summary>
    public static FindingKind MissingKey { get; } = new(
        "DW1012", Severity.Error, "Missing key",
        "A key that has no default is not there, or has no value.",
        "Nothing sensible can be assumed in its place.",
        "Add the key with its value. The remedy of the finding shows how it is written.",
        "tunnels:\n  - {name: east-west, along: x}");

    /// <summary>Another sort of value is due.</summary>
    public static FindingKind WrongType { get; } = new(
        "DW1013", Severity.Error, "Another sort of value is due",
        "A list stands where one value is due, a value where a table is due, or text where a number is due.",
        "The reader does not guess what a value of another sort was meant to be.",
        "Write the value as the remedy shows.",
        "box: 900 mm");

    /// <summary>Keys that do not go together.</summary>
    public static FindingKind KeysThatExclude { get; } = new(
        "DW1014", Severity.Error, "Keys that do not go together",
        "Two keys belong to different ways of saying the same thing, such as a tunnel that runs along an axis and along a " +
            "path at once.",
        "One of the two would have to be ignored, and it cannot be known which.",
        "Keep the keys of one way and delete those of the other.",
        "tunnels:\n  - {name: a, along: x, at: {y: 1 m, z: 1 m}, path: [[0 m, 0 m, 0 m], [1 m, 1 m, 1 m]], section: " +
            "{diameter: 0.3 m}}");

    /// <summary>One of several keys is needed.</summary>
    public static FindingKind NoWayChosen { get; } = new(
        "DW1015", Severity.Error, "One of several keys is needed",
        "A table needs one of several keys to say what it is, such as `sphere`, `block`, `ellipsoid` or `scatter` for a " +
            "cavity, and has none.",
        "Without it there is no shape to print or leave open.",
        "Add one of the keys named, with its value as the remedy shows.",
        "cavities:\n  - {name: niche}");

    /// <summary>Unit of measure missing.</summary>
    public static FindingKind UnitMissing { get; } = new(
        "DW1016", Severity.Error, "Unit of measure missing",
        "A quantity is written as a bare number.",
        "900 may be millimetres or inches; the reef unit would come out 25 times too large or too small.",
        "Write the number with its unit, as in 900 mm.",
        "rounding: 50");

    /// <summary>Unit of measure not known here.</summary>
    public static FindingKind WrongUnit { get; } = new(
        "DW1017", Severity.Error, "Unit of measure not known here",
        "The unit of measure is not known, or measures something else than is due here.",
        "A mass is no length, and a guess at a misspelt unit may be wrong by a thousand.",
        "Use one of the units named. Case matters: mL is a millilitre.",
        "rounding: 50 kg");

    /// <summary>Number not readable.</summary>
    public static FindingKind BadNumber { get; } = new(
        "DW1018", Severity.Error, "Number not readable",
        "A number is missing or written in a way that can be read in two ways: with a comma, a colon, leading zeros or " +
            "spaces between digits, or as infinity or not-a-number.",
        "Programs read 20,5 as 205, 017 as 15 and 1:30 as 90. Here such a number is refused.",
        "Write digits with one decimal point, and a power of ten if need be: 1700, 0.22, 3.2e-6.",
        "rounding: 20,5 mm");

    /// <summary>Out of range.</summary>
    public static FindingKind OutOfRange { get; } = new(
        "DW1019", Severity.Error, "Out of range",
        "A value lies outside the range allowed for its key.",
        "The range holds everything a yard could mean. A value outside is a slip of the unit or of a digit.",
        "Check the unit and the decimal point.",
        "box: [900 m, 900 mm, 900 mm]",
        "common practice, no source");

    /// <summary>Not one of the words allowed.</summary>
    public static FindingKind UnknownWord { get; } = new(
        "DW1020", Severity.Error, "Not one of the words allowed",
        "The value must be one of a few words, and is another.",
        "The word chooses between ways of building; none can be assumed.",
        "Write one of the words named, in lower case where they are.",
        "along: w");

    /// <summary>Whole number due.</summary>
    public static FindingKind NotWhole { get; } = new(
        "DW1021", Severity.Error, "Whole number due",
        "A number of things is not whole, or is not written as plain digits.",
        "There is no half needle, layer or unit.",
        "Write a whole number in digits, without a decimal point or power of ten.",
        "head: {columns: 24.5, rows: 24}");

    /// <summary>Too few or too many items.</summary>
    public static FindingKind WrongCount { get; } = new(
        "DW1022", Severity.Error, "Too few or too many items",
        "A list has another number of items than it needs.",
        "A box has three edges and a point three coordinates; with fewer, one would have to be invented.",
        "Write as many items as the remedy names.",
        "box: [900 mm, 900 mm]");

    /// <summary>Date or time not readable.</summary>
    public static FindingKind BadDateOrTime { get; } = new(
        "DW1023", Severity.Error, "Date or time not readable",
        "A date is not written as year-month-day, a time of day not as hours:minutes, or the day does not exist.",
        "03/04 is a day in March for some and in April for others.",
        "Write dates as 2027-03-01 and times in quotes as \"18:00\".",
        "due: 30.06.2027");

    /// <summary>Text does not fit.</summary>
    public static FindingKind BadText { get; } = new(
        "DW1024", Severity.Error, "Text does not fit",
        "A text is empty, too long, or holds letters it must not.",
        "Names and marks stand on labels, sheets and file names.",
        "Write it as the remedy of the finding says, in quotes if it holds a colon or #.",
        "currency: Euro");

    /// <summary>The same name twice.</summary>
    public static FindingKind NameTwice { get; } = new(
        "DW1025", Severity.Error, "The same name twice",
        "Two things of one description have the same name or mark.",
        "Findings, requirements and labels use the name to say which is meant.",
        "Give each its own name or mark, short enough for a label.",
        "tunnels:\n  - {name: a, ...}\n  - {name: a, ...}");

    /// <summary>Shares do not add up.</summary>
    public static FindingKind SharesDoNotAddUp { get; } = new(
        "DW1026", Severity.Error, "Shares do not add up",
        "The shares of the solids of a mix do not add up to 100 %.",
        "Density, water/cement and price are all counted from the shares.",
        "Correct the shares; they are by mass of the dry mix.",
        "solids:\n  - {name: Portland cement, share: 25 %, density: 3150 kg/m3, binder: true}\n  - {name: sand, share: 70 " +
            "%, density: 2650 kg/m3}");

    /// <summary>No binder in the mix.</summary>
    public static FindingKind NoBinder { get; } = new(
        "DW1027", Severity.Error, "No binder in the mix",
        "No solid of the mix is marked `binder: true`.",
        "Without a binder nothing sets, and water/cement has no meaning.",
        "Mark the cement with `binder: true`.",
        "solids: [{name: sand, share: 100 %, density: 2650 kg/m3}]");

    /// <summary>Lower value above the upper.</summary>
    public static FindingKind WrongOrder { get; } = new(
        "DW1028", Severity.Error, "Lower value above the upper",
        "Of two values that belong together the one that must be smaller is larger, or an end comes before its beginning.",
        "No value lies between the two, so nothing could ever meet them.",
        "Exchange the two, or correct one.",
        "water_cement: {min: 0.60, max: 0.25, share: 95 %}");

    /// <summary>Rounding larger than half a side.</summary>
    public static FindingKind RoundingTooLarge { get; } = new(
        "DW1029", Severity.Error, "Rounding larger than half a side",
        "The radius of a rounding is more than half of the smallest side it rounds.",
        "Two roundings would overlap, and such a shape does not exist.",
        "Make the rounding at most half the smallest side, or the side larger.",
        "box: [100 mm, 900 mm, 900 mm]\nrounding: 60 mm");

    /// <summary>Not a whole number of micrometres.</summary>
    public static FindingKind FinerThanGrid { get; } = new(
        "DW1030", Severity.Error, "Not a whole number of micrometres",
        "The pitch, the layer height or the origin of the grid is not a whole number of micrometres.",
        "Dose tables name positions to a tenth of a millimetre and the grid is held in whole micrometres, so that sums of " +
            "many pitches stay exact.",
        "Round it to a whole number of micrometres.",
        "grid: {pitch: 50.00001 mm, ...}");

    /// <summary>No pore space in the bed.</summary>
    public static FindingKind NoPoreSpace { get; } = new(
        "DW1031", Severity.Error, "No pore space in the bed",
        "The loose density is so high that the grains would fill the whole bed, or less is left than stays as residual " +
            "water.",
        "Water needs pores to spread in. A bed heavier than its own grains does not exist.",
        "Check the loose density and the densities of the grains, and their units.",
        "loose_density: 3000 kg/m3");

    /// <summary>Needle tip below its layer.</summary>
    public static FindingKind TipOutsideLayer { get; } = new(
        "DW1032", Severity.Error, "Needle tip below its layer",
        "The needle tip would stand deeper than the layer is high.",
        "It would water the layer below, whose mix may have begun to set.",
        "Make tip_depth at most the layer height of the grid.",
        "grid: {layer: 50 mm, ...}\nneedle: {tip_depth: 60 mm, ...}",
        "common practice, no source");

    /// <summary>Closed hollows keep their loose mix.</summary>
    public static FindingKind KeepsLooseMix { get; } = new(
        "DW1033", Severity.Warning, "Closed hollows keep their loose mix",
        "Hollows that are scattered inside break no face.",
        "The dry mix in them cannot be dug out: it stays as dead weight, may take up water later, and shelters nobody.",
        "Let them open to faces with `faces:`, or accept the mass.",
        "scatter: {count: 5, diameter: [100 mm, 120 mm], gap: 50 mm, inside: true, seed: 1}",
        "common practice, no source");

    /// <summary>Mix or printer not named.</summary>
    public static FindingKind NoFileNamed { get; } = new(
        "DW1034", Severity.Error, "Mix or printer not named",
        "Neither the command line nor tonight's file nor the unit names a mix or a printer.",
        "Doses depend on both; there is no sensible default for either.",
        "Add `mix:` and `printer:` to the unit, or name them with --mix and --printer.");

    /// <summary>Coordinate that does not fit the direction.</summary>
    public static FindingKind WrongPlaceKey { get; } = new(
        "DW1035", Severity.Error, "Coordinate that does not fit the direction",
        "A position gives a coordinate along the direction the thing runs in, or lacks one across it.",
        "A tunnel along x is placed by its y and z; an x would mean nothing, and without a z it has no height.",
        "Give the coordinates across the direction, and only those.",
        "along: x\nat: {x: 450 mm, z: 270 mm}");

    /// <summary>All of them, by code.</summary>
    public static IReadOnlyList<FindingKind> All { get; } =
    [
        BrokenYaml, TabInIndentation, AliasOrTag, TooDeep, TooManyValues, DuplicateKey, SeveralDocuments, EmptyFile, WrongKind,
        WrongVersion, UnknownKey, MissingKey, WrongType, KeysThatExclude, NoWayChosen, UnitMissing, WrongUnit, BadNumber,
        OutOfRange, UnknownWord, NotWhole, WrongCount, BadDateOrTime, BadText, NameTwice, SharesDoNotAddUp, NoBinder, WrongOrder,
        RoundingTooLarge, FinerThanGrid, NoPoreSpace, TipOutsideLayer, KeepsLooseMix, NoFileNamed, WrongPlaceKey,
    ];
}
