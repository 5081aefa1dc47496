using System.Text.Json;
using Dewstone.Model.Results;

namespace Dewstone.Jobs.Emission.Json;

/// <summary>How a unit stands at its site.</summary>
public static class SeaJson
{
    /// <summary>Writes the members into the object that is open; figures have six significant digits.</summary>
    /// <param name="json">Where to.</param>
    /// <param name="report">The report.</param>
    public static void Write(Utf8JsonWriter json, StabilityReport report)
    {
        ArgumentNullException.ThrowIfNull(json);
        ArgumentNullException.ThrowIfNull(report);
        json.WriteString("site", report.Site);
        json.Figure("sliding", report.Sliding);
        json.Figure("overturning", report.Overturning);
        json.Figure("bearing_factor", report.Bearing?.Factor);
        json.Figure("safe_heading_deg", report.SafeHeadingDegrees);
        json.Figure("water_kg_m3", report.WaterDensity);
        json.Figure("saturated_kg", report.SaturatedKilograms);
        json.Figure("least_saturated_kg", report.LeastSaturatedKilograms);
        json.Figure("submerged_n", report.SubmergedNewtons);
        json.Figure("fresh_submerged_n", report.FreshSubmergedNewtons);
        json.Figure("fresh_sliding", report.FreshSliding);
        json.Figure("fresh_overturning", report.FreshOverturning);
        json.Figure("hudson_kg", report.HudsonKilograms);
        json.Figure("isbash_m", report.IsbashMetres);
        json.Object("body", () => Body(json, report.Body));
        json.Objects("levels", report.Levels, level => Level(json, level));
        json.Objects("headings", report.Headings, heading =>
        {
            json.Figure("heading_deg", heading.HeadingDegrees);
            json.Figure("sliding", heading.Sliding);
            json.Figure("overturning", heading.Overturning);
        });
        json.ObjectOrNull("bearing", report.Bearing, bearing =>
        {
            json.Figure("pressure_pa", bearing.PressurePascals);
            json.Figure("eccentricity_m", bearing.EccentricityMetres);
            json.Figure("effective_width_m", bearing.EffectiveWidthMetres);
            json.WriteString("method", bearing.Method);
            json.Objects("capacities", bearing.CapacityPascals, capacity =>
            {
                json.WriteString("method", capacity.Name);
                json.Figure("pa", capacity.Amount);
            });
            json.Figure("sinkage_m", bearing.SinkageMetres);
            json.Figure("settlement_m", bearing.SettlementMetres);
        });
        json.ObjectOrNull("scour", report.Scour, scour =>
        {
            json.Figure("threshold_pa", scour.ThresholdPascals);
            json.Figure("stress_pa", scour.StressPascals);
            json.Figure("keulegan_carpenter", scour.KeuleganCarpenter);
            json.Figure("pile_depth_m", scour.PileDepthMetres);
        });
        json.Objects("storm", report.Storm, point =>
        {
            json.Figure("period_s", point.PeriodSeconds);
            json.Figure("low_m", point.LowMetres);
            json.Figure("low_limit_m", point.LowLimitMetres);
            json.Figure("high_m", point.HighMetres);
            json.Figure("high_limit_m", point.HighLimitMetres);
        });
    }

    private static void Body(Utf8JsonWriter json, StandingBody body)
    {
        json.Figure("volume_m3", body.CubicMetres);
        json.Figure("height_m", body.HeightMetres);
        json.Figure("centre_x_m", body.Centre.X);
        json.Figure("centre_y_m", body.Centre.Y);
        json.Figure("centre_z_m", body.Centre.Z);
        json.Figure("plan_m2", body.PlanSquareMetres);
        json.Figure("contact_m2", body.ContactSquareMetres);
        json.Figure("footprint_m2", body.FootprintSquareMetres);
        json.Figure("foot_width_m", body.FootWidthMetres);
    }

    private static void Level(Utf8JsonWriter json, SeaLevel level)
    {
        json.WriteString("name", level.Name);
        json.Figure("depth_m", level.DepthMetres);
        json.Figure("cover_m", level.CoverMetres);
        json.Figure("asked_m", level.AskedMetres);
        json.Figure("depth_limit_m", level.DepthLimitMetres);
        json.Figure("steepness_limit_m", level.SteepnessLimitMetres);
        json.Figure("goda_limit_m", level.GodaLimitMetres);
        json.Figure("height_m", level.HeightMetres);
        json.Figure("length_m", level.LengthMetres);
        json.Figure("speed_m_s", level.SpeedMetresPerSecond);
        json.Figure("acceleration_m_s2", level.AccelerationMetresPerSecondSquared);
        json.Figure("transmission", level.Transmission);
        json.WriteBoolean("transmission_in_range", level.TransmissionInRange);
    }
}
