using Dewstone.Model.Quantities;

namespace Dewstone.Model.Description;

/// <summary>
/// A rectangular cross-section with optional rounded corners. For a tunnel along x the width runs along y and the height along z;
/// along y: width x, height z; along z: width x, height y.
/// </summary>
/// <param name="Width">Width.</param>
/// <param name="Height">Height.</param>
/// <param name="Rounding">Radius of the corners; at most half the smaller side.</param>
public sealed record RectangularSection(Length Width, Length Height, Length Rounding) : Section;
