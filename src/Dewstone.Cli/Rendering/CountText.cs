namespace Dewstone.Cli.Rendering;

/// <summary>A number of things in words.</summary>
internal static class CountText
{
    /// <summary>Number and word.</summary>
    /// <param name="number">How many.</param>
    /// <param name="one">The word for one of them.</param>
    /// <returns>Such as <c>1 bin</c> or <c>2 bins</c>.</returns>
    public static string Of(int number, string one) => $"{number} {one}{(number == 1 ? "" : "s")}";
}
