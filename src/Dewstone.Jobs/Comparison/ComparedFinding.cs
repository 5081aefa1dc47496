namespace Dewstone.Jobs.Comparison;

/// <summary>A finding without its place in a file, which a remark or a blank line may move.</summary>
/// <param name="Code">Code.</param>
/// <param name="Level">error, warning or note.</param>
/// <param name="Message">What was found.</param>
/// <param name="Accepted">Whether it was released.</param>
public sealed record ComparedFinding(string Code, string Level, string Message, bool Accepted);
