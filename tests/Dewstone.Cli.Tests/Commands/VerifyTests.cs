using System.Security.Cryptography;
using System.Text;
using System.Text.Json.Nodes;
using Dewstone.Jobs.Emission;

namespace Dewstone.Cli.Tests.Commands;

/// <summary>Planted tamperings, from the clumsy to the careful: each must be found and named.</summary>
public sealed class VerifyTests : IClassFixture<VerifyTests.Jobs>
{
    private readonly Jobs jobs;

    public VerifyTests(Jobs jobs) => this.jobs = jobs;

    [Fact]
    public async Task Untouched_job_verifies_and_its_json_fits_the_stored_schema()
    {
        string copy = jobs.Copy();
        Words.Answer answer = await Words.Run("verify", copy, "--quiet");
        Assert.True(answer.Code == ExitCode.Done, answer.Output);
        Assert.Contains(": verified, job ", answer.Output, StringComparison.Ordinal);
        Words.Answer json = await Words.Run("verify", copy, jobs.OtherDesign, "--quiet", "--json");
        Repository.AssertValid("verify.schema.json", json.Output);
        Assert.Equal("", json.Error);
    }

    // A shell completes the name of a folder with the separator behind it.
    [Fact]
    public async Task Folder_may_be_named_with_a_separator_behind_it()
    {
        string copy = jobs.Copy() + Path.DirectorySeparatorChar;
        Words.Answer verified = await Words.Run("verify", copy, "--quiet");
        Assert.True(verified.Code == ExitCode.Done, verified.Output);
        Words.Answer same = await Words.Run("diff", copy, copy, "--quiet");
        Assert.True(same.Code == ExitCode.Done, same.Output);
    }

