namespace Dewstone.Model.Diagnostics;

/// <summary>Findings DW834x to DW836x: files of measurements that <c>survey</c> reads.</summary>
public static class SurveyFileFindings
{
    /// <summary>First line of a table of measurements.</summary>
    public static FindingKind Header { get; } = new(
        "DW8340", Severity.Error, "First line of a table of measurements",
        "The first line does not name the columns: one that is needed is missing, one is named twice or is not known, or a measure does not say its unit.",
        "A column that is guessed at, or a reading in inches taken for millimetres, judges a sound unit wrongly.",
        "Name the columns in the first line, separated by commas, with the unit in the name of each measure, such as weighed_kg or reading_mm. Their order does not matter.",
        "mark;weight");

    /// <summary>Cell of a table of measurements.</summary>
    public static FindingKind Cell { get; } = new(
        "DW8341", Severity.Error, "Cell of a table of measurements not readable",
        "A cell is empty where a value is needed, is no number, lies outside its range or is none of the words that may stand there.",
        "A value that is guessed at or left out changes the verdict.",
        "Write plain numbers with a decimal point, without units, and take out rows that were not measured.",
        "WB-07,1009 kg");

    /// <summary>Row of the wrong length.</summary>
    public static FindingKind Row { get; } = new(
        "DW8342", Severity.Error, "Row of a table of measurements with too many or too few cells",
        "A row has another number of cells than the first line. A decimal comma makes two cells of one.",
        "The cells of such a row cannot be told apart.",
        "Give every row as many cells as the first line, and write decimals with a point.",
        "WB-07,1009,5");

    /// <summary>No rows.</summary>
    public static FindingKind Empty { get; } = new(
        "DW8343", Severity.Error, "Table of measurements without rows",
        "The table has a first line and nothing below it, or too few rows for what is asked of it.",
        "From nothing nothing can be judged.",
        "See that the machine or the yard wrote the whole file.");

    /// <summary>A row that the job cannot have.</summary>
    public static FindingKind NotOfThisJob { get; } = new(
        "DW8344", Severity.Error, "Row does not belong to this job",
        "A row names a layer, station or needle that the job and its printer do not have, or an opening that the unit does not have.",
        "The file is of another job, another printer or another unit.",
        "Check the job folder against the fingerprint on the shop sheet, and the names against the unit's description.");

    /// <summary>An optional column with gaps.</summary>
    public static FindingKind PartlyFilled { get; } = new(
        "DW8345", Severity.Warning, "Column only partly filled",
        "An optional column has values in some rows and none in others, so it is not used.",
        "Times that are known for a part of the doses only do not give the order and the pauses of the print.",
        "Have the machine write the column in every row, or leave it out.");

    /// <summary>Scan not readable.</summary>
    public static FindingKind ScanNotReadable { get; } = new(
        "DW8350", Severity.Error, "Scan not readable",
        "The file is neither an STL surface (binary or text) nor a table of points (x y z a line), or it ends before it should.",
        "A scan that is read half would show half a unit as missing.",
        "Export it anew as STL or XYZ, in millimetres.",
        "facet normal 0 0 1 outer loop vertex 1 2");

    /// <summary>Scan too large.</summary>
    public static FindingKind ScanTooLarge { get; } = new(
        "DW8351", Severity.Error, "Scan too large",
        "The file is larger than is read.",
        "A scan finer than the cells of the job shows nothing that the job could be held against.",
        "Thin it out in the scanner's software to a point about every 3 mm.");

    /// <summary>A number of a scan.</summary>
    public static FindingKind ScanNumber { get; } = new(
        "DW8352", Severity.Error, "Number in a scan not usable",
        "A coordinate is no number, is infinite, or lies more than 100 m from the origin.",
        "One such point moves the whole scan.",
        "Export the scan anew; if it stands in map coordinates, move it near the origin first.",
        "nan 12.5 88.1");

    /// <summary>Too few points or much too small or large.</summary>
    public static FindingKind ScanUnfit { get; } = new(
        "DW8353", Severity.Error, "Scan does not fit the unit",
        "The scan has too few points, or its size is so far from the unit's that it must be of something else or in another unit of measure.",
        "Laid on the prediction it would show deviations that mean nothing.",
        "Check that it is in millimetres, of this unit, and cleaned of the ground and the fork lift.");

    /// <summary>All of them, by code.</summary>
    public static IReadOnlyList<FindingKind> All { get; } =
        [Header, Cell, Row, Empty, NotOfThisJob, PartlyFilled, ScanNotReadable, ScanTooLarge, ScanNumber, ScanUnfit];
}
