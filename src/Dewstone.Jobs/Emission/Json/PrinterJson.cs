using System.Text.Json;
using Dewstone.Model.Description;

namespace Dewstone.Jobs.Emission.Json;

/// <summary>A printer and its needles as JSON in SI.</summary>
internal static class PrinterJson
{
    /// <summary>Writes the members of a printer into the object that is open.</summary>
    public static void Write(Utf8JsonWriter json, Printer printer)
    {
        json.WriteString("name", printer.Name);
        json.Object("bin", () =>
        {
            json.Numbers("size_m", printer.Bin.SizeX.Metres, printer.Bin.SizeY.Metres);
            json.Number("height_m", printer.Bin.Height.Metres);
        });
        json.Object("grid", () =>
        {
            json.Number("pitch_m", printer.Grid.Pitch.Metres);
            json.Number("layer_m", printer.Grid.LayerHeight.Metres);
            json.Numbers("origin_m", printer.Grid.OriginX.Metres, printer.Grid.OriginY.Metres);
            json.WriteNumber("under_layers", printer.Grid.UnderLayers);
        });
        json.Object("head", () =>
        {
            json.WriteNumber("columns", printer.Head.Columns);
            json.WriteNumber("rows", printer.Head.Rows);
            json.WriteBoolean("can_shift_layers", printer.Head.CanShiftLayers);
        });
        json.Object("needle", () =>
        {
            json.Number("tip_depth_m", printer.Needle.TipDepth.Metres);
            json.Number("flow_m3_s", printer.Needle.Flow.CubicMetresPerSecond);
            json.Number("least_m3", printer.Needle.Least.CubicMetres);
            json.Number("most_m3", printer.Needle.Most.CubicMetres);
            json.Number("step_m3", printer.Needle.Step.CubicMetres);
            json.Number("repeatability", printer.Needle.Repeatability);
            json.Number("drift", printer.Needle.Drift);
        });
        json.Object("supply", () =>
        {
            json.Number("flow_m3_s", printer.Supply.Flow.CubicMetresPerSecond);
            json.Number("tank_m3", printer.Supply.Tank.CubicMetres);
        });
        json.Object("timing", () =>
        {
            json.Number("setup_s", printer.Timing.Setup.Seconds);
            json.Number("spreading_s", printer.Timing.Spreading.Seconds);
            json.Number("move_s", printer.Timing.Move.Seconds);
            json.Number("plunge_s", printer.Timing.Plunge.Seconds);
            json.Number("hold_s", printer.Timing.Hold.Seconds);
            json.Number("withdraw_s", printer.Timing.Withdraw.Seconds);
        });
        json.ObjectOrNull("flush", printer.Flush, flush =>
        {
            json.Number("time_s", flush.Time.Seconds);
            json.WriteNumber("every_layers", flush.EveryLayers);
        });
        json.Object("loose_mix", () =>
        {
            json.Number("lost_in_bin_kg", printer.LooseMix.LostInBin.Kilograms);
            json.Number("reusable_share", printer.LooseMix.Reusable);
        });
        json.Number("max_lift_kg", printer.MaxLift?.Kilograms);
    }

    /// <summary>Writes the needles, or null when no table is given.</summary>
    public static void Write(Utf8JsonWriter json, string name, NeedleTable? needles)
    {
        if (needles is null)
        {
            json.WriteNull(name);
            return;
        }

        json.Objects(name, needles.Needles, needle =>
        {
            json.WriteNumber("column", needle.Column);
            json.WriteNumber("row", needle.Row);
            json.WriteString("board", needle.Board);
            json.WriteString("channel", needle.Channel);
            json.WriteString("state", StateName(needle.Condition));
            json.Number("gain", needle.Gain);
            json.Number("offset_ml", needle.OffsetMillilitres);
            json.Number("flow_m3_s", needle.Flow?.CubicMetresPerSecond);
            json.Number("repeatability", needle.Repeatability);
        });
    }

    private static string StateName(NeedleCondition condition) => condition switch
    {
        NeedleCondition.Blocked => "blocked",
        NeedleCondition.Limited => "limited",
        _ => "ok",
    };
}
