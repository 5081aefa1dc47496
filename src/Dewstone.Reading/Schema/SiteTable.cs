using Dewstone.Model.Description;
using Dewstone.Model.Quantities;
using Dewstone.Reading.Binding;
using Dewstone.Reading.Quantities;

namespace Dewstone.Reading.Schema;

/// <summary>Key table of a site.</summary>
internal static class SiteTable
{
    private static readonly QuantityForm<Length> Level = Forms.Length("-30 m", "30 m", "1.4 m");
    private static readonly KeyOf<Length> Depth = Key.Must("depth", Forms.Length("0 m", "500 m", "6 m"), "depth at the datum");
    private static readonly KeyOf<string> Datum = Key.May("datum", Forms.Name, "name of the datum", "chart", "chart", starter: true);
    private static readonly KeyOf<Length> Low = Key.May("low", Level, "low water against the datum", "-0.3 m", "0 m", starter: true);
    private static readonly KeyOf<Length> High = Key.May("high", Level, "high water against the datum", "1.4 m", "0 m", starter: true);
    private static readonly KeyOf<double> Salinity =
        Key.May("salinity", new NumberForm(0, 60, "30"), "practical salinity", fallback: "35", starter: true);
    private static readonly KeyOf<Temperature> WaterTemperature =
        Key.May("temperature", Forms.Temperature("-2 degC", "40 degC", "12 degC"), "of the water", fallback: "10 degC", starter: true);

    private static readonly TableForm<SiteWater> WaterTable = new("the water", [Depth, Datum, Low, High, Salinity, WaterTemperature],
        bound => new SiteWater
        {
            Depth = bound.Get(Depth),
            Datum = bound.Get(Datum),
            Low = bound.Get(Low),
            High = bound.Get(High),
            Salinity = bound.Get(Salinity),
            Temperature = bound.Get(WaterTemperature),
        },
        bound => Rules.InOrder(bound, Low, High));

    private static readonly KeyOf<Length> SignificantHeight =
        Key.Must("significant_height", Forms.Length("0 m", "25 m", "1.2 m"), "significant wave height");
    private static readonly KeyOf<Duration> PeakPeriod = Key.Must("peak_period", Forms.Time("0.5 s", "40 s", "7 s"), "peak period");
    private static readonly KeyOf<Angle> WaveDirection =
        Key.May("direction", Forms.Bearing, "where it comes from, clockwise from true north", fallback: "0 deg", starter: true);
    private static readonly KeyOf<double> ReturnPeriod =
        Key.May("return_period", Forms.Years("1 d", "10000 yr", "50 yr"), "return period", starter: true);

    private static readonly KeyOf<HeightForms.DesignHeight> Height =
        Key.May("design_height", HeightForms.Height,
            "which height is designed for: the highest tenth, the significant or the greatest height, or a height", fallback: "Hs",
            starter: true);

    private static readonly TableForm<DesignWave> WaveTable =
        new("a wave", [SignificantHeight, PeakPeriod, WaveDirection, ReturnPeriod, Height],
        bound => new DesignWave
        {
            SignificantHeight = bound.Get(SignificantHeight),
            PeakPeriod = bound.Get(PeakPeriod),
            Direction = bound.Get(WaveDirection),
            ReturnPeriodYears = bound.Maybe(ReturnPeriod),
            HeightRule = bound.Get(Height).Rule,
            StatedHeight = bound.Get(Height).Stated,
        });

    private static readonly KeyOf<Speed> CurrentSpeed =
        Key.Must("speed", new QuantityForm<Speed>(QuantityKinds.Speed, "0 m/s", "10 m/s", "0.6 m/s", value => new Speed(value)), "speed");

    private static readonly KeyOf<Angle> CurrentDirection =
        Key.Must("direction", Forms.Bearing, "where it goes to, clockwise from true north", "90 deg");

    private static readonly TableForm<SeaCurrent> CurrentTable = new("a current", [CurrentSpeed, CurrentDirection],
        bound => new SeaCurrent(bound.Get(CurrentSpeed), bound.Get(CurrentDirection)));

    private static readonly KeyOf<double> Drag = Key.May("drag", Coefficient("1.05"), "drag", fallback: "1.05");
    private static readonly KeyOf<double> Inertia = Key.May("inertia", Coefficient("1.67"), "inertia", fallback: "1.67");
    private static readonly KeyOf<double> LiftForce = Key.May("lift", Coefficient("0.8"), "lift", fallback: "0.8");

    private static readonly TableForm<ForceCoefficients> ForceTable = new("the forces", [Drag, Inertia, LiftForce],
        bound => new ForceCoefficients(bound.Get(Drag), bound.Get(Inertia), bound.Get(LiftForce)));

