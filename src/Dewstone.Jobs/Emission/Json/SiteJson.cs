using System.Text.Json;
using Dewstone.Model.Description;

namespace Dewstone.Jobs.Emission.Json;

/// <summary>A site as JSON in SI.</summary>
internal static class SiteJson
{
    /// <summary>Writes the members of a site into the object that is open.</summary>
    public static void Write(Utf8JsonWriter json, Site site)
    {
        json.WriteString("name", site.Name);
        json.Object("water", () =>
        {
            json.Number("depth_m", site.Water.Depth.Metres);
            json.WriteString("datum", site.Water.Datum);
            json.Number("low_m", site.Water.Low.Metres);
            json.Number("high_m", site.Water.High.Metres);
            json.Number("salinity", site.Water.Salinity);
            json.Number("temperature_degc", site.Water.Temperature.Celsius);
        });
        json.Object("wave", () =>
        {
            json.Number("significant_height_m", site.Wave.SignificantHeight.Metres);
            json.Number("peak_period_s", site.Wave.PeakPeriod.Seconds);
            json.Number("direction_deg", site.Wave.Direction.Degrees);
            json.Number("return_period_years", site.Wave.ReturnPeriodYears);
            json.WriteString("height_rule", RuleName(site.Wave.HeightRule));
            json.Number("stated_height_m", site.Wave.StatedHeight?.Metres);
        });
        json.ObjectOrNull("current", site.Current, current =>
        {
            json.Number("speed_m_s", current.Speed.MetresPerSecond);
            json.Number("direction_deg", current.Direction.Degrees);
        });
        json.Object("seabed", () =>
        {
            json.WriteString("soil", site.Seabed.Soil == SoilKind.Clay ? "clay" : "sand");
            json.Number("friction", site.Seabed.Friction);
            json.Number("friction_angle_deg", site.Seabed.FrictionAngle?.Degrees);
            json.Number("undrained_strength_pa", site.Seabed.UndrainedStrength?.Pascals);
            json.Number("effective_weight_n_m3", site.Seabed.EffectiveWeight.NewtonsPerCubicMetre);
            json.Number("grain_m", site.Seabed.Grain?.Metres);
            json.Number("slope_deg", site.Seabed.Slope.Degrees);
            if (site.Seabed.Stiffness is { } stiffness)
            {
                json.Number("stiffness_pa", stiffness.Pascals);
            }

            if (site.Seabed.Method != BearingMethod.Least)
            {
                json.WriteString("bearing", MethodName(site.Seabed.Method));
            }
        });
        json.Object("forces", () =>
        {
            json.Number("drag", site.Forces.Drag);
            json.Number("inertia", site.Forces.Inertia);
            json.Number("lift", site.Forces.Lift);
        });
        json.Object("safety", () =>
        {
            json.Number("sliding", site.Safety.Sliding);
            json.Number("overturning", site.Safety.Overturning);
            json.Number("bearing", site.Safety.Bearing);
        });
        json.Number("clearance_m", site.Clearance?.Metres);
        if (site.Permit is { } permit)
        {
            json.Object("permit", () =>
            {
                json.Number("height_share", permit.HeightShare);
                json.Number("least_depth_m", permit.LeastDepth?.Metres);
                json.WriteString("source", permit.Source);
            });
        }

        json.ObjectOrNull("animals", site.Animals, animals =>
        {
            json.Number("sheltered_body_depth_m", animals.Sheltered.Metres);
            json.Number("predator_body_depth_m", animals.Predator.Metres);
        });
    }

    private static string MethodName(BearingMethod method) => method switch
    {
        BearingMethod.Terzaghi => "terzaghi",
        BearingMethod.Meyerhof => "meyerhof",
        BearingMethod.Vesic => "vesic",
        _ => "least",
    };

    private static string RuleName(DesignHeightRule rule) => rule switch
    {
        DesignHeightRule.HighestTenth => "highest_tenth",
        DesignHeightRule.Greatest => "greatest",
        DesignHeightRule.Stated => "stated",
        _ => "significant",
    };
}
