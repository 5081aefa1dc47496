using Dewstone.Compute.Inspection;
using Dewstone.Model.Description;
using Dewstone.Model.Diagnostics;
using Dewstone.Model.Quantities;
using Dewstone.Model.Results;

namespace Dewstone.Compute.Tests.Inspection;

public sealed class RequirementCheckTests
{
    private static readonly ReefUnit Plain = Samples.Box(0.9, 0.9, 0.9);

    internal static SolidSummary Solid(double match = 0.9, double? share = 0.97, double hardened = 0.5) => new()
    {
        TargetCubicMetres = 0.5,
        HardenedCubicMetres = hardened,
        ShapeMatch = match,
        WaterInHardenedCubicMetres = 0.1,
        MeanWaterCement = 0.5,
        LargestWaterCement = 0.7,
        ShareInBand = share,
    };

    private static Estimate Masses(double liftKilograms) => new()
    {
        SpreadKilograms = 0,
        HardenedDryKilograms = 0,
        ReusableKilograms = 0,
        LostKilograms = 0,
        FreshKilograms = liftKilograms,
        LiftKilograms = liftKilograms,
        DryKilograms = 0,
        SaturatedKilograms = 0,
        SubmergedKilograms = 0,
        WaterCubicMetres = 0,
        WaterByLayerCubicMetres = [],
        FlushCubicMetres = 0,
        BinderKilograms = 0,
        AdditiveKilograms = [],
        RecycledShare = 0,
        SavingAgainstFilledBox = 0,
        CarbonKilograms = 0,
        Cost = 0,
        Currency = "EUR",
        SetupSeconds = 0,
        PrintSeconds = 0,
        SecondsByAction = [],
    };

    internal static RequirementReport Check(Requirements require, SolidSummary? solid = null, double lift = 1000) =>
        RequirementCheck.Check(Samples.Job(Plain with { Require = require }), solid ?? Solid(), Masses(lift));

    private static void AssertOne(RequirementReport report, string code, string keyPath)
    {
        Diagnostic finding = Assert.Single(report.Findings);
        Assert.Equal((code, Severity.Error, keyPath), (finding.Code, finding.Severity, finding.Key!.Path));
        Assert.NotEmpty(finding.Remedy);
    }

    [Fact]
    public void Nothing_required_gives_no_results_and_no_findings()
    {
        RequirementReport report = Check(new Requirements());

        Assert.Empty(report.Results);
        Assert.Empty(report.Findings);
    }

    [Fact]
    public void Met_requirements_are_listed_with_their_margins()
    {
        RequirementReport report = Check(
            new Requirements { MaxMass = new Mass(1150), WaterCement = new WaterCementBand(0.25, 0.6, 0.95), MinShapeMatch = 0.8 });

        Assert.Empty(report.Findings);
        Assert.Equal(["mass.max", "water_cement.share", "shape_match.min"], report.Results.Select(r => r.Id));
        Assert.All(report.Results, r => Assert.True(r.Met));
        Assert.Equal(150.0, report.Results[0].Margin, 9);
        Assert.Equal(0.02, report.Results[1].Margin, 9);
        Assert.Equal(0.1, report.Results[2].Margin, 9);
        Assert.Equal(["kg", "1", "1"], report.Results.Select(r => r.Unit));
    }

    [Fact]
    public void Too_heavy_a_unit_is_an_error()
    {
        AssertOne(Check(new Requirements { MaxMass = new Mass(999.9) }), "DW5001", "require.mass.max");
        Assert.Empty(Check(new Requirements { MaxMass = new Mass(1000) }).Findings);
    }

    [Fact]
    public void Too_small_a_share_in_the_band_is_an_error()
    {
        AssertOne(Check(new Requirements { WaterCement = new WaterCementBand(0.25, 0.6, 0.98) }), "DW3012", "require.water_cement.share");
        Assert.Empty(Check(new Requirements { WaterCement = new WaterCementBand(0.25, 0.6, 0.97) }).Findings);
    }

    [Fact]
    public void Too_poor_a_match_is_an_error()
    {
        AssertOne(Check(new Requirements { MinShapeMatch = 0.91 }), "DW3011", "require.shape_match.min");
        Assert.Empty(Check(new Requirements { MinShapeMatch = 0.9 }).Findings);
    }

    [Fact]
    public void Unit_heavier_than_the_lift_is_an_error_on_the_printer()
    {
        RequirementReport report = Check(new Requirements(), lift: 2500.1);

        Diagnostic finding = Assert.Single(report.Findings);
        Assert.Equal(("DW5002", DescriptionKind.Printer, "lift.max_mass"), (finding.Code, finding.Key!.Kind, finding.Key.Path));
        Assert.Empty(Check(new Requirements(), lift: 2500).Findings);
    }

    [Fact]
    public void Nothing_hardened_is_an_error_of_its_own() =>
        Assert.Equal("DW3009", Assert.Single(Check(new Requirements(), Solid(hardened: 0)).Findings).Code);
}
