using Dewstone.Model.Description;
using Dewstone.Model.Quantities;

namespace Dewstone.Reading.Job;

/// <summary>Reads a printer and its needles from a job core.</summary>
internal static class PrinterJsonReader
{
    public static Printer Printer(JsonPlace json) => new()
    {
        Name = json.Text("name"),
        Bin = json["bin"].Numbers("size_m", 2) is var size ? new Bin(new Length(size[0]), new Length(size[1]), json["bin"].Length("height_m")) : null!,
        Grid = Grid(json["grid"]),
        Head = new Head { Columns = json["head"].Whole("columns"), Rows = json["head"].Whole("rows"), CanShiftLayers = json["head"].Flag("can_shift_layers") },
        Needle = Needle(json["needle"]),
        Supply = new Supply(new FlowRate(json["supply"].Number("flow_m3_s")), new Volume(json["supply"].Number("tank_m3"))),
        Timing = Timing(json["timing"]),
        Flush = json.Optional("flush", flush => new Flush(new Duration(flush.Number("time_s")), flush.Whole("every_layers"))),
        LooseMix = new LooseMixHandling(new Mass(json["loose_mix"].Number("lost_in_bin_kg")), json["loose_mix"].Number("reusable_share")),
        MaxLift = json.OptionalNumber("max_lift_kg") is { } kilograms ? new Mass(kilograms) : null,
    };

    public static NeedleTable? Needles(JsonPlace json, string name) => !json.Has(name) ? null : new NeedleTable
    {
        Needles = json.Items(name, needle => new NeedleState
        {
            Column = needle.Whole("column"),
            Row = needle.Whole("row"),
            Board = needle.Text("board"),
            Channel = needle.Text("channel"),
            Condition = needle.Word("state", ("ok", NeedleCondition.Ok), ("blocked", NeedleCondition.Blocked), ("limited", NeedleCondition.Limited)),
            Gain = needle.Number("gain"),
            OffsetMillilitres = needle.Number("offset_ml"),
            Flow = needle.OptionalNumber("flow_m3_s") is { } flow ? new FlowRate(flow) : null,
            Repeatability = needle.OptionalNumber("repeatability"),
        }),
    };

    private static NeedleGrid Grid(JsonPlace json)
    {
        double[] origin = json.Numbers("origin_m", 2);
        return new NeedleGrid
        {
            Pitch = json.Length("pitch_m"),
            LayerHeight = json.Length("layer_m"),
            OriginX = new Length(origin[0]),
            OriginY = new Length(origin[1]),
            UnderLayers = json.Whole("under_layers"),
        };
    }

    private static Needle Needle(JsonPlace json) => new()
    {
        TipDepth = json.Length("tip_depth_m"),
        Flow = new FlowRate(json.Number("flow_m3_s")),
        Least = new Volume(json.Number("least_m3")),
        Most = new Volume(json.Number("most_m3")),
        Step = new Volume(json.Number("step_m3")),
        Repeatability = json.Number("repeatability"),
        Drift = json.Number("drift"),
    };

    private static MachineTiming Timing(JsonPlace json) => new()
    {
        Setup = new Duration(json.Number("setup_s")),
        Spreading = new Duration(json.Number("spreading_s")),
        Move = new Duration(json.Number("move_s")),
        Plunge = new Duration(json.Number("plunge_s")),
        Hold = new Duration(json.Number("hold_s")),
        Withdraw = new Duration(json.Number("withdraw_s")),
    };
}
