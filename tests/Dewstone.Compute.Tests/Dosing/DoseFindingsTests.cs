using Dewstone.Compute.Dosing;
using Dewstone.Model.Description;
using Dewstone.Model.Diagnostics;
using Dewstone.Model.Quantities;
using Dewstone.Model.Results;

namespace Dewstone.Compute.Tests.Dosing;

/// <summary>Each finding about doses: what raises it, and that the nearest sound case does not.</summary>
public sealed class DoseFindingsTests
{
    private static IReadOnlyList<Diagnostic> Dose(
        WaterCementBand? band = null, Func<Needle, Needle>? needle = null, DryMix? mix = null, double share = 1.0)
    {
        Printer yard = Samples.YardPrinter();
        ReefUnit unit = Samples.Box(0.1, 0.1, 0.05) with { Require = new Requirements { WaterCement = band } };
        JobDescription job = Samples.Job(unit, mix, yard with { Needle = needle is null ? yard.Needle : needle(yard.Needle) });
        PlacementResult placed = Placer.Place(job, 2);
        TargetField target = Samples.Target(placed.Cells!, p => share * Samples.InBox(placed.Placement!)(p));
        return PlainDoser.Dose(band is null ? Samples.Pinned(job) : job, placed.Lattice!, target).Findings;
    }

    private static Diagnostic Only(IReadOnlyList<Diagnostic> findings, string code)
    {
        Diagnostic finding = Assert.Single(findings);
        Assert.Equal(code, finding.Code);
        Assert.NotEmpty(finding.Remedy);
        Assert.NotNull(finding.Key);
        return finding;
    }

    [Fact]
    public void Sound_doses_have_no_finding() => Assert.Empty(Dose());

    [Fact]
    public void Dose_above_the_most_is_a_warning_with_the_missing_water()
    {
        Diagnostic finding = Only(Dose(needle: n => n with { Most = Volume.FromMillilitres(25) }), "DW3001");

        // 4 voxels x (27.625 - 25) mL = 10.5 mL.
        Assert.Contains("4 voxels want up to 27.63 mL", finding.Message);
        Assert.Contains("10.5 mL missing", finding.Message);
        Assert.Empty(Dose(needle: n => n with { Most = Volume.FromMillilitres(27.7) }));
    }

    [Fact]
    public void Dose_above_the_pores_is_a_warning()
    {
        // At 45 % cement 0.52 wants 0.52 x 765 x 0.125 = 49.7 mL; the pores hold some 46 mL.
        DryMix rich = Samples.Mix(0.45, 1700);

        Diagnostic finding = Only(Dose(mix: rich, needle: n => n with { Most = Volume.FromMillilitres(60) }), "DW3002");

        Assert.Contains("pores of a voxel hold", finding.Message);
        Assert.Empty(Dose(mix: Samples.Mix(0.40, 1700), needle: n => n with { Most = Volume.FromMillilitres(60) }));
    }

    [Theory]
    [InlineData(0.05, "4 get none (5.5 mL left out), 0 get the least")]
    [InlineData(0.06, "0 get none (0 mL left out), 4 get the least (1.4 mL added)")]
    public void Doses_below_the_least_are_noted_with_what_was_left_out_or_added(double share, string said)
    {
        // 0.05 x 27.625 = 1.38 mL and 0.06 x 27.625 = 1.66 mL against a least dose of 3 or 2 mL.
        IReadOnlyList<Diagnostic> findings = Dose(share: share, needle: n => n with { Least = Volume.FromMillilitres(share < 0.055 ? 3 : 2) });

        Assert.Contains(said, findings[0].Message);
        Assert.Equal(("DW3003", Severity.Note), (findings[0].Code, findings[0].Severity));
        Assert.DoesNotContain(Dose(share: 0.08), f => f.Code == "DW3003");
    }

    [Fact]
    public void Band_above_saturation_is_an_error()
    {
        IReadOnlyList<Diagnostic> findings = Dose(new WaterCementBand(0.91, 1.2, 0.9), n => n with { Most = Volume.FromMillilitres(60) });

        // Saturation of this bed is 0.903405.
        Assert.Equal(("DW3004", Severity.Error), (findings[0].Code, findings[0].Severity));
        Assert.Contains("holds 0.903", findings[0].Message);
        Assert.DoesNotContain(Dose(new WaterCementBand(0.90, 1.2, 0.9)), f => f.Code == "DW3004");
    }

    [Fact]
    public void Band_that_keeps_the_dose_lean_is_a_warning()
    {
        Diagnostic finding = Only(Dose(new WaterCementBand(0.25, 0.50, 0.9)), "DW3005");

        // 0.48 x 425 kg/m3 x 0.125 L = 25.5 mL, less than the dose that closes the corners of this mix and pitch.
        Assert.Equal("require.water_cement.max", finding.Key!.Path);
        Assert.Contains("25.5 mL", finding.Message);
        Assert.Empty(Dose(new WaterCementBand(0.25, 0.60, 0.9)));
    }

    [Fact]
    public void Solid_too_thin_for_any_dose_is_an_error()
    {
        Diagnostic finding = Only(Dose(share: 0.01), "DW3006");

        Assert.Equal(Severity.Error, finding.Severity);
    }
}
