using Dewstone.Model.Quantities;

namespace Dewstone.Reading.Schema;

/// <summary>Coordinates across a direction, as far as they are given.</summary>
/// <param name="X">x.</param>
/// <param name="Y">y.</param>
/// <param name="Z">z.</param>
internal sealed record Across(Length? X, Length? Y, Length? Z)
{
    /// <summary>The point, with 0 for what is not given.</summary>
    /// <returns>Point in the unit frame, m.</returns>
    public Point3 ToPoint() => new(X?.Metres ?? 0.0, Y?.Metres ?? 0.0, Z?.Metres ?? 0.0);
}
