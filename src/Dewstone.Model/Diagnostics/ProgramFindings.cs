namespace Dewstone.Model.Diagnostics;

/// <summary>Findings DW0090 to DW0094: the run of the program itself, told on the error stream.</summary>
public static class ProgramFindings
{
    /// <summary>Words that cannot be carried out.</summary>
    public static FindingKind Usage { get; } = new(
        "DW0090", Severity.Error, "Words that cannot be carried out",
        "The words after the program's name are no command: one is unknown, misspelt, missing or has a value that will not do.",
        "Nothing was read and nothing was written.",
        "Mend what the message names; `--help` behind a command lists its words. The exit code is 2.",
        "dewstone check --celsl 8");

    /// <summary>The output cannot be written.</summary>
    public static FindingKind Output { get; } = new(
        "DW0091", Severity.Error, "Output that cannot be written",
        "Standard output, or a file named on the command line for a listing or picture, took no more: its disk is full, it is closed, or it may not be written.",
        "The work was done, but its answer is not there or not whole. Job folders are unharmed: they are complete or not there.",
        "Free some space or name another place, and run the same command again. The exit code is 75 where another try may go well, else 73.",
        "dewstone explain > /dev/full");

    /// <summary>Out of memory.</summary>
    public static FindingKind Memory { get; } = new(
        "DW0092", Severity.Error, "Out of memory",
        "The machine, or the limit it runs the program under, has too little memory for the job.",
        "Nothing half-written was left.",
        "Try fewer `--cells` or `--threads`, or close other programs. The exit code is 75.");

    /// <summary>A fault of the program.</summary>
    public static FindingKind Fault { get; } = new(
        "DW0093", Severity.Error, "Fault of the program",
        "The program met a state that its makers had not foreseen.",
        "Its answer would not be worth having, so there is none. Nothing half-written was left.",
        "Please report it with the input files and the words that were given. The exit code is 70.");

    /// <summary>A fault of the disk.</summary>
    public static FindingKind Disk { get; } = new(
        "DW0094", Severity.Error, "Fault of the disk while the program ran",
        "A file or folder that stood there before could not be read or written any more: it was removed or renamed meanwhile, or the disk or network reports a fault.",
        "The answer would rest on half of what was asked. Nothing half-written was left.",
        "Run the same command again. The exit code is 75.");

    /// <summary>All of them, by code.</summary>
    public static IReadOnlyList<FindingKind> All { get; } = [Usage, Output, Memory, Fault, Disk];
}
