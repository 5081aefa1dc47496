using Dewstone.Model.Quantities;

namespace Dewstone.Model.Description;

/// <summary>A range along an axis.</summary>
/// <param name="From">Lower end.</param>
/// <param name="To">Upper end.</param>
public sealed record Band(Length From, Length To);
