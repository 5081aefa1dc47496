using Dewstone.Model.Description;
using Dewstone.Model.Diagnostics;
using Dewstone.Model.Quantities;
using Dewstone.Reading.Binding;
using Dewstone.Reading.Quantities;

namespace Dewstone.Reading.Schema;

/// <summary>Key table of a printer.</summary>
internal static class PrinterTable
{
    private static readonly QuantityForm<Length> BinSide = Forms.Length("100 mm", "20 m", "1.2 m");

    private static readonly KeyOf<Length[]> BinSize =
        Key.Must("size", new RowForm<Length[]>("the inner sides [x, y]", "[1.2 m, 1.2 m]", v => [(Length)v[0], (Length)v[1]], BinSide,
            BinSide), "inner size in plan");

    private static readonly KeyOf<Length> BinHeight = Key.Must("height", Forms.Length("50 mm", "20 m", "1.1 m"), "inner height");

    private static readonly TableForm<Bin> BinTable = new("a bin", [BinSize, BinHeight],
        bound => new Bin(bound.Get(BinSize)[0], bound.Get(BinSize)[1], bound.Get(BinHeight)));

    private static readonly KeyOf<Length> Pitch =
        Key.Must("pitch", Forms.Length("5 mm", "500 mm", "50 mm"), "distance between neighbouring positions");
    private static readonly KeyOf<Length> Layer = Key.Must("layer", Forms.Length("5 mm", "500 mm", "50 mm"), "height of a layer");
    private static readonly QuantityForm<Length> FirstAt = Forms.Length("0 mm", "20 m", "25 mm");

    private static readonly KeyOf<Length[]> Origin =
        Key.Must("origin", new RowForm<Length[]>("a position [x, y]", "[25 mm, 25 mm]", v => [(Length)v[0], (Length)v[1]], FirstAt,
            FirstAt), "first position, from the inner corner of the bin");

    private static readonly KeyOf<int> Under =
        Key.May("under", Forms.Counted(QuantityKinds.Layers, "0 layers", "100 layers", "1 layer"), "loose layers spread below the unit",
            fallback: "1 layer", starter: true);

    private static readonly TableForm<NeedleGrid> GridTable = new("a grid", [Pitch, Layer, Origin, Under],
        bound => new NeedleGrid
        {
            Pitch = bound.Get(Pitch),
            LayerHeight = bound.Get(Layer),
            OriginX = bound.Get(Origin)[0],
            OriginY = bound.Get(Origin)[1],
            UnderLayers = bound.Get(Under),
        },
        CheckGrid);

    private static readonly KeyOf<int> Columns = Key.Must("columns", Forms.Whole(1, 2000, "24"), "needles along x");
    private static readonly KeyOf<int> Rows = Key.Must("rows", Forms.Whole(1, 2000, "24"), "needles along y");

    private static readonly KeyOf<bool> LayerShift =
        Key.May("layer_shift", new WordForm<bool>(("half pitch", true), ("none", false)), "whether every other layer can be shifted",
            fallback: "none", starter: true);

    private static readonly TableForm<Head> HeadTable = new("a head", [Columns, Rows, LayerShift],
        bound => new Head { Columns = bound.Get(Columns), Rows = bound.Get(Rows), CanShiftLayers = bound.Get(LayerShift) });

    private static readonly QuantityForm<Volume> DoseForm = Forms.Volume("0.001 mL", "10 L", "2 mL");
    private static readonly KeyOf<Length> TipDepth =
        Key.Must("tip_depth", Forms.Length("0 mm", "500 mm", "25 mm"), "depth of the tip below the top of the layer");
    private static readonly KeyOf<FlowRate> NeedleFlow =
        Key.Must("flow", Forms.Flow("0.001 mL/s", "10 L/s", "4 mL/s"), "flow while dosing");
    private static readonly KeyOf<Volume> Least = Key.Must("least", DoseForm, "least dose");
    private static readonly KeyOf<Volume> Most = Key.Must("most", DoseForm, "greatest dose", "44 mL");
    private static readonly KeyOf<Volume> Step = Key.Must("step", DoseForm, "pump step", "0.1 mL");
    private static readonly KeyOf<double> Repeatability =
        Key.May("repeatability", Forms.ShareOf("0 %", "50 %", "2 %"), "one standard deviation of a dose", fallback: "0 %", starter: true);
    private static readonly KeyOf<double> Drift =
        Key.May("drift", Forms.ShareOf("0 %", "50 %", "5 %"), "drift to be expected between checks", fallback: "0 %", starter: true);

