using System.Globalization;
using Dewstone.Jobs.Emission;
using Dewstone.Jobs.Emission.Tables;
using Dewstone.Model.Description;
using Dewstone.Orders.Scheduling;

namespace Dewstone.Orders.Plans;

/// <summary>
/// Materials by calendar day: mix spread and hardened, water and binder on the day on which a print begins; mix back from a bin on the day on which it has been dug out. What is in
/// stock counts to the end of the day, where the order tells of a stock.
/// </summary>
internal static class MaterialsTable
{
    private const string Header =
        "day,bins_printed,units_printed,bins_dug_out,mix_spread_kg,mix_hardened_kg,binder_kg,dose_water_l,flush_water_l,mix_back_kg,mix_delivered_kg,mix_turned_away_kg,mix_in_stock_kg";

    /// <summary>Makes the table.</summary>
    /// <param name="order">The order.</param>
    /// <param name="result">Its plan.</param>
    /// <returns>The file: a row for each day from the first print to the last dig-out on which something happens, and the sum.</returns>
    public static EmittedFile Emit(Order order, PlanningResult result)
    {
        OrderPlan plan = result.Plan!;
        YardCalendar calendar = new(order);
        SiloStock? stock = OrderTasks.Rules(order, calendar).Stock;
        (DateTime At, int Kilograms)[] moves = [.. plan.Bins.SelectMany((bin, index) => new[]
        {
            (bin.Start, -(int)Math.Ceiling(result.Contents[index].SpreadKilograms)), (bin.DigEnd, (int)Math.Floor(result.Contents[index].ReusedKilograms)),
        })];
        DateTime last = plan.Bins.Max(bin => bin.DigEnd);
        int[] turned = stock is null ? [] : [.. stock.Follow(moves.Select(move => (Minutes(calendar, move.At), move.Kilograms))).TurnedAway];
        CsvText table = new(Header);
        for (DateTime day = calendar.Time(0); day <= last; day = day.AddDays(1.0))
        {
            DateTime next = day.AddDays(1.0);
            AddRow(table, day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture), result, stock, turned, calendar, moves, day, next);
        }

        AddRow(table, "sum", result, stock, turned, calendar, moves, DateTime.MinValue, last.AddMinutes(1.0));
        return new EmittedFile("materials.csv", table.ToBytes());
    }

    private static void AddRow(
        CsvText table, string day, PlanningResult result, SiloStock? stock, int[] turned, YardCalendar calendar, (DateTime At, int Kilograms)[] moves, DateTime from, DateTime to)
    {
        bool In(DateTime time) => time >= from && time < to;
        BinContent[] printed = [.. result.Contents.Where((_, bin) => In(result.Plan!.Bins[bin].Start))];
        BinContent[] dug = [.. result.Contents.Where((_, bin) => In(result.Plan!.Bins[bin].DigEnd))];
        int[] arrived = stock is null ? [] : [.. Enumerable.Range(0, turned.Length).Where(index => In(calendar.Time(stock.Deliveries[index].At)))];
        if (printed.Length + dug.Length + arrived.Length == 0)
        {
            return;
        }

        table.Text(day).Whole(printed.Length).Whole(printed.Sum(bin => bin.Spots.Count)).Whole(dug.Length)
            .Figure(printed.Sum(bin => bin.SpreadKilograms)).Figure(printed.Sum(bin => bin.HardenedKilograms)).Figure(printed.Sum(bin => bin.BinderKilograms))
            .Figure(1000.0 * printed.Sum(bin => bin.WaterCubicMetres)).Figure(1000.0 * printed.Sum(bin => bin.FlushCubicMetres)).Figure(dug.Sum(bin => bin.ReusedKilograms));
        if (stock is null)
        {
            table.Empty().Empty().Empty().EndRow();
            return;
        }

        long level = stock.OnHand + Enumerable.Range(0, turned.Length).Where(index => calendar.Time(stock.Deliveries[index].At) < to)
            .Sum(index => (long)stock.Deliveries[index].Kilograms - turned[index]) + moves.Where(move => move.At < to).Sum(move => (long)move.Kilograms);
        table.Whole(arrived.Sum(index => (long)stock.Deliveries[index].Kilograms)).Whole(arrived.Sum(index => (long)turned[index])).Whole(level).EndRow();
    }

    private static int Minutes(YardCalendar calendar, DateTime time) => (int)(time - calendar.Time(0)).TotalMinutes;
}
