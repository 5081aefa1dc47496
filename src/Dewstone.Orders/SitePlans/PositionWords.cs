namespace Dewstone.Orders.SitePlans;

/// <summary>A position as people read it out.</summary>
internal static class PositionWords
{
    /// <summary>The words.</summary>
    /// <param name="latitudeDegrees">North positive.</param>
    /// <param name="longitudeDegrees">East positive.</param>
    /// <returns>Degrees and minutes to a thousandth, such as <c>41° 30.000' N, 30° 12.000' W</c>.</returns>
    public static string Of(double latitudeDegrees, double longitudeDegrees) =>
        $"{Part(latitudeDegrees, "N", "S")}, {Part(longitudeDegrees, "E", "W")}";

    private static string Part(double degrees, string positive, string negative)
    {
        long thousandths = (long)Math.Round(Math.Abs(degrees) * 60000.0);
        return $"{thousandths / 60000}° {thousandths % 60000 / 1000.0:00.000}' {(degrees < 0.0 ? negative : positive)}";
    }
}
