using System.Text;
using System.Text.Json.Nodes;

namespace Dewstone.Cli.Tests.Fuzzing;

/// <summary>Faults in reading job folders that damaged files brought to light, each by its own small case: once they ended with 70, hung, or took gigabytes.</summary>
public sealed class FoundJobFaultTests(FoundJobFaultTests.Compiled compiled) : IClassFixture<FoundJobFaultTests.Compiled>, IDisposable
{
    private readonly FuzzYard yard = compiled.Yard;

    private string Job => yard.In("yard", "out", "plain.job");

    public void Dispose() => yard.Restore(yard.Standing());

    [Fact]
    public async Task Devices_and_pipes_in_place_of_files_are_refused()
    {
        Assert.SkipUnless(OperatingSystem.IsLinux(), "needs /dev/full and named pipes");
        foreach (string file in new[] { "job.json", "manifest.json", "predicted.vti", "sequence.csv" })
        {
            foreach (string target in new[] { "/dev/zero", "/dev/full", yard.In("yard", "nowhere") })
            {
                Link(file, target);
                await AssertRefused("verify", Job);
                if (file != "sequence.csv")
                {
                    await AssertRefused("diff", Job, yard.In("yard", "other", "plain.job"));
                }
            }
        }

        Link("job.json", yard.In("yard", "pipe"));
        await AssertRefused("verify", Job);
        Link("manifest.json", yard.In("yard", "pipe"));
        await AssertRefused("diff", yard.In("yard", "other", "plain.job"), Job);
    }

    [Theory]
    [InlineData("job.json", "Plain step", "\\ud800")]
    [InlineData("manifest.json", "plain", "\\udfff\\ud800")]
    [InlineData("job.json", "Plain step", "Plain\\u001b[2Jstep")]
    [InlineData("job.json", "Plain step", "Plain \u009b step")]
    public async Task Texts_that_are_none_are_damage(string file, string from, string to)
    {
        await Replace(file, from, to);
        await AssertRefused("verify", Job);
        await AssertRefused("diff", Job, yard.In("yard", "other", "plain.job"));
    }

    [Fact]
    public async Task Bytes_that_are_no_text_are_damage()
    {
        foreach (string file in new[] { "job.json", "manifest.json", "findings.sarif", "estimate.json" })
        {
            byte[] bytes = await File.ReadAllBytesAsync(Path.Combine(Job, file));
            bytes[Array.IndexOf(bytes, (byte)'"') + 1] = 0xFF;
            await File.WriteAllBytesAsync(Path.Combine(Job, file), bytes);
            await AssertRefused("diff", Job, yard.In("yard", "other", "plain.job"));
        }
    }

    [Theory]
    [InlineData("manifest.json", "\"version\": ")]
    [InlineData("job.json", "\"version\":")]
    [InlineData("estimate.json", "\"version\": ")]
    public async Task Number_of_three_hundred_digits_is_damage(string file, string key)
    {
        await Replace(file, key, key + new string('1', 300));
        await AssertRefused("verify", Job);
    }

    // A few digits must not make the program take memory or time for a grid that no dose of the job stands on.
    [Theory]
    [InlineData("\"columns\":", "\"columns\":30000000,\"was\":")]
    [InlineData("\"nx\":", "\"nx\":100000000,\"was\":")]
    [InlineData("\"layers\":", "\"layers\":-5,\"was\":")]
    [InlineData("\"per_pitch\":", "\"per_pitch\":0,\"was\":")]
    [InlineData("\"exponent\":", "\"exponent\":2000000000,\"was\":")]
    [InlineData("\"diffusivity_m2_s\":", "\"diffusivity_m2_s\":1e30,\"was\":")]
    [InlineData("\"window_s\":", "\"window_s\":1e300,\"was\":")]
    [InlineData("\"pitch_m\":", "\"pitch_m\":0,\"was\":")]
    [InlineData("\"every_layers\":", "\"every_layers\":0,\"was\":")]
    [InlineData("\"spreading_s\":", "\"spreading_s\":-5,\"was\":")]
    [InlineData("\"gain\":", "\"gain\":0,\"was\":")]
    [InlineData("\"gain\":1,\"offset_ml\":0,\"flow_m3_s\":", "\"gain\":1,\"offset_ml\":0,\"flow_m3_s\":0,\"was\":")]
    public async Task Numbers_that_cannot_be_are_damage(string from, string to)
    {
        await Replace("job.json", from, to);
        await AssertRefused("diff", Job, yard.In("yard", "other", "plain.job"));
        await AssertRefused("verify", Job);
    }

