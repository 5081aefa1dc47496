using System.Text.Json;
using Dewstone.Model.Description;
using Dewstone.Model.Quantities;
using Dewstone.Model.Results;

namespace Dewstone.Jobs.Emission.Json;

/// <summary>How strong a unit is and how it hangs; its schema is in <c>schemas/manifest.schema.json</c> and <c>schemas/check.schema.json</c>.</summary>
public static class StrengthJson
{
    /// <summary>Writes the members <c>strength</c> and <c>lifting</c> into the object that is open.</summary>
    /// <param name="json">Where to.</param>
    /// <param name="report">The report.</param>
    public static void Write(Utf8JsonWriter json, StrengthReport report)
    {
        ArgumentNullException.ThrowIfNull(json);
        ArgumentNullException.ThrowIfNull(report);
        json.Object("strength", () => Strength(json, report));
        json.Object("lifting", () => Lifting(json, report.Lifting));
    }

    /// <summary>Name of a rule in files.</summary>
    /// <param name="rule">The rule.</param>
    /// <returns>The word.</returns>
    public static string Word(StrengthRule rule) => rule switch
    {
        StrengthRule.Feret => "feret",
        StrengthRule.GelSpace => "gel_space",
        StrengthRule.HandbookCurve => "handbook_curve",
        StrengthRule.Measured => "measured",
        _ => "gel_space_with_air",
    };

    private static void Strength(Utf8JsonWriter json, StrengthReport report)
    {
        json.WriteString("rule", Word(report.Rule));
        json.WriteBoolean("rule_assumed", report.RuleAssumed);
        json.WriteString("class", report.CementClass);
        json.Figure("curing_degc", report.CuringCelsius);
        json.Figure("equivalent_days_a_day", report.AgeRate);
        json.Figure("mean_28_pa", report.MeanPascals);
        json.Figure("percentile_5_28_pa", report.Percentiles.P5);
        json.Figure("median_28_pa", report.Percentiles.P50);
        json.Figure("percentile_95_28_pa", report.Percentiles.P95);
        json.Objects("ages", report.Ages, age =>
        {
            json.Figure("days", age.Days);
            json.Figure("equivalent_days", age.EquivalentDays);
            json.Figure("mean_pa", age.MeanPascals);
            json.Figure("percentile_5_pa", age.WeakPascals);
        });
        json.Figure("dig_out_days", report.DigOutDays);
        json.Figure("lift_days", report.LiftDays);
        json.Figure("lift_pa", report.LiftPascals);
        json.Figure("heat_rise_k", report.HeatRiseKelvin);
        json.ObjectOrNull("paste", report.Paste, paste =>
        {
            json.Figure("unhydrated_cement", paste.UnhydratedCement);
            json.Figure("gel_solids", paste.GelSolids);
            json.Figure("gel_water", paste.GelWater);
            json.Figure("capillary_water", paste.CapillaryWater);
            json.Figure("shrinkage", paste.Shrinkage);
        });
        json.Objects("tension", report.Tension, held =>
        {
            json.WriteString("case", Word(held.Case));
            json.Figure("tension_pa", held.TensionPascals);
            json.Figure("cracking_28_pa", held.CrackingPascals);
            json.Figure("factor_28", held.Factor);
            json.Figure("factor_at_lift", held.FactorAtLift);
            json.WriteBoolean("overturns", held.Overturns);
            Point(json, "unit_frame_mm", held.Where);
        });
        json.WriteNumber("bricks", report.Bricks);
        json.Objects("exposure", report.Exposure, verdict =>
        {
            json.WriteString("rule", verdict.Rule.Name);
            json.WriteString("for", verdict.Rule.Exposure);
            json.WriteBoolean("for_steel_only", verdict.Rule.ForSteel);
            json.WriteBoolean("met", verdict.Met);
        });
    }

    private static void Lifting(Utf8JsonWriter json, LiftingReport lifting)
    {
        json.Figure("hook_kg", lifting.Kilograms);
        json.Figure("trapped_mix_kg", lifting.TrappedKilograms);
        Point(json, "centre_of_gravity_mm", lifting.CentreOfGravity);
        json.Figure("load_cell_least_kg", lifting.LoadCellKilograms.Least);
        json.Figure("load_cell_most_kg", lifting.LoadCellKilograms.Most);
        json.ObjectOrNull("hang", lifting.Hang, hang =>
        {
            json.Figure("sling_angle_deg", hang.SlingDegrees);
            json.Figure("dynamic", hang.DynamicFactor);
            json.WriteNumber("legs", hang.Legs);
            json.WriteNumber("carrying_legs", hang.CarryingLegs);
            json.Figure("leg_n", hang.LegNewtons);
            json.Figure("insert_least_n", hang.InsertNewtons);
            json.Figure("hardware_least_n", hang.HardwareNewtons);
            json.Figure("tilt_deg", hang.TiltDegrees);
            json.Objects("places", hang.Places, place =>
            {
                Point(json, "unit_frame_mm", place.Where);
                json.Figure("share", place.Share);
                json.Figure("bearing_share", place.BearingShare);
                json.Figure("bearing_pa", place.BearingPascals);
            });
        });
    }

    private static string Word(LoadCase held) => held switch
    {
        LoadCase.Lifted => "lifted",
        LoadCase.OnWestAndEastEdges => "on_west_and_east_edges",
        LoadCase.OnSouthAndNorthEdges => "on_south_and_north_edges",
        _ => "stacked",
    };

    private static void Point(Utf8JsonWriter json, string name, Point3 point)
    {
        json.WriteStartArray(name);
        foreach (double metres in (ReadOnlySpan<double>)[point.X, point.Y, point.Z])
        {
            json.WriteNumberValue(Math.Round(metres * 1000.0, 1));
        }

        json.WriteEndArray();
    }
}
