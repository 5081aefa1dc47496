using System.Text.RegularExpressions;
using Dewstone.Model.Diagnostics;
using Dewstone.Reading.Schema;

namespace Dewstone.Reading.Tests.Schema;

public sealed partial class TemplateWriterTests
{
    public static TheoryData<DescriptionKind> AllKinds => [.. Kinds.All];

    [Theory]
    [MemberData(nameof(AllKinds))]
    public void Template_reads_without_a_finding(DescriptionKind kind) => Assert.Empty(Kinds.Findings(kind, TemplateWriter.Write(kind)));

    [Fact]
    public void Unit_template_makes_a_job_beside_the_sample_files()
    {
        using TemporaryFolder folder = TemporaryFolder.WithSamples();
        string unit = folder.Write("units/new.unit.yaml", TemplateWriter.Write(DescriptionKind.Unit));

        ReadResult result = DescriptionReader.ReadJob(unit);

        Assert.Empty(result.Diagnostics);
        Assert.NotNull(result.Job);
    }

    /// <summary>Each line in comments reads when its comment sign is taken away, unless it says that it belongs to another way.</summary>
    [Theory]
    [MemberData(nameof(AllKinds))]
    public void Key_in_comments_reads_when_it_is_let_in(DescriptionKind kind)
    {
        string[] lines = TemplateWriter.Write(kind).Split('\n');
        int[] optional =
            [.. Enumerable.Range(3, lines.Length - 3).Where(i => Commented().IsMatch(lines[i]) && !OtherWay().IsMatch(lines[i]))];
        Assert.NotEmpty(optional);

        foreach (int i in optional)
        {
            string[] changed = [.. lines];
            changed[i] = Commented().Replace(lines[i], "${indent}");
            Assert.True(Kinds.Findings(kind, string.Join('\n', changed)) is [], lines[i]);
        }
    }

    [GeneratedRegex("^(?<indent> *)# (?=[a-z_0-9]+: )", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Commented();

    [GeneratedRegex("  # (or so|with [a-z]+: [a-z]+): ", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex OtherWay();
}
