using System.Text;
using System.Text.Json.Nodes;
using System.Xml.Linq;
using Dewstone.Jobs.Bins;
using Dewstone.Jobs.Comparison;
using Dewstone.Jobs.Emission;
using Dewstone.Jobs.Folders;
using Dewstone.Jobs.Tests.Folders;
using Dewstone.Jobs.Verification;
using Dewstone.Model.Diagnostics;
using Dewstone.Model.Results;
using Dewstone.Reading.Job;

namespace Dewstone.Jobs.Tests.Bins;

public sealed class BinFilesTests : IDisposable
{
    private static readonly Lazy<BinResult> Compiled = new(() => BinSamples.Compile(Question()));

    private readonly TemporaryFolder folder = new();

    public void Dispose() => folder.Dispose();

    [Fact]
    public void Bin_job_holds_its_units_and_no_surfaces()
    {
        IReadOnlyList<EmittedFile> files = Files(Compiled.Value, 2);

        Assert.Equal(
            ["doses", "estimate.json", "findings.sarif", "job.json", "labels.html", "layers", "manifest.json", "predicted.vti", "report.html", "sequence.csv", "units.csv"],
            files.Select(file => file.RelativePath.Split('/')[0]).Distinct().Order(StringComparer.Ordinal));
        Assert.True(JobCoreReader.TryRead(files[0].Bytes, out JobCore? core, out string fault), fault);
        Assert.Equal(["LS-001", "LS-002"], core!.Description.Bin.Select(unit => unit.Mark));
        Assert.Equal(Compiled.Value.Units.Select(unit => unit.Binned.Placement), core.Description.Bin.Select(unit => unit.Placement));
        Assert.Equal(JobCoreEmitter.DesignOf(BinSamples.Step), JobCoreEmitter.DesignOf(core.Description.Bin[1].Unit));
        string[] rows = Text(files, "units.csv").TrimEnd().Split('\n');
        Assert.Equal(3, rows.Length);
        // Box of 190 mm by 150 mm, turned once in a footprint of 4 by 3 pitches from column 8, row 3: 150 mm by 190 mm, 10 mm inside the far edge.
        Assert.StartsWith($"LS-002,Little step,{JobCoreEmitter.DesignOf(BinSamples.Step)},90,350.0,100.0,50.0,8,3,relief=3,", rows[2], StringComparison.Ordinal);
    }

    [Fact]
    public void Labels_and_report_are_well_formed_and_name_every_unit()
    {
        IReadOnlyList<EmittedFile> files = Files(Compiled.Value, 2);

        XElement labels = Page(files, "labels.html"), report = Page(files, "report.html");
        Assert.Equal(["LS-001", "LS-002"], labels.Descendants("h1").Select(head => head.Value));
        // Set for 36 h by the order, which is later than the strength asks for.
        Assert.True(BinSamples.Straight.DigOutDays < 1.5);
        Assert.All(labels.Descendants("article"), label => Assert.Contains("not before 36 h after the last layer", label.Value, StringComparison.Ordinal));
        Assert.All(labels.Descendants("article"), label => Assert.Contains(JobCoreEmitter.DesignOf(BinSamples.Step).Grouped(), label.Value, StringComparison.Ordinal));
        Assert.Equal(2, report.Descendants("td").Count(cell => cell.Value == "as designed"));
        Assert.Contains("2: LS-001, LS-002", report.Value, StringComparison.Ordinal);
    }

    [Fact]
    public void Bin_files_are_the_same_with_one_thread_and_two()
    {
        IReadOnlyList<EmittedFile> one = Files(BinSamples.Compile(Question(), threads: 1), 1), two = Files(Compiled.Value, 2);

        Assert.Equal(one.Select(file => file.RelativePath), two.Select(file => file.RelativePath));
        Assert.All(one.Zip(two), pair => Assert.True(pair.First.Bytes.Span.SequenceEqual(pair.Second.Bytes.Span), pair.First.RelativePath));
    }

    [Fact]
    public void Bin_job_verifies_until_a_dose_or_a_place_is_tampered_with()
    {
        string job = Write();
        Assert.Empty(Verify(job));

        string table = Directory.EnumerateFiles(Path.Combine(job, "doses")).Order(StringComparer.Ordinal).First();
        string text = File.ReadAllText(table);
        File.WriteAllText(table, text.Replace(",0.", ",1.", StringComparison.Ordinal).Replace("1\n", "2\n", StringComparison.Ordinal));
        Assert.Contains(Verify(job), finding => finding.Code == VerifyFindings.FileChanged.Code);
        File.WriteAllText(table, text);
        Assert.Empty(Verify(job));

        MoveSecondUnit(job);
        string[] codes = [.. Verify(job).Select(finding => finding.Code)];
        Assert.Contains(VerifyFindings.TotalsDiffer.Code, codes);
    }

