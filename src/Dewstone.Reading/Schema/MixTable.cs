using Dewstone.Model.Description;
using Dewstone.Model.Diagnostics;
using Dewstone.Model.Quantities;
using Dewstone.Reading.Binding;
using Dewstone.Reading.Quantities;

namespace Dewstone.Reading.Schema;

/// <summary>Key table of a dry mix.</summary>
internal static class MixTable
{
    // Shares are written with few digits: thirds as 33.33 %.
    private const double SharesTolerance = 5e-4;

    private static readonly KeyOf<string> SolidName = Key.Must("name", Forms.Name, "name for people", "Portland cement");
    private static readonly KeyOf<double> Share = Key.Must("share", Forms.ShareOf("0 %", "100 %", "25 %"), "share by mass of the dry mix");
    private static readonly KeyOf<Density> GrainDensity =
        Key.Must("density", Forms.Density("200 kg/m3", "20000 kg/m3", "3150 kg/m3"), "density of its grains");
    private static readonly KeyOf<bool> Binder =
        Key.May("binder", Forms.Flag, "whether it counts as cement in water/cement", fallback: "false", starter: true);

    private static readonly KeyOf<double> Carbon =
        Key.May("co2", Forms.Plain(QuantityKinds.MassPerMass, "-5 kg/kg", "50 kg/kg", "0.86 kg/kg"), "carbon dioxide equivalent",
            fallback: "0 kg/kg", starter: true);

    private static readonly KeyOf<double> Price =
        Key.May("price", Forms.Plain(QuantityKinds.PricePerMass, "0 /kg", "10000 /kg", "0.16 /kg"), "price, in the currency of the mix",
            fallback: "0 /kg", starter: true);

    private static readonly KeyOf<double> Recycled =
        Key.May("recycled", Forms.ShareOf("0 %", "100 %", "40 %"), "share of it that is recycled", fallback: "0 %");

    private static readonly TableForm<Constituent> SolidTable =
        new("a solid", [SolidName, Share, GrainDensity, Binder, Recycled, Carbon, Price],
        bound => new Constituent
        {
            Name = bound.Get(SolidName),
            Share = bound.Get(Share),
            GrainDensity = bound.Get(GrainDensity),
            IsBinder = bound.Get(Binder),
            CarbonPerKilogram = bound.Get(Carbon),
            PricePerKilogram = bound.Get(Price),
            RecycledShare = bound.Get(Recycled),
        });

    private static readonly KeyOf<string> AdditiveName = Key.Must("name", Forms.Name, "name for people", "thickener");

    private static readonly KeyOf<double> PerLitre =
        Key.Must("per_litre", Forms.Plain(QuantityKinds.MassInLitre, "0 g", "1 kg", "2 g"), "mass in each litre of liquid");

    private static readonly TableForm<Additive> AdditiveTable = new("an additive", [AdditiveName, PerLitre],
        bound => new Additive(bound.Get(AdditiveName), bound.Get(PerLitre)));

    private static readonly KeyOf<Density> LiquidDensity =
        Key.Must("density", Forms.Density("700 kg/m3", "1500 kg/m3", "1000 kg/m3"), "density");

    private static readonly KeyOf<double> LitrePrice =
        Key.May("price", Forms.Plain(QuantityKinds.PricePerVolume, "0 /L", "10000 /L", "0.003 /L"), "price, in the currency of the mix",
            fallback: "0 /L");

    private static readonly KeyOf<IReadOnlyList<Additive>> Additives =
        Key.May("additives", new ListForm<Additive>(AdditiveTable, 0, "additives"), "what is stirred in");

    private static readonly TableForm<Liquid> LiquidTable = new("a liquid", [LiquidDensity, LitrePrice, Additives],
        bound => new Liquid
        {
            Density = bound.Get(LiquidDensity),
            PricePerLitre = bound.Get(LitrePrice),
            Additives = bound.MaybeOf(Additives) ?? [],
        });

    private static readonly KeyOf<string> Name = Key.Must("name", Forms.Name, "name for people", "Estuary mix");
    private static readonly KeyOf<MixOrigin> From = Key.Must("from", new OriginForm(), "where the figures come from");

