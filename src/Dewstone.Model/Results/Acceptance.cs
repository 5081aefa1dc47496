namespace Dewstone.Model.Results;

/// <summary>A finding the user released.</summary>
/// <param name="Code">Its code.</param>
/// <param name="Reason">Why.</param>
public sealed record Acceptance(string Code, string Reason);
