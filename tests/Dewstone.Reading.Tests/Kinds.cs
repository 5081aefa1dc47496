using Dewstone.Model.Diagnostics;

namespace Dewstone.Reading.Tests;

/// <summary>All kinds of description, for theories, and reading of any kind by its text.</summary>
internal static class Kinds
{
    public static IReadOnlyList<DescriptionKind> All { get; } = Enum.GetValues<DescriptionKind>();

    public static IReadOnlyList<Diagnostic> Findings(DescriptionKind kind, string text) => Read(kind, text).Findings;

    public static (object? Value, IReadOnlyList<Diagnostic> Findings) Read(DescriptionKind kind, string text)
    {
        string file = "a." + kind.ToString().ToLowerInvariant() + ".yaml";
        return kind switch
        {
            DescriptionKind.Unit => Both(DescriptionReader.UnitText(text, file)),
            DescriptionKind.Mix => Both(DescriptionReader.MixText(text, file)),
            DescriptionKind.Printer => Both(DescriptionReader.PrinterText(text, file)),
            DescriptionKind.Site => Both(DescriptionReader.SiteText(text, file)),
            DescriptionKind.Order => Both(DescriptionReader.OrderText(text, file)),
            _ => Both(DescriptionReader.TonightText(text, file)),
        };
    }

    private static (object? Value, IReadOnlyList<Diagnostic> Findings) Both<T>(FileReading<T> reading)
        where T : class => (reading.Value, reading.Diagnostics);
}
