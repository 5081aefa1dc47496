namespace Dewstone.Reading.Job;

/// <summary>A requirement as a manifest holds it.</summary>
/// <param name="Id">Id from the one catalogue.</param>
/// <param name="Feature">Name of the feature concerned; empty for the whole unit.</param>
/// <param name="Quantity">What is measured.</param>
/// <param name="Op">Comparison.</param>
/// <param name="Limit">Limit.</param>
/// <param name="Value">Value found.</param>
/// <param name="Margin">Room left, positive when met.</param>
/// <param name="Unit">Unit of limit, value and margin.</param>
/// <param name="Met">Whether it is met.</param>
public readonly record struct ClaimedRequirement(
    string Id, string Feature, string Quantity, string Op, double Limit, double Value, double Margin, string Unit, bool Met);
