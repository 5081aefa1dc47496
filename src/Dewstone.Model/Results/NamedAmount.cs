namespace Dewstone.Model.Results;

/// <summary>An amount with a name; its unit is said where it is used.</summary>
/// <param name="Name">Name.</param>
/// <param name="Amount">Amount.</param>
public sealed record NamedAmount(string Name, double Amount);
