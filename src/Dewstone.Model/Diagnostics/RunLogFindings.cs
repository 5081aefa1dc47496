namespace Dewstone.Model.Diagnostics;

/// <summary>Findings DW83xx: the log of what a machine really delivered.</summary>
public static class RunLogFindings
{
    /// <summary>First line of a run log.</summary>
    public static FindingKind Header { get; } = new(
        "DW8301", Severity.Error, "First line of a run log",
        "The first line of the run log does not name the columns expected, or the file cannot be read.",
        "A column read as a row would put water where none went.",
        "Make the first line layer,station,column,row,delivered_ml and nothing else.",
        "layer;station;column;row;ml");

    /// <summary>Row of a run log not readable.</summary>
    public static FindingKind Cell { get; } = new(
        "DW8302", Severity.Error, "Row of a run log not readable",
        "A row of the run log has another number of cells than the first line, or a cell that is no number or lies outside its range.",
        "What was delivered decides what the rest of the print must give.",
        "Give each row five plain numbers; layers, stations, columns and rows count from 1.",
        "11,1,4,2,7..9");

    /// <summary>Row about a dose that was not given.</summary>
    public static FindingKind NoSuchDose { get; } = new(
        "DW8303", Severity.Error, "Run log and job do not belong together",
        "A row of the run log names a dose that the job's tables do not hold, that lies after the stop, or that an earlier row named already.",
        "The log is of another job, or the stop was further on than was said.",
        "Check the job folder, --after and --station against the machine's screen.",
        "12,1,4,2,7.9   (with --after 11)");

    /// <summary>Log with fewer rows than doses given.</summary>
    public static FindingKind Partial { get; } = new(
        "DW8304", Severity.Note, "Run log does not name every dose",
        "Some doses before the stop have no row in the run log; they are taken as delivered as their tables say.",
        "If the machine lost its log instead of writing only what differed, the solid may lack water that is counted here.",
        "Nothing to do when the log holds only what differed; else give a full log.");

    /// <summary>All of them, by code.</summary>
    public static IReadOnlyList<FindingKind> All { get; } = [Header, Cell, NoSuchDose, Partial];
}
