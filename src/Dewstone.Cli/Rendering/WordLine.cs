using System.Text;
using Dewstone.Model.Results;

namespace Dewstone.Cli.Rendering;

/// <summary>Lines of a word in a column of its own and what is told of it.</summary>
internal static class WordLine
{
    /// <summary>Adds a line.</summary>
    /// <param name="text">Gets it.</param>
    /// <param name="word">The word.</param>
    /// <param name="what">What is told.</param>
    public static void Add(StringBuilder text, string word, string what) => text.Append($"  {word,-16} {what}\n");

    /// <summary>What a requirement is about, what came out and what was asked.</summary>
    /// <param name="r">The requirement.</param>
    /// <returns>A phrase.</returns>
    public static string Of(RequirementResult r) =>
        $"{(r.Feature.Length == 0 ? r.Quantity : $"{r.Quantity} of {r.Feature}")}: {Figure(r.Value, r.Unit)}, asked {r.Op} {Figure(r.Limit, r.Unit)}";

    /// <summary>How a requirement came out.</summary>
    /// <param name="r">The requirement.</param>
    /// <returns>A word or two.</returns>
    public static string Verdict(RequirementResult r) => r.Met ? "met" : r.AcceptedBecause is null ? "NOT MET" : "released";

    /// <summary>A figure of a requirement, for people.</summary>
    /// <param name="value">Figure.</param>
    /// <param name="unit">Its unit as in files.</param>
    /// <returns>Figure and unit.</returns>
    public static string Figure(double value, string unit) => unit switch
    {
        "1" => $"{value:0.###}",
        "%" => $"{value:0.0} %",
        "m" => $"{value * 1000.0:0} mm",
        _ => $"{value:0.#} {unit}",
    };
}
