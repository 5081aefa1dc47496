using System.Text;
using Dewstone.Model.Description;
using Dewstone.Model.Diagnostics;
using Dewstone.Model.Results;
using Dewstone.Reading;

namespace Dewstone.Cli.Rendering;

/// <summary>The limits card as text of 80 columns.</summary>
internal static class LimitsText
{
    private const int WordColumns = 42;
    private const int FigureColumns = 18;

    /// <summary>The card, or the findings that forbid it.</summary>
    /// <param name="given">Mix and printer; null when they could not be read.</param>
    /// <param name="card">The card; null when there is none.</param>
    /// <param name="findings">All findings.</param>
    /// <param name="colour">Whether to colour levels.</param>
    /// <param name="quiet">Leave out notes.</param>
    /// <returns>Plain text.</returns>
    public static string Of(MixOnPrinter? given, LimitsCard? card, IReadOnlyList<Diagnostic> findings, bool colour, bool quiet)
    {
        StringBuilder text = new(FindingText.Of(findings, colour, quiet));

        if (card is null || given is null)
        {
            return text.Append("no limits card: mend what stands above\n").ToString();
        }

        text.Append(text.Length > 0 ? "\n" : "").Append($"{card.Mix} on {card.Printer}: pitch {Mm(card.PitchMetres)} mm, layer {Mm(card.LayerMetres)} mm\n");
        text.Append($"Bed {card.BedTemperature.Celsius:0.#} degC, {card.LooseDensity.KilogramsPerCubicMetre:0} kg/m3 as spread; water moves for {card.WindowSeconds:0} s.\n");
        if (given.Mix.Origin.Kind == MixOriginKind.Assumed)
        {
            text.Append("The wetting figures of this mix are assumed, not measured: calibrate it before\nrelying on this card.\n");
        }

        Sizes(text, card);
        Openings(text, card);
        DoseWindowText.Add(text, card.Window);
        return text.ToString();
    }

    private static void Sizes(StringBuilder text, LimitsCard card)
    {
        text.Append("\nSmallest sizes to draw, mm: at a lucky / at a bad place against the needles\n");
        Row(text, "", card.Layerings.Select(way => way.Shifted ? "shifted layers" : "straight layers"));
        Holes(text, card, "hole along x or y", way => way.LevelHoles);
        Holes(text, card, "hole along z", way => way.UprightHoles);
        Row(text, "upright wall, sound from", card.Layerings.Select(way => Pair(way.UprightWalls.Sound, Largest(way.UprightWalls.Tried.Select(wall => wall.DrawnMetres)))));
        Row(text, "level slab, sound from", card.Layerings.Select(way => Pair(way.Slabs.Sound, Largest(way.Slabs.Tried.Select(wall => wall.DrawnMetres)))));
        text.Append("  Sound: the middle third sets, and everywhere at least half of the thickness.\n");
        if (card.Layerings.Any(way => way.LevelHoles.Open.BestMetres < card.PitchMetres || way.UprightHoles.Open.BestMetres < card.PitchMetres))
        {
            text.Append($"  An opening narrower than the pitch, {Mm(card.PitchMetres)} mm, is refused all the same (DW2005).\n");
        }
    }

    private static void Holes(StringBuilder text, LimitsCard card, string word, Func<LayeringLimits, HoleLimits> holes)
    {
        double largest = Largest(card.Layerings.SelectMany(way => holes(way).Tried.Select(hole => hole.DrawnMetres)));
        Row(text, $"{word}, stays open from", card.Layerings.Select(way => Pair(holes(way).Open, largest)));
        Row(text, $"{word}, {100.0 * LimitsCard.WideShare:0} % clear from", card.Layerings.Select(way => Pair(holes(way).Wide, largest)));
    }

    private static void Openings(StringBuilder text, LimitsCard card)
    {
        double[] drawn = [.. card.Layerings[0].LevelHoles.Tried.Select(hole => hole.DrawnMetres).Distinct().Where(size => size >= card.PitchMetres - 1e-9)];
        text.Append("\nWhat stays clear of a drawn hole, mm, at a bad place\n");
        Line("drawn diameter", drawn.Select(Mm));
        foreach (LayeringLimits way in card.Layerings)
        {
            string layers = way.Shifted ? "shifted" : "straight";
            Line($"along x or y, {layers}", drawn.Select(size => Mm(Worst(way.LevelHoles, size))));
            Line($"along z, {layers}", drawn.Select(size => Mm(Worst(way.UprightHoles, size))));
        }

        void Line(string word, IEnumerable<string> figures) =>
            text.Append($"  {word,-28}{string.Concat(figures.Select(figure => $"{figure,8}"))}\n");
    }

    private static double Worst(HoleLimits holes, double drawn) => holes.Tried.Where(hole => hole.DrawnMetres == drawn).Min(hole => hole.ClearMetres);

    private static void Row(StringBuilder text, string word, IEnumerable<string> figures) =>
        text.Append($"  {word,-WordColumns}{string.Concat(figures.Select(figure => $"{figure,FigureColumns}"))}".TrimEnd()).Append('\n');

    private static string Pair(SizeLimit limit, double largest) => $"{Or(limit.BestMetres)} / {Or(limit.WorstMetres)}"
        .Replace("over", $"over {Mm(largest)}", StringComparison.Ordinal);

    private static string Or(double? metres) => metres is { } found ? Mm(found) : "over";

    private static double Largest(IEnumerable<double> sizes) => sizes.Max();

    private static string Mm(double metres) => $"{metres * 1000.0:0}";
}
