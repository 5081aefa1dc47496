using Dewstone.Model.Quantities;

namespace Dewstone.Model.Description;

/// <summary>A round cross-section.</summary>
/// <param name="Diameter">Diameter.</param>
public sealed record RoundSection(Length Diameter) : Section;