    [Fact]
    public async Task Manifest_that_lists_a_file_twice_or_has_no_totals_is_damaged()
    {
        JsonNode manifest = JsonNode.Parse(await File.ReadAllTextAsync(Path.Combine(Job, "manifest.json")))!;
        JsonArray files = manifest["files"]!.AsArray();
        JsonNode twin = files[0]!.DeepClone();
        twin["sha256"] = new string('0', 64);
        files.Add(twin);
        await File.WriteAllTextAsync(Path.Combine(Job, "manifest.json"), manifest.ToJsonString());
        await AssertRefused("verify", Job);
        manifest["totals"] = new JsonArray();
        await File.WriteAllTextAsync(Path.Combine(Job, "manifest.json"), manifest.ToJsonString());
        await AssertRefused("verify", Job);
    }

    [Fact]
    public async Task Field_that_claims_more_cells_than_its_bytes_can_hold_is_refused()
    {
        byte[] bytes = await File.ReadAllBytesAsync(Path.Combine(Job, "predicted.vti"));
        string text = Encoding.Latin1.GetString(bytes);
        int at = text.IndexOf("WholeExtent=\"", StringComparison.Ordinal) + "WholeExtent=\"".Length, end = text.IndexOf('"', at);
        await File.WriteAllBytesAsync(Path.Combine(Job, "predicted.vti"), Encoding.Latin1.GetBytes(text[..at] + "0 800 0 800 0 800" + text[end..]));
        await AssertRefused("diff", Job, yard.In("yard", "other", "plain.job"));
    }

    [Fact]
    public async Task Line_of_a_list_with_control_characters_is_shown_without_them()
    {
        yard.Write("approved.txt", "7Q2D\u001b[2J\u0007\n");
        Words.Answer answer = await AssertRefused("verify", Job, "--approved", yard.In("yard", "approved.txt"));
        Assert.Contains("error DW8214: `7Q2D\u00b7[2J\u00b7`", answer.Error, StringComparison.Ordinal);
    }

    private static async Task<Words.Answer> AssertRefused(params string[] words)
    {
        Words.Answer answer = await Words.Run([.. words, "--quiet"]);
        Assert.True(answer.Code is ExitCode.No or ExitCode.InputAtFault, $"{answer.Code}: {answer.Error}{answer.Output}");
        Assert.Matches("error DW8[0-9]{3}: ", answer.Output + answer.Error);
        Assert.DoesNotContain('\u001b', answer.Output + answer.Error);
        return answer;
    }

    private async Task Replace(string file, string from, string to)
    {
        string text = await File.ReadAllTextAsync(Path.Combine(Job, file));
        Assert.Contains(from, text, StringComparison.Ordinal);
        await File.WriteAllTextAsync(Path.Combine(Job, file), text.Replace(from, to, StringComparison.Ordinal));
    }

    private void Link(string file, string target)
    {
        yard.Restore(yard.Standing());
        FuzzYard.Remove(Path.Combine(Job, file));
        File.CreateSymbolicLink(Path.Combine(Job, file), target);
    }

    /// <summary>The job, compiled once.</summary>
    public sealed class Compiled : IAsyncLifetime
    {
        internal FuzzYard Yard { get; private set; } = null!;

        public async ValueTask InitializeAsync() => Yard = await JobFuzzYard.Make();

        public ValueTask DisposeAsync()
        {
            Yard.Dispose();
            return ValueTask.CompletedTask;
        }
    }
}
