namespace Dewstone.Model.Diagnostics;

/// <summary>Findings DW104x: the table of the needles.</summary>
public static class NeedleFindings
{
    /// <summary>First line of a needles file.</summary>
    public static FindingKind Header { get; } = new(
        "DW1040", Severity.Error, "First line of a needles file",
        "The first line of the needles file does not name the columns expected.",
        "A gain read as an offset would spoil every dose.",
        "Make the first line column,row,board,channel,state,gain,offset_ml,flow_ml_s,repeatability_percent and nothing else.",
        "column;row;board");

    /// <summary>Row of a needles file too short or too long.</summary>
    public static FindingKind RowLength { get; } = new(
        "DW1041", Severity.Error, "Row of a needles file too short or too long",
        "A row has another number of cells than the first line.",
        "Its cells can not be told apart with certainty.",
        "Give each row nine cells; leave board, channel, flow_ml_s and repeatability_percent empty where unknown.",
        "1,1,A,1,ok,1.0");

    /// <summary>Cell of a needles file not readable.</summary>
    public static FindingKind Cell { get; } = new(
        "DW1042", Severity.Error, "Cell of a needles file not readable",
        "A cell does not hold the number or word its column needs, or lies outside its range.",
        "Doses are corrected with these figures.",
        "Write plain numbers with a decimal point, and ok, blocked or limited as the state.",
        "1,1,A,1,fine,1.0,0,4,2");

    /// <summary>The same needle twice.</summary>
    public static FindingKind Twice { get; } = new(
        "DW1043", Severity.Error, "The same needle twice",
        "Two rows are about the same column and row.",
        "It cannot be known which one holds.",
        "Delete the older of the two rows.",
        "1,1,A,1,ok,1.0,0,4,2\n1,1,A,2,ok,1.1,0,4,2");

    /// <summary>Needle outside the head.</summary>
    public static FindingKind OutsideHead { get; } = new(
        "DW1044", Severity.Error, "Needle outside the head",
        "A row is about a column or row the printer's head does not have.",
        "The file probably belongs to another printer.",
        "Check that the needles file belongs to this printer.",
        "25,1,A,1,ok,1.0,0,4,2   (head of 24 columns)");

    /// <summary>All of them, by code.</summary>
    public static IReadOnlyList<FindingKind> All { get; } = [Header, RowLength, Cell, Twice, OutsideHead];
}
