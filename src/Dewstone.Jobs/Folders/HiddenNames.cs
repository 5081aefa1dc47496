using System.Buffers;
using System.Diagnostics;
using System.Globalization;
using System.Security.Cryptography;
using System.Text;

namespace Dewstone.Jobs.Folders;

/// <summary>
/// Hidden names beside a job folder: <c>.NAME.job.tmp-ID</c> while it is built or removed, <c>.NAME.job.old-ID</c> for the older one during
/// the change. The ID is a hash of the machine's name, the process and a counter, so that two programs never share one.
/// </summary>
internal static class HiddenNames
{
    private const string Temporary = ".tmp-";
    private const string Older = ".old-";
    private static readonly string Machine =
        Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(Environment.MachineName)).AsSpan(0, 3));

    private static readonly SearchValues<char> IdCharacters = SearchValues.Create("0123456789abcdef-");

    private static int counter;

    /// <summary>A hidden name for building or removing.</summary>
    /// <param name="folderName">Name of the job folder.</param>
    public static string NewTemporary(string folderName) => Make(folderName, Temporary);

    /// <summary>A hidden name for the older one.</summary>
    /// <param name="folderName">Name of the job folder.</param>
    public static string NewOlder(string folderName) => Make(folderName, Older);

    /// <summary>Whether a name is that of an older one of a certain job folder.</summary>
    /// <param name="name">Name found.</param>
    /// <param name="folderName">Name of the job folder.</param>
    public static bool IsOlder(string name, string folderName) =>
        name.StartsWith("." + folderName + Older, StringComparison.Ordinal) && IsId(name.AsSpan(1 + folderName.Length + Older.Length));

    /// <summary>Whether a name is that of a job folder being built or removed, whichever job.</summary>
    /// <param name="name">Name found.</param>
    public static bool IsTemporary(string name)
    {
        int at = name.LastIndexOf(JobFolder.Ready + Temporary, StringComparison.Ordinal);
        return at > 0 && name[0] == '.' && IsId(name.AsSpan(at + JobFolder.Ready.Length + Temporary.Length));
    }

    /// <summary>Whether a job folder under a temporary name was left by a program of this machine that runs no more, or had this program's number before it.</summary>
    /// <param name="name">Name found.</param>
    public static bool IsOrphan(string name)
    {
        if (!IsTemporary(name) || name[(name.LastIndexOf(Temporary, StringComparison.Ordinal) + Temporary.Length)..].Split('-') is not [var machine, var process, var number] ||
            machine != Machine || !int.TryParse(process, NumberStyles.None, CultureInfo.InvariantCulture, out int id))
        {
            return false;
        }

        return id == Environment.ProcessId ? int.TryParse(number, NumberStyles.None, CultureInfo.InvariantCulture, out int own) && own > counter : !Runs(id);
    }

    private static bool Runs(int process)
    {
        try
        {
            using Process running = Process.GetProcessById(process);
            return true;
        }
        catch (ArgumentException)
        {
            return false;
        }
    }

    private static string Make(string folderName, string kind) =>
        string.Create(CultureInfo.InvariantCulture, $".{folderName}{kind}{Machine}-{Environment.ProcessId}-{Interlocked.Increment(ref counter)}");

    private static bool IsId(ReadOnlySpan<char> id) => !id.IsEmpty && !id.ContainsAnyExcept(IdCharacters);
}
