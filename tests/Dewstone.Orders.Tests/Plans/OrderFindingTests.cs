using Dewstone.Model.Diagnostics;
using Dewstone.Orders.Plans;

namespace Dewstone.Orders.Tests.Plans;

/// <summary>For each finding of planning an order that raises it, at its key's line, where the plain order raises none of them.</summary>
public sealed class OrderFindingTests : IDisposable
{
    private const string SevenTonnes = "mix_stock: {on_hand: 7 t, silo: 8 t}";
    private const string Stock = "mix_stock: {on_hand: 500 kg, silo: 600 kg, deliveries: [{on: 2027-03-03, mass: 150 kg}, {on: 2027-03-10, mass: 150 kg}]}";

    private readonly PlanYard yard = new();

    public void Dispose() => yard.Dispose();

    [Fact]
    public void The_plain_order_raises_at_most_that_its_plan_is_not_proved()
    {
        (_, PlanningResult result) = yard.Plan(PlanYard.With(Stock, SevenTonnes));

        Assert.NotNull(result.Plan);
        Assert.DoesNotContain(result.Findings, finding => finding.Code is not "DW7012");
    }

    [Theory]
    [InlineData("DW7001", "units[1].file", "handling: 400 kg", "handling: 40 kg")]
    [InlineData("DW7002", "shifts", "to: \"20:00\"", "to: \"18:15\"")]
    [InlineData("DW7004", "mix_stock", Stock, "mix_stock: {on_hand: 150 kg, silo: 8 t}")]
    [InlineData("DW7005", "due", "due: 2027-04-15", "due: 2027-03-03")]
    [InlineData("DW7007", "due", "due: 2027-04-15", "due: 2027-03-01")]
    [InlineData("DW7008", "mix_stock.deliveries", "on: 2027-03-03, mass: 150 kg", "on: 2027-03-02, mass: 590 kg")]
    [InlineData("DW7013", "crew.dig_out", "dig_out: 30 min", "dig_out: 5 h")]
    public void Each_finding_is_raised_at_its_key(string code, string key, string was, string becomes)
    {
        (var reading, PlanningResult result) = yard.Plan(PlanYard.With(was, becomes));

        Diagnostic finding = result.Findings.First(f => f.Code == code && f.Key?.Path == key);
        Assert.Equal(reading.Source.Find(key), finding.Location);
        Assert.True(finding.Location!.Line > 1);
    }

    /// <summary>An order with mix, bins and places enough, in which one thing alone is scarce.</summary>
    [Theory]
    [InlineData("crew", "hours: 4 h, dig_out: 30 min", "hours: 1 h, dig_out: 20 min")]
    [InlineData("bins.count", "bins: {count: 60", "bins: {count: 1")]
    [InlineData("bins.curing_places", "curing_places: 60", "curing_places: 1")]
    [InlineData("bins.set_before_dig", "set_before_dig: 36 h", "set_before_dig: 20 d")]
    [InlineData("mix_stock", SevenTonnes, "mix_stock: {on_hand: 200 kg, silo: 8 t, deliveries: [{on: 2027-04-15, mass: 7 t}]}")]
    public void The_one_limit_that_binds_is_named_and_no_other(string key, string was, string becomes)
    {
        string order = PlanYard.With(Stock, SevenTonnes, PlanYard.With("due: 2027-04-15", "due: 2027-03-14"));
        order = PlanYard.With("count: 5", "count: 60", PlanYard.With("curing_places: 4", "curing_places: 60", order));
        Assert.DoesNotContain(yard.Plan(order).Result.Findings, f => f.Severity == Severity.Error);

        PlanningResult result = yard.Plan(PlanYard.With(was, becomes, order)).Result;

        Assert.Equal([key], result.Findings.Where(f => f.Code is "DW7006" or "DW7007").Select(f => f.Key!.Path));
        Assert.Contains(result.Findings, f => f.Code == "DW7005");
    }

    /// <summary>The crew works on the days on which a shift begins, so that one shift a week holds up both.</summary>
    [Fact]
    public void One_short_shift_a_week_binds()
    {
        string order = PlanYard.With("days: [mon, tue, wed, thu, fri], from: \"18:00\", to: \"20:00\"", "days: [mon], from: \"18:00\", to: \"18:30\"", PlanYard.With(Stock, SevenTonnes));

        Assert.Contains(yard.Plan(PlanYard.With("due: 2027-04-15", "due: 2027-03-14", order)).Result.Findings, f => f.Code is "DW7006" or "DW7007" && f.Key!.Path == "shifts");
    }

    [Fact]
    public void A_unit_larger_than_every_bin_is_named_with_what_is_in_its_way()
    {
        yard.Write("slab.unit.yaml", PlanYard.With("[200 mm, 150 mm, 100 mm]", "[900 mm, 100 mm, 100 mm]", PlanYard.Stone));
        (_, PlanningResult result) = yard.Plan(PlanYard.Order);

        Diagnostic finding = Assert.Single(result.Findings, f => f.Code == "DW7001");
        Assert.Contains("Small printer: the unit is 900 mm along x", finding.Message, StringComparison.Ordinal);
        Assert.Contains("Other printer:", finding.Message, StringComparison.Ordinal);
        Assert.Null(result.Plan);
    }

    [Fact]
    public void A_mix_that_never_bears_its_units_is_told()
    {
        yard.Write("small.mix.yaml", PlanYard.With("25 MPa", "5 MPa", PlanYard.Mix));

        Assert.Contains(yard.Plan(PlanYard.Order).Result.Findings, f => f.Code == "DW7003");
    }

    [Fact]
    public void Two_mixes_of_one_stock_are_told()
    {
        yard.Write("other.mix.yaml", PlanYard.With("Small mix", "Other mix", PlanYard.Mix));
        yard.Write("slab.unit.yaml", PlanYard.With("small.mix.yaml", "other.mix.yaml", PlanYard.Stone));

        PlanningResult result = yard.Plan(PlanYard.Order).Result;

        Assert.Contains(result.Findings, f => f.Code == "DW7009");
        // Units of two mixes never share a bin.
        Assert.All(result.Plan!.Bins, bin => Assert.Single(bin.Units.Select(unit => unit.Mark[..2]).Distinct()));
        Assert.DoesNotContain(yard.Plan(PlanYard.With("curing:", "mix: small.mix.yaml\ncuring:")).Result.Findings, f => f.Code == "DW7009");
    }

    [Fact]
    public void A_plan_that_was_not_searched_through_says_so_and_one_that_was_does_not()
    {
        string order = PlanYard.With("quantity: 20", "quantity: 1", PlanYard.With("quantity: 11", "quantity: 1"));

        Assert.DoesNotContain(yard.Plan(order).Result.Findings, f => f.Code == "DW7012");
        Assert.Contains(yard.Plan(PlanYard.Order, effort: 0.0).Result.Findings, f => f.Code == "DW7012");
    }

    [Fact]
    public void Too_few_bins_and_too_little_mix_are_named_together()
    {
        string order = PlanYard.With("due: 2027-04-15", "due: 2027-03-14", PlanYard.With(Stock, "mix_stock: {on_hand: 150 kg, silo: 8 t}"));
        order = PlanYard.With("bins: {count: 5", "bins: {count: 1", order);

        PlanningResult result = yard.Plan(order).Result;

        Assert.Equal(["bins.count", "mix_stock"], result.Findings.Where(f => f.Code == "DW7007").Select(f => f.Key!.Path).Order());
        Assert.Null(result.Plan);
    }
}
