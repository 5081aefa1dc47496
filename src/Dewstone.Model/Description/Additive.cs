namespace Dewstone.Model.Description;

/// <summary>Something stirred into the liquid.</summary>
/// <param name="Name">Name for people.</param>
/// <param name="GramsPerLitre">Grams per litre of liquid.</param>
public sealed record Additive(string Name, double GramsPerLitre);
