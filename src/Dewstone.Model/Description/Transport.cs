using Dewstone.Model.Quantities;

namespace Dewstone.Model.Description;

/// <summary>Transport to the site.</summary>
/// <param name="Payload">Greatest mass of a trip.</param>
/// <param name="DeckPlaces">Places on deck.</param>
/// <param name="Stack">How many units may stand on each other.</param>
public sealed record Transport(Mass Payload, int DeckPlaces, int Stack);
