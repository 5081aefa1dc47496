using System.Globalization;
using System.Text;
using System.Xml.Linq;
using Dewstone.Jobs.Emission;
using Dewstone.Model.Diagnostics;
using Dewstone.Orders.Plans;
using Dewstone.Reading;

namespace Dewstone.Orders.Tests.Plans;

public sealed class OrderPlannerTests : IDisposable
{
    private readonly PlanYard yard = new();

    public void Dispose() => yard.Dispose();

    [Fact]
    public void Plan_of_two_kinds_on_two_printers_holds_every_rule_of_the_yard()
    {
        (OrderReading reading, PlanningResult result) = yard.Plan(PlanYard.Order);

        Assert.DoesNotContain(result.Findings, finding => finding.Severity == Severity.Error);
        PlanRules.AssertHeld(reading, result);
        Assert.Equal(0, result.Figures!.LateUnits);
        Assert.True(result.Plan!.Bins.Max(bin => bin.Units.Count) >= 4);
        Assert.True(result.Figures.Finish >= result.Figures.FinishBound);
        Assert.Equal(result.Figures.Finish, result.Plan.Bins.Max(bin => bin.DigEnd));
    }

    [Fact]
    public void A_thousand_small_units_are_planned_and_hold_every_rule()
    {
        string order = PlanYard.With("quantity: 20", "quantity: 990", PlanYard.With("quantity: 11", "quantity: 10"));
        order = PlanYard.With("count: 5", "count: 40", PlanYard.With("curing_places: 4", "curing_places: 40", order));
        order = PlanYard.With("due: 2027-04-15", "due: 2027-12-31", PlanYard.With("hours: 4 h", "hours: 10 h", order));
        order = PlanYard.With("on_hand: 500 kg, silo: 600 kg", "on_hand: 30 t, silo: 40 t", order);

        (OrderReading reading, PlanningResult result) = yard.Plan(order);

        Assert.Equal(1000, result.Plan!.Bins.Sum(bin => bin.Units.Count));
        PlanRules.AssertHeld(reading, result);
        Assert.True(result.Figures!.BinsProved);
    }

    [Fact]
    public void Files_of_a_plan_are_the_same_on_every_run_with_any_number_of_threads()
    {
        (OrderReading reading, PlanningResult result) = yard.Plan(PlanYard.Order);
        (OrderReading again, PlanningResult second) = yard.Plan(PlanYard.Order, threads: 1);

        IReadOnlyList<EmittedFile> files = PlanFiles.Emit(reading, result), others = PlanFiles.Emit(again, second);

        Assert.Equal(files.Select(file => file.RelativePath), others.Select(file => file.RelativePath));
        Assert.All(files.Zip(others), pair => Assert.True(pair.First.Bytes.Span.SequenceEqual(pair.Second.Bytes.Span), pair.First.RelativePath));
    }

    [Fact]
    public void Drawings_are_well_formed_and_show_every_mark_once()
    {
        (OrderReading reading, PlanningResult result) = yard.Plan(PlanYard.With("name: Two kinds", "name: \"Fish & <stone>\""));

        IReadOnlyList<EmittedFile> files = PlanFiles.Emit(reading, result);

        XDocument[] drawings = [.. files.Where(file => file.RelativePath.EndsWith(".svg", StringComparison.Ordinal)).Select(file => XDocument.Parse(Encoding.UTF8.GetString(file.Bytes.Span)))];
        Assert.Equal(result.Plan!.Bins.Count + 1, drawings.Length);
        string[] marks = [.. drawings.Skip(1).SelectMany(drawing => drawing.Descendants()).Where(e => (string?)e.Attribute("class") == "mark").Select(e => e.Value)];
        Assert.Equal(result.Plan.Bins.SelectMany(bin => bin.Units).Select(unit => unit.Mark).Order(), marks.Order());
        Assert.Contains("Fish & <stone>: plan", drawings[0].Descendants().Select(e => e.Value));
    }

