using System.Text.RegularExpressions;

namespace Dewstone.Jobs.Comparison;

/// <summary>A finding without its place in a file, which a remark or a blank line may move.</summary>
/// <param name="Code">Code.</param>
/// <param name="Level">error, warning or note.</param>
/// <param name="Message">What was found.</param>
/// <param name="Accepted">Whether it was released.</param>
public sealed partial record ComparedFinding(string Code, string Level, string Message, bool Accepted)
{
    /// <summary>Whether another says the same of the same thing, whatever that thing is called.</summary>
    /// <param name="other">The other.</param>
    /// <returns>True when code, level, release and figures agree.</returns>
    public bool SaysTheSameAs(ComparedFinding other)
    {
        ArgumentNullException.ThrowIfNull(other);
        return (Code, Level, Accepted) == (other.Code, other.Level, other.Accepted) && Unnamed(Message) == Unnamed(other.Message);
    }

    private static string Unnamed(string message) => Quoted().Replace(message, "\"\"");

    [GeneratedRegex("\"[^\"]*\"|`[^`]*`")]
    private static partial Regex Quoted();
}
