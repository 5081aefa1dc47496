namespace Dewstone.Model.Description;

/// <summary>Where the figures of a mix come from.</summary>
/// <param name="Kind">How they were got.</param>
/// <param name="Reference">Calibration file or handbook title; empty when assumed.</param>
public sealed record MixOrigin(MixOriginKind Kind, string Reference);
