using System.Globalization;
using Dewstone.Jobs.Emission;
using Dewstone.Jobs.Emission.Report;
using Dewstone.Orders.Scheduling;
using Dewstone.Reading;

namespace Dewstone.Orders.Plans;

/// <summary>The plan as bars over time: prints by printer, bins that set (a row a place), and the crew's dig-outs; shifts shaded, the due date a line.</summary>
internal static class PlanChart
{
    private const double Left = 130.0, Top = 120.0, Right = 30.0, RowHeight = 20.0, LaneHeight = 13.0, Gap = 26.0;

    /// <summary>Draws the plan.</summary>
    /// <param name="reading">The order.</param>
    /// <param name="result">Its plan.</param>
    /// <returns>The file.</returns>
    public static EmittedFile Emit(OrderReading reading, PlanningResult result)
    {
        OrderPlan plan = result.Plan!;
        YardCalendar calendar = new(reading.Order!);
        DateTime first = plan.Bins[0].Start.Date, last = plan.Bins.Max(bin => bin.DigEnd).Date.AddDays(1.0);
        double days = (last - first).TotalDays, perDay = Math.Clamp(1500.0 / days, 24.0, 160.0);
        double X(DateTime time) => Left + (time - first).TotalDays * perDay;
        int[] lane = Lanes(plan.Bins);
        int lanes = lane.Max() + 1, printers = reading.PrinterPaths.Count;
        double setTop = Top + printers * RowHeight + Gap, crewTop = setTop + lanes * LaneHeight + Gap, bottom = crewTop + RowHeight;
        double width = Math.Max(760.0, X(last) + Right), height = bottom + 60.0;
        HtmlWriter svg = new();
        svg.Add($"""<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 {width} {height}" width="{width}" height="{height}" role="img" aria-labelledby="title"><title id="title">{plan.Order}: plan</title>""");
        svg.Raw($"<style>{PlanStyle.Text}</style>\n");
        svg.Add($"""<rect class="paper" width="{width}" height="{height}"/><text class="name" x="24" y="34">{plan.Order}: plan</text>""");
        PlanFigures figures = result.Figures!;
        svg.Add($"""<text class="quiet" x="24" y="56">{figures.Units} units in {plan.Bins.Count} bins, done {Day(figures.Finish)}; with these bins no plan is done {(figures.Optimal ? "earlier" : $"before {Day(figures.FinishBound)}")}</text>""");
        Days(svg, first, last, perDay, bottom, X);
        foreach (TimeWindow shift in calendar.Shifts.Windows.TakeWhile(window => reading.Order!.Shifts is not null && calendar.Time(window.From) < last))
        {
            svg.Add($"""<rect class="shift" x="{X(calendar.Time(shift.From))}" y="{Top}" width="{X(calendar.Time(shift.To) < last ? calendar.Time(shift.To) : last) - X(calendar.Time(shift.From))}" height="{printers * RowHeight}"/>""");
        }

        for (int printer = 0; printer < printers; printer++)
        {
            string name = reading.Jobs.Select(line => line[printer]?.Job?.Printer.Name).FirstOrDefault(n => n is not null) ?? "";
            svg.Add($"""<text text-anchor="end" x="{Left - 10.0}" y="{Top + printer * RowHeight + 14.0}">{name}</text>""");
        }

        svg.Add($"""<text text-anchor="end" x="{Left - 10.0}" y="{setTop + 11.0}">setting</text><text class="quiet small" text-anchor="end" x="{Left - 10.0}" y="{setTop + 25.0}">{lanes} at most</text>""");
        svg.Add($"""<text text-anchor="end" x="{Left - 10.0}" y="{crewTop + 14.0}">crew digs out</text>""");
        for (int index = 0; index < plan.Bins.Count; index++)
        {
            PlannedBin bin = plan.Bins[index];
            string marks = string.Join(", ", bin.Units.Select(unit => unit.Mark));
            Bar(svg, "print", X(bin.Start), X(bin.PrintEnd), Top + bin.Printer * RowHeight + 2.0, RowHeight - 4.0, $"{bin.Name}: {marks}; printed {Time(bin.Start)} to {Time(bin.PrintEnd)}");
            double y = setTop + lane[index] * LaneHeight;
            Bar(svg, "set", X(bin.PrintEnd), X(bin.DigStart), y + 1.0, LaneHeight - 2.0, $"{bin.Name}: {marks}; sets until {Time(bin.DigNotBefore)} at least");
            if (X(bin.DigStart) - X(bin.PrintEnd) > 7.0 * bin.Name.Length)
            {
                svg.Add($"""<text class="small" x="{X(bin.PrintEnd) + 3.0}" y="{y + LaneHeight - 3.5}">{bin.Name}</text>""");
            }

            svg.Add($"""<path class="ready" d="M{X(bin.DigNotBefore)} {y + 1.0}v{LaneHeight - 2.0}"/>""");
            if (bin.DigEnd > bin.DigStart)
            {
                Bar(svg, "dig", X(bin.DigStart), X(bin.DigEnd), crewTop + 2.0, RowHeight - 4.0, $"{bin.Name}: {marks}; dug out {Time(bin.DigStart)} to {Time(bin.DigEnd)}");
            }
        }

        DateTime due = calendar.Time(calendar.Due);
        if (due <= last)
        {
            svg.Add($"""<path class="due" d="M{X(due)} {Top - 8.0}V{bottom}"/><text text-anchor="end" x="{X(due) - 4.0}" y="{bottom + 16.0}">due</text>""");
        }

        Legend(svg, bottom + 34.0);
        svg.Raw("</svg>\n");
        return new EmittedFile("plan.svg", svg.ToBytes());
    }

