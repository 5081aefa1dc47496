using System.CommandLine;
using Dewstone.Reading.Binding;

namespace Dewstone.Cli.Commands;

/// <summary>The words on the command line cannot be carried out; the message says what would be right.</summary>
/// <param name="message">One line.</param>
internal sealed class UsageException(string message) : Exception(message)
{
    /// <summary>Refuses a word that stands where a file is due and begins with a dash.</summary>
    /// <param name="word">The word.</param>
    /// <param name="parse">The parsed words.</param>
    /// <exception cref="UsageException">The word begins with a dash.</exception>
    public static void ThrowIfOption(string word, ParseResult parse)
    {
        if (word.StartsWith('-'))
        {
            string meant = Spelling.Nearest(word, parse.CommandResult.Command.Options.Select(option => option.Name)) is { } near ? $"did you mean '{near}'? " : "";
            throw new UsageException($"unknown option '{word}'; {meant}put ./ before the name of a file that begins with a dash.");
        }
    }
}