    private static readonly KeyOf<double> Sliding = Key.May("sliding", Coefficient("1.3"), "against sliding", fallback: "1.3");
    private static readonly KeyOf<double> Overturning = Key.May("overturning", Coefficient("1.5"), "against overturning", fallback: "1.5");
    private static readonly KeyOf<double> Bearing =
        Key.May("bearing", Coefficient("2.5"), "against failure of the seabed", fallback: "2.5");

    private static readonly TableForm<SafetyFactors> SafetyTable = new("the safety factors", [Sliding, Overturning, Bearing],
        bound => new SafetyFactors(bound.Get(Sliding), bound.Get(Overturning), bound.Get(Bearing)));

    private static readonly KeyOf<Length> BodyDepth = Key.Must("body_depth", Forms.Length("1 mm", "5 m", "30 mm"), "depth of its body");
    private static readonly TableForm<Length> AnimalTable = new("an animal", [BodyDepth], bound => bound.Get(BodyDepth));
    private static readonly KeyOf<Length> Sheltered = Key.Must("sheltered", AnimalTable, "the animal that should find shelter");
    private static readonly KeyOf<Length> Predator =
        Key.Must("predator", AnimalTable, "the animal that should stay out", "{body_depth: 90 mm}");

    private static readonly TableForm<ShelterAnimals> AnimalsTable = new("the animals", [Sheltered, Predator],
        bound => new ShelterAnimals(bound.Get(Sheltered), bound.Get(Predator)),
        bound => Rules.InOrder(bound, Sheltered, Predator));

    private static readonly KeyOf<double> HeightShare =
        Key.May("height_share", Forms.ShareOf("1 %", "100 %", "50 %"), "greatest height of a unit over the depth at low water");
    private static readonly KeyOf<Length> LeastDepth =
        Key.May("least_depth", Forms.Length("0 m", "100 m", "3.66 m"), "least depth at low water in which units may stand");
    private static readonly KeyOf<string> Source =
        Key.May("source", new TextForm("the permit or rule, up to 200 characters", "permit 12-345", 200), "where the rules come from");

    private static readonly TableForm<PermitRules> PermitTable = new("a permit", [HeightShare, LeastDepth, Source],
        bound => new PermitRules(
            bound.Maybe(HeightShare), bound.Maybe(LeastDepth), bound.MaybeOf(Source) ?? ""));

    private static readonly KeyOf<string> Name = Key.Must("name", Forms.Name, "name for people", "Wrackline shoal");
    private static readonly KeyOf<SiteWater> Water = Key.Must("water", WaterTable, "water levels and what the water is like");
    private static readonly KeyOf<DesignWave> Wave = Key.Must("wave", WaveTable, "design wave");
    private static readonly KeyOf<SeaCurrent> Current = Key.May("current", CurrentTable, "current; left out, there is none", starter: true);
    private static readonly KeyOf<SeabedSoil> Seabed = Key.Must("seabed", SeabedTable.Table, "what it stands on");
    private static readonly KeyOf<ForceCoefficients> Forces =
        Key.May("forces", ForceTable, "Morison coefficients", "{drag: 1.05, inertia: 1.67, lift: 0.8}");
    private static readonly KeyOf<SafetyFactors> Safety =
        Key.May("safety", SafetyTable, "least factors of safety", "{sliding: 1.3, overturning: 1.5, bearing: 2.5}");
    private static readonly KeyOf<Length> Clearance =
        Key.May("clearance", Forms.Length("0 m", "100 m", "1.83 m"), "least water over the unit at low water", starter: true);
    private static readonly KeyOf<PermitRules> Permit =
        Key.May("permit", PermitTable, "what the permit allows", "{height_share: 50 %, least_depth: 3.66 m, source: permit 12-345}");
    private static readonly KeyOf<ShelterAnimals> Animals = Key.May("animals", AnimalsTable, "whom it should shelter, and from whom");

    /// <summary>A site.</summary>
    public static readonly TableForm<Site> Table = new("a site", [Name, Water, Wave, Current, Seabed, Forces, Safety, Clearance, Permit, Animals],
        bound => new Site
        {
            Name = bound.Get(Name),
            Water = bound.Get(Water),
            Wave = bound.Get(Wave),
            Current = bound.MaybeOf(Current),
            Seabed = bound.Get(Seabed),
            Forces =
                bound.MaybeOf(Forces) ?? new ForceCoefficients(Drag.FallbackValue(), Inertia.FallbackValue(), LiftForce.FallbackValue()),
            Safety =
                bound.MaybeOf(Safety) ?? new SafetyFactors(Sliding.FallbackValue(), Overturning.FallbackValue(), Bearing.FallbackValue()),
            Clearance = bound.Maybe(Clearance),
            Permit = bound.MaybeOf(Permit),
            Animals = bound.MaybeOf(Animals),
        });

    private static NumberForm Coefficient(string example) => new(0, 20, example);
}