    private static void Days(HtmlWriter svg, DateTime first, DateTime last, double perDay, double bottom, Func<DateTime, double> x)
    {
        for (DateTime day = first; day <= last; day = day.AddDays(1.0))
        {
            svg.Add($"""<path class="rule" d="M{x(day)} {Top - 8.0}V{bottom}"/>""");
            bool isMonday = day.DayOfWeek == DayOfWeek.Monday || day == first;
            if (day < last)
            {
                svg.Add($"""<text class="quiet small" text-anchor="middle" x="{x(day) + perDay / 2.0}" y="{Top - 14.0}">{day.ToString(perDay >= 40.0 ? "ddd d" : "%d", CultureInfo.InvariantCulture)}</text>""");
            }

            if (isMonday && day < last)
            {
                svg.Add($"""<text class="small" x="{x(day) + 3.0}" y="{Top - 30.0}">{day.ToString("d MMM yyyy", CultureInfo.InvariantCulture)}</text>""");
            }
        }
    }

    private static void Bar(HtmlWriter svg, string kind, double from, double to, double y, double height, string told) =>
        svg.Add($"""<rect class="{kind}" x="{from}" y="{y}" width="{Math.Max(0.5, to - from)}" height="{height}"><title>{told}</title></rect>""");

    private static void Legend(HtmlWriter svg, double y)
    {
        double x = Left;
        foreach ((string kind, string word) in (ReadOnlySpan<(string, string)>)[("print", "set up and print"), ("set", "sets; the line: may be dug out"), ("dig", "dug out"), ("shift", "shift")])
        {
            svg.Add($"""<rect class="{kind}" x="{x}" y="{y}" width="22" height="12"/><text x="{x + 28.0}" y="{y + 10.5}">{word}</text>""");
            x += 28.0 + 5.8 * word.Length + 26.0;
        }
    }

    // Each bin in the first row that is free while it sets.
    private static int[] Lanes(IReadOnlyList<PlannedBin> bins)
    {
        List<DateTime> free = [];
        int[] lanes = new int[bins.Count];
        foreach (int bin in Enumerable.Range(0, bins.Count).OrderBy(index => bins[index].PrintEnd).ThenBy(index => index))
        {
            int lane = free.FindIndex(end => end <= bins[bin].PrintEnd);
            if (lane < 0)
            {
                lane = free.Count;
                free.Add(default);
            }

            free[lane] = bins[bin].DigEnd;
            lanes[bin] = lane;
        }

        return lanes;
    }

    private static string Day(DateTime time) => time.ToString("ddd yyyy-MM-dd HH:mm", CultureInfo.InvariantCulture);

    private static string Time(DateTime time) => time.ToString("ddd HH:mm", CultureInfo.InvariantCulture);
}
