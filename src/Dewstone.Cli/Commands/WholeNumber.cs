using System.CommandLine;
using System.Globalization;

namespace Dewstone.Cli.Commands;

/// <summary>Options that take a whole number within limits.</summary>
internal static class WholeNumber
{
    /// <summary>Such an option.</summary>
    /// <param name="name">Its word.</param>
    /// <param name="description">What it does.</param>
    /// <param name="least">Least value.</param>
    /// <param name="most">Most.</param>
    /// <returns>The option; null when it was not given.</returns>
    public static Option<int?> Option(string name, string description, int least, int most) => new(name)
    {
        Description = description,
        HelpName = "N",
        CustomParser = result =>
        {
            string text = result.Tokens[^1].Value;
            if (int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out int value) && value >= least && value <= most)
            {
                return value;
            }

            result.AddError($"{name} takes a whole number from {least} to {most}, not '{text}'.");
            return null;
        },
    };
}
