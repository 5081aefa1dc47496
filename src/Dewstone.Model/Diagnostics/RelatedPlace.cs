namespace Dewstone.Model.Diagnostics;

/// <summary>A second place that helps to understand a finding.</summary>
/// <param name="Location">The place, when known.</param>
/// <param name="Key">The value concerned, resolved to a place later; null when <paramref name="Location"/> is given.</param>
/// <param name="Remark">What stands there.</param>
public sealed record RelatedPlace(SourceLocation? Location, KeyPath? Key, string Remark);
