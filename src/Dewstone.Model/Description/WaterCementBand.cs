namespace Dewstone.Model.Description;

/// <summary>Band of water/cement ratio by mass, and the share of the hardened volume that must lie in it.</summary>
/// <param name="Min">Lower end, 1.</param>
/// <param name="Max">Upper end, 1.</param>
/// <param name="Share">Least share of the hardened volume within, 0 to 1.</param>
public sealed record WaterCementBand(double Min, double Max, double Share);
