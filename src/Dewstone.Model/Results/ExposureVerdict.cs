namespace Dewstone.Model.Results;

/// <summary>How a unit's concrete stands to limits of a code; a note, never a requirement.</summary>
/// <param name="Rule">The limits.</param>
/// <param name="Met">Whether mean water/cement, mean strength and cement keep all of them.</param>
public sealed record ExposureVerdict(ExposureRule Rule, bool Met);
