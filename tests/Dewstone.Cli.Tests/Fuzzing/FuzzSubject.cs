using System.Security.Cryptography;
using System.Text;
using Dewstone.Jobs.Emission;

namespace Dewstone.Cli.Tests.Fuzzing;

/// <summary>A sound file that is damaged, and the commands that read it.</summary>
/// <param name="File">Its name in <c>yard</c>.</param>
/// <param name="Weight">How often it is chosen beside the others.</param>
/// <param name="Commands">Words of commands, apart by spaces, run in <c>work</c>.</param>
internal sealed record FuzzSubject(string File, int Weight, params string[] Commands)
{
    /// <summary>A file that is not there: named beside the damaged one, all is read and nothing computed, which would take long.</summary>
    public const string Missing = "missing.csv";

    /// <summary>Job folder whose hashes can be made to agree with the damaged file, so that it is read further.</summary>
    public string? Job { get; init; }

    /// <summary>Folder below <c>yard</c> that the commands may write into.</summary>
    public string? Output { get; init; }

    /// <summary>Damages a file of one of several subjects.</summary>
    public static FuzzCase Make(Dice dice, FuzzYard yard, IReadOnlyList<FuzzSubject> subjects)
    {
        int draw = dice.Below(subjects.Sum(subject => subject.Weight));
        FuzzSubject chosen = subjects.First(subject => (draw -= subject.Weight) < 0);
        return chosen.Damaged(dice, yard);
    }

    /// <summary>Asserts that every command takes the sound files, else the damaged ones would be refused for another reason.</summary>
    public static async Task AssertSound(FuzzYard yard, IReadOnlyList<FuzzSubject> subjects)
    {
        string before = Environment.CurrentDirectory;
        try
        {
            foreach (string command in subjects.SelectMany(subject => subject.Commands).Distinct().Where(command => !command.Contains(Missing, StringComparison.Ordinal)))
            {
                Environment.CurrentDirectory = yard.In("work");
                Words.Answer answer = await Words.Run(command.Split(' '));
                Assert.True(answer.Code is ExitCode.Done or ExitCode.No, $"{command}: {answer.Code} {answer.Output}{answer.Error}");
                yard.Restore(yard.Standing());
            }
        }
        finally
        {
            Environment.CurrentDirectory = before;
        }
    }

    private FuzzCase Damaged(Dice dice, FuzzYard yard)
    {
        string what = dice.OnceIn(40) ? Swap(dice, yard) : Change(dice, yard);
        string[] words = dice.Of(Commands).Split(' ');
        return new FuzzCase($"{File} {what}", dice.OnceIn(6) ? [.. words, "--json"] : words) { MayWrite = [yard.In("work", "out"), .. Output is null ? Array.Empty<string>() : [yard.In("yard", Output)]] };
    }

    private string Change(Dice dice, FuzzYard yard)
    {
        byte[] bytes = yard.Sound(File);
        bool isText = !bytes.AsSpan(0, Math.Min(bytes.Length, 2000)).Contains((byte)0);
        bool asText = isText && !dice.OnceIn(4);
        byte[] changed = asText ? Encoding.UTF8.GetBytes(TextMutation.Apply(dice, Encoding.UTF8.GetString(bytes))) : ByteMutation.Apply(dice, bytes);
        System.IO.File.WriteAllBytes(yard.In("yard", File), changed);
        if (Job is not null && !dice.OnceIn(4))
        {
            Sign(yard, bytes, changed);
            return "changed and signed";
        }

        return "changed";
    }

    // What is no file stands where a file should.
    private string Swap(Dice dice, FuzzYard yard)
    {
        string path = yard.In("yard", File);
        FuzzYard.Remove(path);
        string? target = dice.Of(["/dev/zero", "/dev/full", "loop", "away", "nowhere", "folder", null]);
        if (target is null)
        {
            return "removed";
        }

        System.IO.File.CreateSymbolicLink(path, target.StartsWith('/') ? target : yard.In("yard", target));
        return "made a link to " + target;
    }

    private void Sign(FuzzYard yard, byte[] before, byte[] after)
    {
        string core = yard.In("yard", Job!, JobCoreEmitter.Path), manifest = yard.In("yard", Job!, ManifestEmitter.Path);
        (string was, string now) = (Convert.ToHexStringLower(SHA256.HashData(before)), Convert.ToHexStringLower(SHA256.HashData(after)));
        if (System.IO.File.ReadAllText(core) is var text && text.Contains(was, StringComparison.Ordinal))
        {
            byte[] old = System.IO.File.ReadAllBytes(core);
            System.IO.File.WriteAllText(core, text.Replace(was, now, StringComparison.Ordinal));
            SignCore(manifest, old, System.IO.File.ReadAllBytes(core));
        }
        else if (File.EndsWith(JobCoreEmitter.Path, StringComparison.Ordinal))
        {
            SignCore(manifest, before, after);
        }

        Replace(manifest, was, now);
    }

    private static void SignCore(string manifest, byte[] before, byte[] after)
    {
        Replace(manifest, Convert.ToHexStringLower(SHA256.HashData(before)), Convert.ToHexStringLower(SHA256.HashData(after)));
        Replace(manifest, Fingerprint.Of(before).ToString(), Fingerprint.Of(after).ToString());
    }

    private static void Replace(string file, string from, string to)
    {
        string text = System.IO.File.ReadAllText(file);
        if (text.Contains(from, StringComparison.Ordinal))
        {
            System.IO.File.WriteAllText(file, text.Replace(from, to, StringComparison.Ordinal));
        }
    }
}
