namespace Dewstone.Model.Description;

/// <summary>D = AtSaturation x s^Exponent.</summary>
public sealed record PowerLaw : WettingLaw;
