using System.Diagnostics;
using System.Globalization;
using System.Security.Cryptography;
using System.Text;

namespace Dewstone.Orders.Batches;

/// <summary>Hidden names that no two programs share: <c>.NAME.tmp-MACHINE-PROCESS-BEGIN-RANDOM</c>, in hexadecimal after the first hyphen.</summary>
internal static class TemporaryName
{
    private const string Mark = ".tmp-";
    private const int BeginField = 19;
    private static readonly string Machine = Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(Environment.MachineName)).AsSpan(0, 4));

    /// <summary>A new name.</summary>
    /// <param name="name">Name the file is to have.</param>
    public static string New(string name)
    {
        string random = Convert.ToHexStringLower(Encoding.ASCII.GetBytes(Path.GetRandomFileName()).AsSpan(0, 8));
        return string.Create(CultureInfo.InvariantCulture, $".{name}{Mark}{Machine}-{Environment.ProcessId:x}-{BeginOf(Environment.ProcessId):x}-{random}");
    }

    /// <summary>Whether a name is that of a temporary.</summary>
    public static bool Is(string name) => Parts(name) is not null;

    /// <summary>Whether a temporary was left by a program of this machine that runs no more. False when that cannot be told.</summary>
    public static bool IsOrphan(string name) =>
        Parts(name) is [var machine, var process, var begin, _] && machine == Machine
        && int.TryParse(process, NumberStyles.AllowHexSpecifier, CultureInfo.InvariantCulture, out int id)
        && long.TryParse(begin, NumberStyles.AllowHexSpecifier, CultureInfo.InvariantCulture, out long then) && BeginOf(id) != then;

    private static string[]? Parts(string name)
    {
        int at = name.LastIndexOf(Mark, StringComparison.Ordinal);
        string[] parts = at > 0 && name[0] == '.' ? name[(at + Mark.Length)..].Split('-') : [];
        return parts.Length == 4 ? parts : null;
    }

    // Numbers of processes are used again; with the time of its begin, in ticks since the machine's, one is told from the next (proc(5), stat, field 22).
    private static long BeginOf(int process)
    {
        try
        {
            if (OperatingSystem.IsLinux())
            {
                string text = File.ReadAllText($"/proc/{process}/stat");
                return long.Parse(text[(text.LastIndexOf(')') + 2)..].Split(' ')[BeginField], CultureInfo.InvariantCulture);
            }

            using Process running = Process.GetProcessById(process);
            return 1;
        }
        catch (Exception fault) when (fault is ArgumentException or IOException or UnauthorizedAccessException)
        {
            return 0;
        }
    }
}
