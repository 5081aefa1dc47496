using Dewstone.Model.Quantities;

namespace Dewstone.Model.Description;

/// <summary>Flushing of the needles against setting.</summary>
/// <param name="Time">Time the needles run, at their flow.</param>
/// <param name="EveryLayers">After how many layers.</param>
public sealed record Flush(Duration Time, int EveryLayers);
