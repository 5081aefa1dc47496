using Dewstone.Model.Description;
using Dewstone.Model.Quantities;
using Dewstone.Reading.Binding;

namespace Dewstone.Reading.Schema;

/// <summary>Key table of what the predicted solid is held against.</summary>
internal static class RequirementTable
{
    private static readonly KeyOf<Mass> MassLimit = Key.Must("max", Forms.Mass("0 kg", "100 t", "1150 kg"), "greatest mass");
    private static readonly KeyOf<Length> LengthLimit = Key.Must("min", Forms.Length("1 mm", "5 m", "60 mm"), "least length");
    private static readonly KeyOf<double> RatioLimit = Key.Must("min", new NumberForm(0, 1, "0.80"), "least ratio");
    private static readonly KeyOf<int> CountLimit = Key.Must("max", Forms.Whole(0, 1_000_000, "0"), "greatest number");
    private static readonly KeyOf<double> Lower = Key.Must("min", new NumberForm(0, 2, "0.25"), "lower end, by mass");
    private static readonly KeyOf<double> Upper = Key.Must("max", new NumberForm(0, 2, "0.60"), "upper end, by mass");
    private static readonly KeyOf<double> Share = Key.Must("share", Forms.Share, "least share of the hardened volume within");

    private static readonly TableForm<Mass> AtMostMass = new("a limit", [MassLimit], bound => bound.Get(MassLimit));
    private static readonly TableForm<Length> AtLeastLength = new("a limit", [LengthLimit], bound => bound.Get(LengthLimit));
    private static readonly TableForm<double> AtLeastRatio = new("a limit", [RatioLimit], bound => bound.Get(RatioLimit));
    private static readonly TableForm<int> AtMostCount = new("a limit", [CountLimit], bound => bound.Get(CountLimit));

    private static readonly TableForm<WaterCementBand> BandTable = new("a band of water/cement", [Lower, Upper, Share],
        bound => new WaterCementBand(bound.Get(Lower), bound.Get(Upper), bound.Get(Share)),
        bound => Rules.InOrder(bound, Lower, Upper));

    private static readonly KeyOf<Mass> MaxMass = Key.May("mass", AtMostMass, "mass on the hook at dig-out");
    private static readonly KeyOf<Length> MinWall = Key.May("wall", AtLeastLength, "least neck anywhere in the solid");
    private static readonly KeyOf<WaterCementBand> WaterCement =
        Key.May("water_cement", BandTable, "band of water/cement by mass in the hardened volume");
    private static readonly KeyOf<double> MinShapeMatch =
        Key.May("shape_match", AtLeastRatio, "overlap of predicted and wanted solid (intersection over union)");
    private static readonly KeyOf<int> MaxLoosePieces = Key.May("loose_pieces", AtMostCount, "pieces that hang on to nothing");
    private static readonly KeyOf<Mass> MaxTrappedMix =
        Key.May("trapped_mix", AtMostMass, "loose mix that cannot be got out", "{max: 2 kg}");

    /// <summary>Requirements.</summary>
    public static readonly TableForm<Requirements> Table = new("the requirements",
        [MaxMass, MinWall, WaterCement, MinShapeMatch, MaxLoosePieces, MaxTrappedMix],
        bound => new Requirements
        {
            MaxMass = bound.Maybe(MaxMass),
            MinWall = bound.Maybe(MinWall),
            WaterCement = bound.MaybeOf(WaterCement),
            MinShapeMatch = bound.Maybe(MinShapeMatch),
            MaxLoosePieces = bound.Maybe(MaxLoosePieces),
            MaxTrappedMix = bound.Maybe(MaxTrappedMix),
        });
}