    [Fact]
    public void Approver_of_bins_is_asked_for_the_design_of_every_unit()
    {
        string job = Write(), design = JobCoreEmitter.DesignOf(BinSamples.Step).ToString();

        Assert.Equal(VerifyFindings.ApprovedDesign.Code, Assert.Single(Verify(job, design)).Code);
        Assert.Equal(2, Verify(job, "000000000000").Count(finding => finding.Code == VerifyFindings.NotApproved.Code));
    }

    [Fact]
    public void Bin_jobs_are_compared_and_not_taken_where_one_unit_is_wanted()
    {
        string job = Write();
        DiagnosticBag findings = new();

        Assert.NotNull(ComparedJobs.Read(job, new Parallelism(2), findings, TestContext.Current.CancellationToken));
        Assert.Empty(findings.Items);
        Assert.Null(EarlierJobReader.Read(job, findings));
        Assert.Equal("DW7025", Assert.Single(findings.Items).Code);
        Assert.NotNull(EarlierJobReader.Read(job, findings, bins: true));
    }

    private static BinQuestion Question() => BinSamples.Bin(
        BinSamples.Conditions, new PlacedUnit("LS-001", BinSamples.Straight, 0, 1, 2), new PlacedUnit("LS-002", BinSamples.Straight, 1, 7, 2));

    private static IReadOnlyList<EmittedFile> Files(BinResult bin, int threads) =>
        BinFiles.Of(bin, file => file, new Parallelism(threads), TestContext.Current.CancellationToken);

    private string Write() => JobFolderWriter.Write(
        new JobFolderOrder { OutputFolder = folder.Path, Name = "yard-001", Held = false, Files = Files(Compiled.Value, 2) }).Path;

    private static IReadOnlyList<Diagnostic> Verify(string job, string? approved = null) => JobFolderVerification.Verify(
        job, approved is null ? null : ApprovedDesigns.Read(approved, "list", new DiagnosticBag()), new Parallelism(2), null, TestContext.Current.CancellationToken).Findings;

    private static string Text(IReadOnlyList<EmittedFile> files, string path) => Encoding.UTF8.GetString(files.Single(file => file.RelativePath == path).Bytes.Span);

    // Pages are HTML in the syntax of XML but for their script.
    private static XElement Page(IReadOnlyList<EmittedFile> files, string path)
    {
        string text = Text(files, path).Replace("<!DOCTYPE html>", "", StringComparison.Ordinal);
        int script = text.IndexOf("<script type=\"module\"", StringComparison.Ordinal), end = text.LastIndexOf("</script>", StringComparison.Ordinal);
        return XDocument.Parse(script < 0 ? text : text[..script] + text[(end + "</script>".Length)..]).Root!;
    }

    // As a forger would: the place in the core is another, and the manifest names the new core throughout.
    private static void MoveSecondUnit(string job)
    {
        string corePath = Path.Combine(job, "job.json"), manifestPath = Path.Combine(job, "manifest.json");
        JsonNode core = JsonNode.Parse(File.ReadAllText(corePath))!, manifest = JsonNode.Parse(File.ReadAllText(manifestPath))!;
        core["description"]!["bin"]![1]!["placement"]!["corner_m"]![0] = 0.3;
        byte[] bytes = Encoding.UTF8.GetBytes(core.ToJsonString(new() { Encoder = System.Text.Encodings.Web.JavaScriptEncoder.UnsafeRelaxedJsonEscaping }) + "\n");
        File.WriteAllBytes(corePath, bytes);
        manifest["job_fingerprint"] = Fingerprint.Of(bytes).ToString();
        JsonNode listed = manifest["files"]!.AsArray().Single(file => file!["path"]!.GetValue<string>() == "job.json")!;
        listed["bytes"] = bytes.Length;
        listed["sha256"] = Convert.ToHexStringLower(System.Security.Cryptography.SHA256.HashData(bytes));
        File.WriteAllText(manifestPath, manifest.ToJsonString());
    }
}
