namespace Dewstone.Cli.Tests.Fuzzing;

/// <summary>One damaged input and the words it is given to.</summary>
/// <param name="Name">What was done, for the message of a failure.</param>
/// <param name="Words">Words after the program's name, run in <c>work</c>.</param>
internal sealed record FuzzCase(string Name, string[] Words)
{
    /// <summary>Paths under which the case may write.</summary>
    public required IReadOnlyList<string> MayWrite { get; init; }

    public override string ToString() => $"{Name}: dewstone {string.Join(' ', Words.Select(word => word.Length > 120 ? word[..120] + "..." : word))}";
}