    [Theory]
    [InlineData("byte in a dose table", "DW8202", "doses/layer-003.csv")]
    [InlineData("byte in a picture", "DW8202", "unit.png")]
    [InlineData("byte in the estimate", "DW8202", "estimate.json")]
    [InlineData("missing table", "DW8201", "doses/layer-003.csv")]
    [InlineData("missing core", "DW8110", "job.json")]
    [InlineData("swapped tables", "DW8202", "doses/layer-002.csv")]
    [InlineData("added table", "DW8203", "doses/layer-009.csv")]
    [InlineData("table edited, manifest mended", "DW8202", "doses/layer-003.csv")]
    [InlineData("table edited, all hashes mended", "DW8206", "water_ml")]
    [InlineData("two doses of a table exchanged, all hashes mended", "DW8209", "predicted.vti")]
    [InlineData("table removed and forgotten, all hashes mended", "DW8206", "layers_with_water")]
    [InlineData("sequence hurried, all hashes mended", "DW8208", "sequence.csv")]
    [InlineData("mix made wetter in the core, all hashes mended", "DW8207", "job.json")]
    [InlineData("placement moved in the core, all hashes mended", "DW8206", "shape_match")]
    [InlineData("water in the totals", "DW8206", "water_ml")]
    [InlineData("solid of another job, manifest mended", "DW8209", "predicted.vti")]
    [InlineData("fingerprint in the manifest", "DW8205", "manifest.json")]
    [InlineData("design fingerprint in the manifest", "DW8205", "manifest.json")]
    [InlineData("state of the manifest", "DW8204", "manifest.json")]
    [InlineData("manifest that is no JSON", "DW8110", "manifest.json")]
    public async Task Tampering_is_found_and_named(string tampering, string code, string named)
    {
        string job = jobs.Copy();
        jobs.Tamper(job, tampering);
        Words.Answer answer = await Words.Run("verify", job, "--quiet");
        Assert.Equal(ExitCode.No, answer.Code);
        Assert.Contains(answer.Output.Split('\n'), line => line.Contains($"error {code}: ", StringComparison.Ordinal) && line.Contains(named, StringComparison.Ordinal));
        Assert.Contains("DOES NOT VERIFY", answer.Output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Sound_job_of_another_design_is_caught_by_the_approvers_list()
    {
        JsonNode manifest = JsonNode.Parse(await File.ReadAllTextAsync(Path.Combine(jobs.Job, "manifest.json")))!;
        string design = (string)manifest["design_fingerprint"]!, job = (string)manifest["job_fingerprint"]!;
        string list = jobs.Yard.Write("approved.txt", $"# spring order\n{design[..4]}-{design[4..8]}-{design[8..]}   # block\n");
        Words.Answer approved = await Words.Run("verify", jobs.Job, "--approved", list);
        Assert.Equal(ExitCode.Done, approved.Code);
        Assert.Contains("approved design, tonight's doses", approved.Output, StringComparison.Ordinal);

        Words.Answer other = await Words.Run("verify", jobs.OtherDesign, "--approved", list);
        Assert.Equal(ExitCode.No, other.Code);
        Assert.Contains("error DW8211: ", other.Output, StringComparison.Ordinal);
        Assert.Equal(ExitCode.Done, (await Words.Run("verify", jobs.OtherDesign)).Code);

        jobs.Yard.Write("approved.txt", $"{design.ToLowerInvariant()} {job}\n");
        Assert.Contains(": verified, approved, ", (await Words.Run("verify", jobs.Job, "--approved", list)).Output, StringComparison.Ordinal);
        jobs.Yard.Write("approved.txt", $"{design} 0123456789AB\n");
        Words.Answer otherDoses = await Words.Run("verify", jobs.Job, "--approved", list);
        Assert.Equal(ExitCode.No, otherDoses.Code);
        Assert.Contains("error DW8212: ", otherDoses.Output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Held_job_does_not_verify_and_other_folders_are_refused()
    {
        string strict = jobs.Yard.Write("strict.unit.yaml", SmallYard.Unit.Replace("max: 40 kg", "max: 5 kg"));
        await Words.Run("compile", strict, "-o", jobs.Yard.In("held"), "--cells", "4", "--quiet");
        Words.Answer held = await Words.Run("verify", jobs.Yard.In("held", "strict.held.job"));
        Assert.Equal(ExitCode.No, held.Code);
        Assert.Contains("error DW8210: ", held.Output, StringComparison.Ordinal);
        Words.Answer none = await Words.Run("verify", jobs.Yard.In("nothing.job"));
        Assert.Equal(ExitCode.InputAtFault, none.Code);
        Assert.Contains("error DW8109: ", none.Output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task List_with_a_line_that_is_no_fingerprint_is_refused_with_its_line()
    {
        string list = jobs.Yard.Write("bad.txt", "# list\n\n  the block\n");
        Words.Answer answer = await Words.Run("verify", jobs.Job, "--approved", list);
        Assert.Equal(ExitCode.InputAtFault, answer.Code);
        Assert.Contains("bad.txt:3:3: error DW8214: ", answer.Error, StringComparison.Ordinal);
        Assert.Equal(ExitCode.InputAtFault, (await Words.Run("verify", jobs.Job, "--approved", jobs.Yard.In("none.txt"))).Code);
    }

    /// <summary>Two small jobs, compiled once.</summary>
    public sealed class Jobs : IAsyncLifetime
    {
        private int copies;

        internal SmallYard Yard { get; } = new();

        internal string Job => Yard.In("out", "small.job");

        internal string OtherDesign => Yard.In("other", "small.job");

        public async ValueTask InitializeAsync()
        {
            await Words.Run("compile", Yard.UnitFile, "-o", Yard.In("out"), "--cells", "4", "--quiet");
            Yard.Write("small.unit.yaml", SmallYard.Unit.Replace("diameter: 60 mm", "diameter: 65 mm"));
            await Words.Run("compile", Yard.UnitFile, "-o", Yard.In("other"), "--cells", "4", "--quiet");
        }

        public ValueTask DisposeAsync()
        {
            Yard.Dispose();
            return ValueTask.CompletedTask;
        }

        internal string Copy()
        {
            string copy = Yard.In($"copy{Interlocked.Increment(ref copies)}.job");
            foreach (string file in Directory.EnumerateFiles(Job, "*", SearchOption.AllDirectories))
            {
                string to = Path.Combine(copy, Path.GetRelativePath(Job, file));
                Directory.CreateDirectory(Path.GetDirectoryName(to)!);
                File.Copy(file, to);
            }

            return copy;
        }

        internal void Tamper(string job, string how)
        {
            string table = Path.Combine(job, "doses", "layer-003.csv"), second = Path.Combine(job, "doses", "layer-002.csv");
            switch (how)
            {
                case "byte in a dose table": FlipLast(table); break;
                case "byte in a picture": FlipLast(Path.Combine(job, "unit.png")); break;
                case "byte in the estimate": FlipLast(Path.Combine(job, "estimate.json")); break;
                case "missing table": File.Delete(table); break;
                case "missing core": File.Delete(Path.Combine(job, "job.json")); break;
                case "swapped tables":
                    byte[] third = File.ReadAllBytes(table);
                    File.Copy(second, table, overwrite: true);
                    File.WriteAllBytes(second, third);
                    break;
                case "added table": File.Copy(table, Path.Combine(job, "doses", "layer-009.csv")); break;
                case "table edited, manifest mended": EditDose(table); MendManifest(job); break;
                case "table edited, all hashes mended": EditDose(table); MendAll(job); break;
                case "two doses of a table exchanged, all hashes mended": ExchangeDoses(table); MendAll(job); break;
                case "table removed and forgotten, all hashes mended": File.Delete(table); MendAll(job); break;
                case "sequence hurried, all hashes mended": Replace(Path.Combine(job, "sequence.csv"), ",50.000,", ",40.000,"); MendAll(job); break;
                case "mix made wetter in the core, all hashes mended": Replace(Path.Combine(job, "job.json"), "\"loose_density_kg_m3\":1700", "\"loose_density_kg_m3\":1500"); MendAll(job); break;
                case "placement moved in the core, all hashes mended": MovePlacement(job); MendAll(job); break;
                case "water in the totals": Manifest(job, m => m["totals"]!["water_ml"] = 1.0); break;
                case "solid of another job, manifest mended": File.Copy(Path.Combine(OtherDesign, "predicted.vti"), Path.Combine(job, "predicted.vti"), overwrite: true); MendManifest(job); break;
                case "fingerprint in the manifest": Manifest(job, m => m["job_fingerprint"] = "0123456789AB"); break;
                case "design fingerprint in the manifest": Manifest(job, m => m["design_fingerprint"] = "0123456789AB"); break;
                case "state of the manifest": Manifest(job, m => m["totals"]!["layers"] = -1); break;
                case "manifest that is no JSON": File.WriteAllText(Path.Combine(job, "manifest.json"), "{"); break;
                default: throw new ArgumentException(how, nameof(how));
            }
        }

        private static void FlipLast(string file)
        {
            byte[] bytes = File.ReadAllBytes(file);
            bytes[^2] ^= 1;
            File.WriteAllBytes(file, bytes);
        }

        internal static void Replace(string file, string old, string now)
        {
            string text = File.ReadAllText(file);
            Assert.Contains(old, text, StringComparison.Ordinal);
            int at = text.IndexOf(old, StringComparison.Ordinal);
            File.WriteAllText(file, text[..at] + now + text[(at + old.Length)..]);
        }

        internal static void EditDose(string table)
        {
            string[] rows = File.ReadAllLines(table);
            string[] cells = rows[1].Split(',');
            (cells[9], cells[10]) = ("30.00", "300");
            rows[1] = string.Join(',', cells);
            File.WriteAllText(table, string.Join('\n', rows) + "\n");
        }

        private static void ExchangeDoses(string table)
        {
            string[][] rows = [.. File.ReadAllLines(table).Select(row => row.Split(','))];
            int other = Array.FindIndex(rows, 2, row => row[9] != rows[1][9]);
            (rows[1][9], rows[1][10], rows[other][9], rows[other][10]) = (rows[other][9], rows[other][10], rows[1][9], rows[1][10]);
            File.WriteAllText(table, string.Join('\n', rows.Select(row => string.Join(',', row))) + "\n");
        }

        private static void MovePlacement(string job)
        {
            string file = Path.Combine(job, "job.json");
            JsonNode core = JsonNode.Parse(File.ReadAllText(file))!;
            JsonArray corner = core["placement"]!["corner_m"]!.AsArray();
            corner[0] = (double)corner[0]! + 0.02;
            File.WriteAllText(file, core.ToJsonString() + "\n");
        }

        internal static void Manifest(string job, Action<JsonNode> change)
        {
            string file = Path.Combine(job, "manifest.json");
            JsonNode manifest = JsonNode.Parse(File.ReadAllText(file))!;
            change(manifest);
            File.WriteAllText(file, manifest.ToJsonString());
        }

        private static void MendManifest(string job) => Manifest(job, manifest =>
        {
            JsonArray files = manifest["files"]!.AsArray();
            foreach (JsonNode? file in files.ToArray())
            {
                string path = Path.Combine(job, (string)file!["path"]!);
                if (File.Exists(path))
                {
                    file["sha256"] = Sha256(path);
                }
                else
                {
                    files.Remove(file);
                }
            }
        });

        internal static void MendAll(string job)
        {
            string file = Path.Combine(job, "job.json");
            JsonNode core = JsonNode.Parse(File.ReadAllText(file))!;
            foreach ((JsonArray tables, JsonNode? table) in new[] { core["dose_tables"], core["delivered_tables"] }
                .OfType<JsonArray>().SelectMany(tables => tables.ToArray().Select(table => (tables, table))))
            {
                if (File.Exists(Path.Combine(job, (string)table!["path"]!)))
                {
                    table["sha256"] = Sha256(Path.Combine(job, (string)table["path"]!));
                }
                else
                {
                    tables.Remove(table);
                }
            }

            core["sequence"]!["sha256"] = Sha256(Path.Combine(job, "sequence.csv"));
            File.WriteAllText(file, core.ToJsonString(new System.Text.Json.JsonSerializerOptions { Encoder = System.Text.Encodings.Web.JavaScriptEncoder.UnsafeRelaxedJsonEscaping }) + "\n", new UTF8Encoding(false));
            MendManifest(job);
            Manifest(job, manifest => manifest["job_fingerprint"] = Fingerprint.Of(File.ReadAllBytes(file)).ToString());
        }

        private static string Sha256(string file) => Convert.ToHexStringLower(SHA256.HashData(File.ReadAllBytes(file)));
    }
}
