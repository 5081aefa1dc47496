using Dewstone.Model.Description;

namespace Dewstone.Model.Results;

/// <summary>One place on the needle grid that registration tried.</summary>
/// <param name="Wish">The place, complete.</param>
/// <param name="ObjectiveLitres">Least objective of the dose correction there, litres, after so many solves on the coarse cells.</param>
/// <param name="Solves">Solves it was given; objectives after different numbers of solves do not compare.</param>
/// <param name="Layers">Layers to spread there.</param>
public sealed record RegistrationTrial(PlacementWish Wish, double ObjectiveLitres, int Solves, int Layers);