    /// <summary>RFC 5545: lines of at most 75 octets ending in CR LF (3.1); times without a zone are floating (3.3.5); an entry has UID and DTSTAMP (3.6.1).</summary>
    [Fact]
    public void Calendar_of_the_crew_is_read_back_with_every_print_and_dig_out_in_floating_time()
    {
        (OrderReading reading, PlanningResult result) = yard.Plan(PlanYard.Order);
        string text = Encoding.UTF8.GetString(PlanFiles.Emit(reading, result).Single(file => file.RelativePath == "crew.ics").Bytes.Span);

        Assert.All(text.Split("\r\n"), line => Assert.True(Encoding.UTF8.GetByteCount(line) <= 75 && !line.Contains('\n'), line));
        Ical.Net.Calendar calendar = Ical.Net.Calendar.Load(text)!;
        Assert.Equal(2 * result.Plan!.Bins.Count, calendar.Events.Count);
        Assert.Equal(calendar.Events.Count, calendar.Events.Select(entry => entry.Uid).Distinct().Count());
        PlannedBin last = result.Plan.Bins[^1];
        var dig = calendar.Events.Single(entry => entry.Summary!.StartsWith($"Dig out {last.Name}:", StringComparison.Ordinal));
        Assert.True(dig.Start!.IsFloating);
        Assert.Equal((last.DigStart, last.DigEnd), (dig.Start.Value, dig.End!.Value));
        Assert.All(last.Units, unit => Assert.Contains(unit.Mark, dig.Summary!, StringComparison.Ordinal));
    }

    [Fact]
    public void Materials_of_the_days_add_up_to_those_of_the_bins()
    {
        (OrderReading reading, PlanningResult result) = yard.Plan(PlanYard.Order);
        string[][] rows = [.. Encoding.UTF8.GetString(PlanFiles.Emit(reading, result).Single(file => file.RelativePath == "materials.csv").Bytes.Span)
            .Split('\n', StringSplitOptions.RemoveEmptyEntries).Skip(1).Select(line => line.Split(','))];

        Assert.Equal("sum", rows[^1][0]);
        for (int column = 1; column < 12; column++)
        {
            double[] figures = [.. rows.Select(row => double.Parse(row[column], CultureInfo.InvariantCulture))];
            Assert.Equal(figures[^1], figures[..^1].Sum(), 1e-4 * Math.Max(1.0, figures[^1]));
        }

        double[] sums = [.. rows[^1][4..9].Select(figure => double.Parse(figure, CultureInfo.InvariantCulture))];
        Assert.Equal(result.Plan!.Bins.Sum(bin => bin.Mix.Kilograms), sums[0], 0.1);
        Assert.Equal(0.25 * sums[1], sums[2], 0.01);
        // 500 kg and two deliveries less what is spread, plus what comes back.
        Assert.Equal(500 + 300 - sums[0] + double.Parse(rows[^1][9], CultureInfo.InvariantCulture) - double.Parse(rows[^1][11], CultureInfo.InvariantCulture),
            double.Parse(rows[^1][12], CultureInfo.InvariantCulture), 2.0 * result.Plan.Bins.Count);
    }

    /// <summary>A box of one layer of 4 x 3 whole voxels: the time of a bin is set by hand from the printer's own figures.</summary>
    [Fact]
    public void Time_of_a_bin_is_the_machines_own_for_the_longest_dose_of_each_layer()
    {
        yard.Write("stone.unit.yaml", PlanYard.With("[200 mm, 150 mm, 100 mm]", "[200 mm, 150 mm, 50 mm]", PlanYard.With("rounding: 20 mm", "rounding: 0 mm", PlanYard.Stone)));
        (_, PlanningResult result) = yard.Plan(PlanYard.With("  - {file: slab.unit.yaml, quantity: 11, mark: SL}\n", ""), effort: 0.0);

        BinContent full = result.Contents.First(content => content.Printer == 0);
        LineOnPrinter line = result.Lines.Single(l => l.Footing.Printer == 0);
        double dose = line.Doses.CentiMillilitres.Max() / 100.0;
        // Set up 10 min; two layers spread, 50 s each; one watered, at both stations: move, plunge, dose, hold, withdraw.
        double seconds = 600 + 2 * 50 + 2 * (6 + 4 + dose / 4.0 + 1 + 4);
        Assert.True(full.Spots.Any(spot => spot.Row < 6) && full.Spots.Any(spot => spot.Row >= 6));
        Assert.Equal((int)Math.Ceiling(seconds / 60.0), full.Minutes);
        Assert.Equal(2 * 0.7 * 0.6 * 0.05 * 1700, full.SpreadKilograms, 1e-9);
    }
}
