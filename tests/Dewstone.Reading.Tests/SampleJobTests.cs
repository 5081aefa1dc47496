namespace Dewstone.Reading.Tests;

public sealed class SampleJobTests
{
    [Fact]
    public void Unit_of_the_manual_reads_with_all_it_names()
    {
        ReadResult result = DescriptionReader.ReadJob(SampleFiles.Unit);

        Assert.Empty(result.Diagnostics);
        Assert.NotNull(result.Job);
        Assert.Equal("Wrack block", result.Job.Unit.Name);
        Assert.Equal("Estuary mix", result.Job.Mix.Name);
        Assert.Equal("Yard printer", result.Job.Printer.Name);
        Assert.Equal("Wrackline shoal", result.Job.Site?.Name);
        Assert.Equal(576, result.Job.Needles?.Needles.Count);
        Assert.Null(result.Job.Tonight);
        Assert.Equal(["unit", "mix", "printer", "needles", "site"], result.Inputs.Select(input => input.Role));
    }

    [Fact]
    public void Order_of_the_manual_reads() => Assert.Empty(DescriptionReader.ReadOrder(SampleFiles.Order).Diagnostics);
}
