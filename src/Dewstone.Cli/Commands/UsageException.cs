namespace Dewstone.Cli.Commands;

/// <summary>The words on the command line cannot be carried out; the message says what would be right.</summary>
/// <param name="message">One line.</param>
internal sealed class UsageException(string message) : Exception(message);
