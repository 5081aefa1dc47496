using Dewstone.Jobs.Folders;

namespace Dewstone.Cli;

/// <summary>What the program ends with; 70, 73 and 75 are those of sysexits.h.</summary>
internal static class ExitCode
{
    /// <summary>Done.</summary>
    public const int Done = 0;

    /// <summary>The answer is no: a finding of level error.</summary>
    public const int No = 1;

    /// <summary>The input is at fault: usage, a description, a missing or unreadable file.</summary>
    public const int InputAtFault = 2;

    /// <summary>A fault of ours (EX_SOFTWARE).</summary>
    public const int OurFault = 70;

    /// <summary>The output cannot be created (EX_CANTCREAT).</summary>
    public const int CannotCreate = 73;

    /// <summary>Another try may go well (EX_TEMPFAIL).</summary>
    public const int TryAgain = 75;

    /// <summary>Stopped by SIGINT.</summary>
    public const int Interrupted = 130;

    /// <summary>Stopped by SIGTERM.</summary>
    public const int Terminated = 143;

    /// <summary>Every code, with what it means to the caller, in the order in which they are told.</summary>
    public static IReadOnlyList<(string Code, string Meaning)> Meanings { get; } =
    [
        ("0", "done; for diff no difference"),
        ("1", "the answer is no: a finding of level error about the predicted solid, a difference, a job that does not verify"),
        ("2", "the input is at fault: usage, a description, a missing or unreadable file"),
        ("70", "a fault of ours; please report it"),
        ("73", "the output cannot be created"),
        ("75", "another try may go well: disk full, out of memory"),
        ("130, 143", "stopped by SIGINT or SIGTERM; nothing half-written is left"),
    ];

    private static readonly int[] Precedence = [OurFault, CannotCreate, TryAgain, InputAtFault, No, Done];

    /// <summary>The code for several units: the first of 70, 73, 75, 2, 1, 0 that occurred.</summary>
    /// <param name="codes">One code a unit.</param>
    /// <returns>The code to end with.</returns>
    public static int Combine(IReadOnlyCollection<int> codes) => Precedence.FirstOrDefault(codes.Contains, Done);

    /// <summary>The code once a folder was to be written.</summary>
    /// <param name="status">What became of it.</param>
    /// <param name="otherwise">The code when it could be written.</param>
    /// <returns>The code to end with.</returns>
    public static int Of(JobFolderStatus status, int otherwise) => status switch
    {
        JobFolderStatus.CannotCreate => CannotCreate,
        JobFolderStatus.TryAgain => TryAgain,
        _ => otherwise,
    };
}
