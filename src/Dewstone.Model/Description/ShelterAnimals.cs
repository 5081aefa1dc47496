using Dewstone.Model.Quantities;

namespace Dewstone.Model.Description;

/// <summary>Animals it should shelter, and from what.</summary>
/// <param name="Sheltered">Body depth of the sheltered animal.</param>
/// <param name="Predator">Body depth of the predator.</param>
public sealed record ShelterAnimals(Length Sheltered, Length Predator);
