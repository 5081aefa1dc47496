namespace Dewstone.Model.Description;

/// <summary>D = AtSaturation x exp(Exponent x (s - 1)).</summary>
public sealed record ExponentialLaw : WettingLaw;
