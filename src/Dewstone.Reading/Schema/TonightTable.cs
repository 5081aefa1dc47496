using Dewstone.Model.Description;
using Dewstone.Model.Quantities;
using Dewstone.Reading.Binding;

namespace Dewstone.Reading.Schema;

/// <summary>Key table of what was measured on the night.</summary>
internal static class TonightTable
{
    private static readonly KeyOf<string> Printer =
        Key.May("printer", Forms.File, "file of the printer in use", "../printers/yard.printer.yaml");
    private static readonly KeyOf<string> Needles =
        Key.May("needles", Forms.File, "table of the needles as calibrated", "../printers/yard.needles.csv");
    private static readonly KeyOf<string> MixBatch = Key.May("mix_batch", Forms.Name, "label of the mix batch", "B-0417", starter: true);
    private static readonly KeyOf<Density> LooseDensity = Key.May("loose_density", Forms.Density("200 kg/m3", "5000 kg/m3", "1690 kg/m3"),
        "density of the bed as spread tonight", starter: true);
    private static readonly KeyOf<Temperature> Bed =
        Key.May("bed_temperature", Forms.Temperature("-5 degC", "60 degC", "14 degC"), "of the bed; left out, 20 degC", starter: true);
    private static readonly KeyOf<Temperature> Liquid =
        Key.May("liquid_temperature", Forms.Temperature("-5 degC", "60 degC", "12 degC"), "of the liquid", starter: true);
    private static readonly KeyOf<Temperature> Curing =
        Key.May("curing_temperature", Forms.Temperature("-5 degC", "60 degC", "10 degC"), "while curing; left out, 15 degC", starter: true);

    /// <summary>A night's file.</summary>
    public static readonly TableForm<TonightFile> Table = new("a tonight", [Printer, Needles, MixBatch, LooseDensity, Bed, Liquid, Curing],
        bound => new TonightFile(
            new Tonight
            {
                MixBatch = bound.MaybeOf(MixBatch) ?? "",
                LooseDensity = bound.Maybe(LooseDensity),
                BedTemperature = bound.Maybe(Bed),
                LiquidTemperature = bound.Maybe(Liquid),
                CuringTemperature = bound.Maybe(Curing),
            },
            bound.MaybeOf(Printer),
            bound.MaybeOf(Needles)));
}
