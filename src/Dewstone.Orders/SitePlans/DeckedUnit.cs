namespace Dewstone.Orders.SitePlans;

/// <summary>A unit on deck.</summary>
/// <param name="Unit">The unit.</param>
/// <param name="DeckPlace">Place on deck, from 1.</param>
/// <param name="Level">1 on deck, 2 on the unit below.</param>
public sealed record DeckedUnit(SeaUnit Unit, int DeckPlace, int Level);
