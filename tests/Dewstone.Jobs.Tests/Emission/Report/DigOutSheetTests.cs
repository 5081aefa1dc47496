using Dewstone.Model.Results;

namespace Dewstone.Jobs.Tests.Emission.Report;

public sealed class DigOutSheetTests
{
    [Fact]
    public void Sheet_says_when_by_what_and_what_to_beware_of()
    {
        CompiledJob job = StrongJob.Make();
        string sheet = SamplePage.Of(job).TextOf("lift");

        Assert.Contains("Not lifted before", sheet, StringComparison.Ordinal);
        Assert.Contains("2 straps under it", sheet, StringComparison.Ordinal);
        Assert.Contains($"{job.Strength!.Lifting.LoadCellKilograms.Least:0} to {job.Strength.Lifting.LoadCellKilograms.Most:0} kg", sheet, StringComparison.Ordinal);
        Assert.Contains("29 CFR 1926.704", sheet, StringComparison.Ordinal);
        Assert.Contains("29 CFR 1926.1153", sheet, StringComparison.Ordinal);
        Assert.Contains("A licensed engineer decides on the lift", sheet, StringComparison.Ordinal);
    }

    [Fact]
    public void Sheet_of_a_unit_that_does_not_say_how_draws_no_strap()
    {
        SamplePage page = SamplePage.Of(StrongJob.Make(strapped: false));
        Assert.Contains("does not say how it is lifted", page.TextOf("lift"), StringComparison.Ordinal);
        Assert.DoesNotContain(page.Part("lift").Descendants(), element => (string?)element.Attribute("class") == "strap");
        Assert.Equal(2, SamplePage.Of(StrongJob.Make()).Part("lift").Descendants().Count(element => (string?)element.Attribute("class") == "strap"));
    }

    [Fact]
    public void Held_job_has_no_sheet_to_lift_by()
    {
        CompiledJob held = StrongJob.Make() with { Findings = [Samples.SolidError] };
        Assert.DoesNotContain(SamplePage.Of(held).Root.Descendants(), element => (string?)element.Attribute("id") == "lift");
        Assert.Contains("Strength by age", SamplePage.Of(held).TextOf("strength"), StringComparison.Ordinal);
        Assert.Contains("not reckoned", SamplePage.Of(Samples.Job()).TextOf("strength"), StringComparison.Ordinal);
    }
}