    private static readonly KeyOf<string> Currency =
        Key.Must("currency", new TextForm("a currency of three capital letters", "EUR", 3, char.IsAsciiLetterUpper, "^[A-Z]{3}$", 3),
            "currency of all prices");

    private static readonly KeyOf<IReadOnlyList<Constituent>> Solids = Key.Must("solids",
        new ListForm<Constituent>(SolidTable, 1, "solids"), "what the dry mix is made of; shares add up to 100 %",
        "[{name: Portland cement, share: 25 %, density: 3150 kg/m3, binder: true, co2: 0.86 kg/kg, price: 0.16 /kg}, " +
            "{name: quartz sand 0-2 mm, share: 75 %, density: 2650 kg/m3, recycled: 40 %, co2: 0.005 kg/kg, price: 0.03 /kg}]");

    private static readonly KeyOf<Density> LooseDensity =
        Key.Must("loose_density", Forms.Density("200 kg/m3", "5000 kg/m3", "1700 kg/m3"), "density of the bed as spread");
    private static readonly KeyOf<Liquid> Injected = Key.Must("liquid", LiquidTable, "what the needles inject");
    private static readonly KeyOf<WettingLaw> Wetting = Key.Must("wetting", SettingTables.Wetting, "how the bed takes water");
    private static readonly KeyOf<Hardening> Hardens = Key.Must("hardening", SettingTables.Hardening, "where and until when it sets");
    private static readonly KeyOf<StrengthLaw> Strength =
        Key.May("strength", SettingTables.Strength, "how strength follows", starter: true);
    private static readonly KeyOf<int> ReuseLimit =
        Key.May("reuse_limit", Forms.Whole(0, 1000, "5"), "how often loose mix may be spread again", starter: true);
    private static readonly KeyOf<MixUncertainty> Uncertainty = Key.May("uncertainty", SettingTables.Uncertainty,
        "one standard deviation of uncertain figures, for trials", "{diffusivity: 20 %, threshold: 5 %, loose_density: 2 %}");

    /// <summary>A dry mix.</summary>
    public static readonly TableForm<DryMix> Table = new("a mix",
        [Name, From, Currency, Solids, LooseDensity, Injected, Wetting, Hardens, Strength, ReuseLimit, Uncertainty],
        bound => new DryMix
        {
            Name = bound.Get(Name),
            Origin = bound.Get(From),
            Currency = bound.Get(Currency),
            Solids = bound.Get(Solids),
            LooseDensity = bound.Get(LooseDensity),
            Liquid = bound.Get(Injected),
            Wetting = bound.Get(Wetting),
            Hardening = bound.Get(Hardens),
            Strength = bound.MaybeOf(Strength),
            ReuseLimit = bound.Maybe(ReuseLimit),
            Uncertainty = bound.MaybeOf(Uncertainty),
        },
        Check);

    private static void Check(Bound bound)
    {
        Rules.Unique(bound, SolidName.Name, Solids.Name);
        if (!bound.Has(Solids, out IReadOnlyList<Constituent>? solids))
        {
            return;
        }

        double sum = solids.Sum(solid => solid.Share);
        if (Math.Abs(sum - 1.0) > SharesTolerance)
        {
            bound.Report(DescriptionFindings.SharesDoNotAddUp, Solids.Name, $"the shares add up to {Math.Round(sum * 100.0, 2)} %",
                "make them add up to 100 %");
        }

        if (!solids.Any(solid => solid is { IsBinder: true, Share: > 0.0 }))
        {
            bound.Report(DescriptionFindings.NoBinder, Solids.Name, "no solid is marked as binder", "add `binder: true` to the cement");
        }

        if (bound.Has(LooseDensity, out Density loose))
        {
            double residual = bound.Has(Wetting, out WettingLaw? law) ? law.Residual : 0.0;
            double porosity =
                1.0 - loose.KilogramsPerCubicMetre * solids.Sum(solid => solid.Share / solid.GrainDensity.KilogramsPerCubicMetre);
            if (porosity <= residual)
            {
                bound.Report(DescriptionFindings.NoPoreSpace, LooseDensity.Name,
                    $"at {loose.KilogramsPerCubicMetre} kg/m3 the pores are {Math.Round(porosity * 100.0, 2)} % of the bed, no room for water",
                    "check the loose density against the densities of the grains, and `residual`");
            }
        }
    }
}
