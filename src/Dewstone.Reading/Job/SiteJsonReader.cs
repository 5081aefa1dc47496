using Dewstone.Model.Description;
using Dewstone.Model.Quantities;

namespace Dewstone.Reading.Job;

/// <summary>Reads a site from a job core.</summary>
internal static class SiteJsonReader
{
    public static Site Site(JsonPlace json) => new()
    {
        Name = json.Text("name"),
        Water = Water(json["water"]),
        Wave = Wave(json["wave"]),
        Current = json.Optional("current", current => new SeaCurrent(new Speed(current.Number("speed_m_s")), new Angle(current.Number("direction_deg")))),
        Seabed = Seabed(json["seabed"]),
        Forces = new ForceCoefficients(json["forces"].Number("drag"), json["forces"].Number("inertia"), json["forces"].Number("lift")),
        Safety = new SafetyFactors(json["safety"].Number("sliding"), json["safety"].Number("overturning"), json["safety"].Number("bearing")),
        Clearance = json.OptionalLength("clearance_m"),
        Permit = json.Has("permit") ? Permit(json["permit"]) : null,
        Animals = json.Optional("animals", animals => new ShelterAnimals(animals.Length("sheltered_body_depth_m"), animals.Length("predator_body_depth_m"))),
    };

    private static SiteWater Water(JsonPlace json) => new()
    {
        Depth = json.Length("depth_m"),
        Datum = json.Text("datum"),
        Low = json.Length("low_m"),
        High = json.Length("high_m"),
        Salinity = json.Number("salinity"),
        Temperature = new Temperature(json.Number("temperature_degc")),
    };

    private static DesignWave Wave(JsonPlace json) => new()
    {
        SignificantHeight = json.Length("significant_height_m"),
        PeakPeriod = new Duration(json.Number("peak_period_s")),
        Direction = new Angle(json.Number("direction_deg")),
        ReturnPeriodYears = json.OptionalNumber("return_period_years"),
        HeightRule = json.Word(
            "height_rule",
            ("significant", DesignHeightRule.Significant), ("highest_tenth", DesignHeightRule.HighestTenth),
            ("greatest", DesignHeightRule.Greatest), ("stated", DesignHeightRule.Stated)),
        StatedHeight = json.OptionalLength("stated_height_m"),
    };

    private static SeabedSoil Seabed(JsonPlace json) => new()
    {
        Soil = json.Word("soil", ("sand", SoilKind.Sand), ("clay", SoilKind.Clay)),
        Friction = json.Number("friction"),
        FrictionAngle = json.OptionalNumber("friction_angle_deg") is { } degrees ? new Angle(degrees) : null,
        Stiffness = json.Has("stiffness_pa") ? new Pressure(json.Number("stiffness_pa")) : null,
        UndrainedStrength = json.OptionalNumber("undrained_strength_pa") is { } pascals ? new Pressure(pascals) : null,
        EffectiveWeight = new UnitWeight(json.Number("effective_weight_n_m3")),
        Grain = json.OptionalLength("grain_m"),
        Slope = new Angle(json.Number("slope_deg")),
        Method = json.Has("bearing")
            ? json.Word("bearing", ("terzaghi", BearingMethod.Terzaghi), ("meyerhof", BearingMethod.Meyerhof), ("vesic", BearingMethod.Vesic))
            : BearingMethod.Least,
    };

    private static PermitRules Permit(JsonPlace json) =>
        new(json.OptionalNumber("height_share"), json.OptionalLength("least_depth_m"), json.Text("source"));
}
