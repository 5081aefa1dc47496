namespace Dewstone.Reading.Tests;

/// <summary>The sample files of the manual, laid out as their paths say.</summary>
internal static class SampleFiles
{
    public static string Folder { get; } = Path.Combine(AppContext.BaseDirectory, "Samples", "wrackline-bay");

    public static string Unit { get; } = Path.Combine(Folder, "units", "wrack-block.unit.yaml");

    public static string Mix { get; } = Path.Combine(Folder, "mixes", "estuary.mix.yaml");

    public static string Printer { get; } = Path.Combine(Folder, "printers", "yard.printer.yaml");

    public static string Site { get; } = Path.Combine(Folder, "sites", "wrackline-shoal.site.yaml");

    public static string Order { get; } = Path.Combine(Folder, "orders", "spring.order.yaml");

    public static string Needles { get; } = Path.Combine(Folder, "printers", "yard.needles.csv");
}
