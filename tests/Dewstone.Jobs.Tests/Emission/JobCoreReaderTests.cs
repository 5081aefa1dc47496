using System.Text;
using System.Text.Json.Nodes;
using Dewstone.Jobs.Emission;
using Dewstone.Model.Description;
using Dewstone.Model.Results;
using Dewstone.Reading.Job;

namespace Dewstone.Jobs.Tests.Emission;

/// <summary>Reads back what <see cref="JobCoreEmitter"/> writes; what is read and written again gives the same bytes, so nothing is lost.</summary>
public sealed class JobCoreReaderTests
{
    [Theory]
    [MemberData(nameof(SchemaTests.Jobs), MemberType = typeof(SchemaTests))]
    public void Core_read_and_written_again_has_the_same_bytes(string name, CompiledJob job)
    {
        JobData data = JobDataEmitter.Emit(job, Samples.Settings);
        ReadOnlyMemory<byte> written = data.Files[0].Bytes;

        Assert.True(JobCoreReader.TryRead(written, out JobCore? core, out string fault), $"{name}: {fault}");
        CompiledJob again = job with { Description = core!.Description, Placement = core.Placement, Lattice = core.Lattice, Timeline = core.Timeline };
        EmittedFile sequence = new(core.Sequence.Path, SequenceEmitter.Emit(job.Timeline).Bytes);
        EmittedFile rewritten = JobCoreEmitter.Emit(again, Samples.Constants, new JobTables(DoseTableEmitter.Emit(job.Doses, needles: job.Description.Needles, Samples.OneStation), [], sequence));

        Assert.Equal(Encoding.UTF8.GetString(written.Span), Encoding.UTF8.GetString(rewritten.Bytes.Span));
        Assert.Equal(job.Moisture.Grid, core.Cells);
        Assert.Equal(job.Lattice, core.Lattice);
        Assert.Equal(job.Placement, core.Placement);
        Assert.Equal(600.0, core.WindowSeconds);
        Assert.Equal(0.0935, core.ThresholdContent);
        Assert.Equal(job.Moisture.Porosity, core.Porosity);
        Assert.Equal(["doses/layer-002.csv", "doses/layer-003.csv"], core.DoseTables.Select(table => table.Path));
        Assert.Equal(JobCoreEmitter.DesignOf(job.Description.Unit), JobCoreEmitter.DesignOf(core.Description.Unit));
    }

    [Fact]
    public void Correlations_of_a_calibrated_mix_are_kept()
    {
        CompiledJob job = Samples.Job();
        DryMix mix = job.Description.Mix with { Uncertainty = new MixUncertainty(0.03, 0.01, 0.005) { Correlation = new MixCorrelation(0.4, -0.9, -0.2) } };
        JobData data = JobDataEmitter.Emit(job with { Description = job.Description with { Mix = mix } }, Samples.Settings);
        Assert.True(JobCoreReader.TryRead(data.Files[0].Bytes, out JobCore? core, out string fault), fault);
        Assert.Equal(mix.Uncertainty, core!.Description.Mix.Uncertainty);
    }

    [Fact]
    public void Unknown_members_are_ignored()
    {
        JsonNode core = Core();
        core["later"] = "something new";
        core["lattice"]!["later"] = 1;

        Assert.True(Read(core, out _));
    }

    [Theory]
    [InlineData("format", "\"another\"", "it is not of the format dewstone-job")]
    [InlineData("version", "2", "its version is 2, and this program reads version 1")]
    [InlineData("lattice", "null", "lattice is not an object")]
    [InlineData("lattice/columns", "\"four\"", "lattice.columns is not a whole number")]
    [InlineData("lattice/columns", "1.5", "lattice.columns is not a whole number")]
    [InlineData("lattice/origin_m", "[1]", "lattice.origin_m is not 2 numbers")]
    [InlineData("lattice/shifted_layers", "0", "lattice.shifted_layers is not true or false")]
    [InlineData("model/window_s", "1e999", "model.window_s is not a finite number")]
    [InlineData("description/mix/wetting/law", "\"linear\"", "description.mix.wetting.law is not one of the words known here")]
    [InlineData("description/unit/relief/faces", "[\"inside\"]", "description.unit.relief.faces[0] is not a face")]
    [InlineData("timeline", "[{}]", "timeline[0] has no layer")]
    public void Damaged_member_is_named(string path, string value, string expected)
    {
        JsonNode core = Core();
        string[] parts = path.Split('/');
        JsonNode at = core;
        foreach (string part in parts[..^1])
        {
            at = at[part]!;
        }

        at[parts[^1]] = "MARK";
        string text = core.ToJsonString().Replace("\"MARK\"", value, StringComparison.Ordinal);

        Assert.False(JobCoreReader.TryRead(Encoding.UTF8.GetBytes(text), out _, out string fault));
        Assert.Equal(expected, fault);
    }

    [Theory]
    [InlineData("")]
    [InlineData("{")]
    [InlineData("[]")]
    [InlineData("null")]
    [InlineData("{}")]
    public void What_is_no_core_is_refused(string text)
    {
        Assert.False(JobCoreReader.TryRead(Encoding.UTF8.GetBytes(text), out _, out string fault));
        Assert.NotEmpty(fault);
        Assert.DoesNotContain('\n', fault);
    }

    private static JsonNode Core() => JsonNode.Parse(JobDataEmitter.Emit(Samples.Job(), Samples.Settings).Files[0].Bytes.Span)!;

    private static bool Read(JsonNode core, out JobCore? read) => JobCoreReader.TryRead(Encoding.UTF8.GetBytes(core.ToJsonString()), out read, out _);
}