    private static readonly TableForm<Needle> NeedleForm = new("a needle", [TipDepth, NeedleFlow, Least, Most, Step, Repeatability, Drift],
        bound => new Needle
        {
            TipDepth = bound.Get(TipDepth),
            Flow = bound.Get(NeedleFlow),
            Least = bound.Get(Least),
            Most = bound.Get(Most),
            Step = bound.Get(Step),
            Repeatability = bound.Get(Repeatability),
            Drift = bound.Get(Drift),
        },
        bound =>
        {
            Rules.InOrder(bound, Least, Most);
            Rules.InOrder(bound, Step, Most);
        });

    private static readonly KeyOf<string> Name = Key.Must("name", Forms.Name, "name for people", "Yard printer");
    private static readonly KeyOf<Bin> BinKey = Key.Must("bin", BinTable, "the container of the print bed");
    private static readonly KeyOf<NeedleGrid> Grid = Key.Must("grid", GridTable, "needle positions over the bin");
    private static readonly KeyOf<Head> HeadKey =
        Key.Must("head", HeadTable, "needles of the head; a head smaller than the grid works from several stations");
    private static readonly KeyOf<Needle> NeedleKey = Key.Must("needle", NeedleForm, "what one needle can do");
    private static readonly KeyOf<Supply> SupplyKey = Key.Must("supply", MachineTables.Supply, "water supply");
    private static readonly KeyOf<MachineTiming> Timing = Key.Must("timing", MachineTables.Timing, "times of the machine's actions");
    private static readonly KeyOf<Flush> FlushKey =
        Key.May("flush", MachineTables.Flush, "flushing of the needles against setting; left out, they are never flushed", starter: true);
    private static readonly KeyOf<LooseMixHandling> LooseMix =
        Key.Must("loose_mix", MachineTables.LooseMix, "what becomes of loose mix at dig-out");
    private static readonly KeyOf<Mass> Lift = Key.May("lift", MachineTables.Lift, "what the yard can lift", starter: true);
    private static readonly KeyOf<string> Needles =
        Key.May("needles", Forms.File, "table of the needles as calibrated", "yard.needles.csv");

    /// <summary>A printer's file.</summary>
    public static readonly TableForm<PrinterFile> Table = new("a printer",
        [Name, BinKey, Grid, HeadKey, NeedleKey, SupplyKey, Timing, FlushKey, LooseMix, Lift, Needles],
        bound => new PrinterFile(
            new Printer
            {
                Name = bound.Get(Name),
                Bin = bound.Get(BinKey),
                Grid = bound.Get(Grid),
                Head = bound.Get(HeadKey),
                Needle = bound.Get(NeedleKey),
                Supply = bound.Get(SupplyKey),
                Timing = bound.Get(Timing),
                Flush = bound.MaybeOf(FlushKey),
                LooseMix = bound.Get(LooseMix),
                MaxLift = bound.Maybe(Lift),
            },
            bound.MaybeOf(Needles)),
        Check);

    private static void Check(Bound bound)
    {
        if (bound.Has(Grid, out NeedleGrid? grid) && bound.Has(NeedleKey, out Needle? needle) && needle.TipDepth > grid.LayerHeight)
        {
            bound.Report(DescriptionFindings.TipOutsideLayer, "needle.tip_depth",
                $"the tip stands {Rules.Show(needle.TipDepth.Metres)} deep in a layer of {Rules.Show(grid.LayerHeight.Metres)}",
                $"make it at most {Rules.Show(grid.LayerHeight.Metres)}; half the layer is usual");
        }
    }

    private static void CheckGrid(Bound bound)
    {
        if (bound.Has(Pitch, out Length pitch))
        {
            CheckMicrometres(bound, Pitch.Name, pitch);
        }

        if (bound.Has(Layer, out Length layer))
        {
            CheckMicrometres(bound, Layer.Name, layer);
        }

        if (bound.Has(Origin, out Length[]? origin))
        {
            CheckMicrometres(bound, Origin.Name + "[0]", origin[0]);
            CheckMicrometres(bound, Origin.Name + "[1]", origin[1]);
        }
    }

    private static void CheckMicrometres(Bound bound, string key, Length length)
    {
        // A whole number of micrometres given in inches or metres is off by its last bits only.
        double micrometres = length.Metres * 1e6;
        if (Math.Abs(micrometres - Math.Round(micrometres)) > 1e-6)
        {
            bound.Report(DescriptionFindings.FinerThanGrid, key, $"{micrometres / 1000.0} mm is not a whole number of micrometres",
                $"write {Math.Round(micrometres) / 1000.0} mm");
        }
    }
}
