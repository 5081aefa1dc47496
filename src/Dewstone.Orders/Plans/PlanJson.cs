using System.Globalization;
using System.Text.Json;
using Dewstone.Jobs.Emission.Json;
using Dewstone.Model.Description;
using Dewstone.Model.Diagnostics;
using Dewstone.Model.Quantities;

namespace Dewstone.Orders.Plans;

/// <summary>
/// A plan as JSON and back, the same bytes for the same plan. Lines, printers, columns and rows count from 1 as in all files; times are the yard's, without a zone.
/// </summary>
public static class PlanJson
{
    /// <summary>Name of the file in the order's folder.</summary>
    public const string FileName = "plan.json";

    private const string Format = "dewstone-plan", Minute = "yyyy-MM-dd'T'HH:mm";
    private const int Version = 1;

    /// <summary>Writes a plan.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="figures">What it comes to; null to leave that out.</param>
    /// <returns>Bytes of the file.</returns>
    public static byte[] Write(OrderPlan plan, PlanFigures? figures = null)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return CanonicalJson.Indented(json =>
        {
            json.WriteString("format", Format);
            json.WriteNumber("version", Version);
            WriteMembers(json, plan, figures);
        });
    }

    /// <summary>Writes the members of a plan into the object that is open.</summary>
    /// <param name="json">Where to.</param>
    /// <param name="plan">The plan.</param>
    /// <param name="figures">What it comes to; null to leave that out.</param>
    public static void WriteMembers(Utf8JsonWriter json, OrderPlan plan, PlanFigures? figures)
    {
        ArgumentNullException.ThrowIfNull(json);
        ArgumentNullException.ThrowIfNull(plan);
        json.WriteString("order", plan.Order);
        json.WriteString("order_sha256", plan.OrderHash);
        if (figures is not null)
        {
            json.Object("figures", () => WriteFigures(json, figures));
        }

        json.Objects("footings", plan.Footings, footing =>
        {
            json.WriteNumber("line", footing.Line + 1);
            json.WriteNumber("printer", footing.Printer + 1);
            json.WriteNumber("turn_deg", 90 * (footing.Wish.QuarterTurns ?? 0));
            json.Point("shift_m", footing.Wish.Shift ?? default);
            json.WriteString("layers", Layers(footing.Wish.ShiftedLayers ?? false));
            json.WriteNumber("columns", footing.Columns);
            json.WriteNumber("rows", footing.Rows);
            json.WriteNumber("layer_count", footing.Layers);
        });
        json.Objects("bins", plan.Bins, bin =>
        {
            json.WriteString("name", bin.Name);
            json.WriteNumber("printer", bin.Printer + 1);
            json.WriteString("layers", Layers(bin.ShiftedLayers));
            json.Number("shift_z_m", bin.ShiftZ.Metres);
            json.WriteString("start", Text(bin.Start));
            json.WriteString("print_end", Text(bin.PrintEnd));
            json.WriteString("dig_not_before", Text(bin.DigNotBefore));
            json.WriteString("dig_start", Text(bin.DigStart));
            json.WriteString("dig_end", Text(bin.DigEnd));
            json.Figure("mix_kg", bin.Mix.Kilograms);
            json.Objects("units", bin.Units, unit =>
            {
                json.WriteString("mark", unit.Mark);
                json.WriteNumber("turn_deg", 90 * unit.QuarterTurns);
                json.WriteNumber("column", unit.Column + 1);
                json.WriteNumber("row", unit.Row + 1);
            });
        });
    }

    /// <summary>Reads a plan back.</summary>
    /// <param name="bytes">Bytes of the file.</param>
    /// <param name="shown">Its path, for findings.</param>
    /// <param name="orderHash">SHA-256 of the order the plan must be of; null for any.</param>
    /// <returns>The plan, or DW7010 or DW7011.</returns>
    public static (OrderPlan? Plan, Diagnostic? Finding) Read(ReadOnlyMemory<byte> bytes, string shown, string? orderHash)
    {
        SourceLocation whole = new(shown, 0, 0);
        try
        {
            using JsonDocument document = JsonDocument.Parse(bytes);
            JsonElement root = document.RootElement;
            if (root.GetProperty("format").GetString() != Format || root.GetProperty("version").GetInt32() > Version)
            {
                return (null, Unreadable("is no plan of this version"));
            }

            OrderPlan plan = new()
            {
                Order = Word(root, "order"),
                OrderHash = Word(root, "order_sha256"),
                Footings = [.. root.GetProperty("footings").EnumerateArray().Select(ReadFooting)],
                Bins = [.. root.GetProperty("bins").EnumerateArray().Select(ReadBin)],
            };
            return orderHash is null || plan.OrderHash == orderHash ? (plan, null)
                : (null, OrderFindings.PlanOfOtherOrder.At($"`{shown}` was made from another state of the order", "plan the order again", location: whole));
        }
        catch (Exception fault) when (fault is JsonException or KeyNotFoundException or InvalidOperationException or FormatException)
        {
            return (null, Unreadable("is cut short or was changed"));
        }

        Diagnostic Unreadable(string how) => OrderFindings.PlanUnreadable.At($"`{shown}` {how}", "plan the order again", location: whole);
    }

    /// <summary>A time as files write it.</summary>
    /// <param name="time">Yard's local time.</param>
    /// <returns>Such as <c>2027-03-01T18:00</c>.</returns>
    public static string Text(DateTime time) => time.ToString(Minute, CultureInfo.InvariantCulture);

    private static void WriteFigures(Utf8JsonWriter json, PlanFigures figures)
    {
        json.WriteNumber("units", figures.Units);
        json.WriteNumber("late_units", figures.LateUnits);
        json.WriteNumber("late_units_bound", figures.LateBound);
        json.WriteString("finish", Text(figures.Finish));
        json.WriteString("finish_bound", Text(figures.FinishBound));
        json.WriteString("status", figures.Optimal ? "optimal" : "feasible");
        json.WriteString("bins_chosen_for", figures.BinsChosenFor);
        json.WriteBoolean("bins_proved", figures.BinsProved);
        json.Figure("full_pace_kg_in_24_h", figures.FullPaceKilograms);
        json.Figure("busiest_24_h_kg", figures.BusiestDayKilograms);
        json.Figure("mix_used_up_kg", figures.UsedUpKilograms);
        json.Figure("longest_set_h", figures.LongestSet.TotalHours);
        json.WriteNumber("tasks_advised", figures.Tasks.Tasks);
        json.WriteNumber("task_seconds_bound", figures.Tasks.SecondsATask);
        json.WriteNumber("task_megabytes_bound", figures.Tasks.MegabytesATask);
    }

    private static Footing ReadFooting(JsonElement footing)
    {
        double[] shift = [.. footing.GetProperty("shift_m").EnumerateArray().Select(value => value.GetDouble())];
        return new Footing
        {
            Line = footing.GetProperty("line").GetInt32() - 1,
            Printer = footing.GetProperty("printer").GetInt32() - 1,
            Wish = new PlacementWish
            {
                QuarterTurns = footing.GetProperty("turn_deg").GetInt32() / 90,
                Shift = shift.Length == 3 ? new Point3(shift[0], shift[1], shift[2]) : throw new FormatException("A shift has three figures."),
                ShiftedLayers = IsShifted(footing),
            },
            Columns = footing.GetProperty("columns").GetInt32(),
            Rows = footing.GetProperty("rows").GetInt32(),
            Layers = footing.GetProperty("layer_count").GetInt32(),
        };
    }

    private static PlannedBin ReadBin(JsonElement bin) => new()
    {
        Name = Word(bin, "name"),
        Printer = bin.GetProperty("printer").GetInt32() - 1,
        ShiftedLayers = IsShifted(bin),
        ShiftZ = new Length(bin.GetProperty("shift_z_m").GetDouble()),
        Start = Time(bin, "start"),
        PrintEnd = Time(bin, "print_end"),
        DigNotBefore = Time(bin, "dig_not_before"),
        DigStart = Time(bin, "dig_start"),
        DigEnd = Time(bin, "dig_end"),
        Mix = new Mass(bin.GetProperty("mix_kg").GetDouble()),
        Units = [.. bin.GetProperty("units").EnumerateArray().Select(unit => new PlannedUnit(
            Word(unit, "mark"), unit.GetProperty("turn_deg").GetInt32() / 90, unit.GetProperty("column").GetInt32() - 1, unit.GetProperty("row").GetInt32() - 1))],
    };

    private static string Layers(bool shifted) => shifted ? "shifted" : "straight";

    private static bool IsShifted(JsonElement of) => Word(of, "layers") switch
    {
        "shifted" => true,
        "straight" => false,
        _ => throw new FormatException("Layers are shifted or straight."),
    };

    private static string Word(JsonElement of, string name) => of.GetProperty(name).GetString() ?? throw new FormatException($"{name} is a text.");

    private static DateTime Time(JsonElement of, string name) => DateTime.ParseExact(Word(of, name), Minute, CultureInfo.InvariantCulture, DateTimeStyles.None);
}
