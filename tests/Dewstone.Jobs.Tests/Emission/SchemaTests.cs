using System.Runtime.CompilerServices;
using System.Text.Json;
using System.Text.Json.Nodes;
using Dewstone.Jobs.Emission;
using Dewstone.Model.Description;
using Dewstone.Model.Quantities;
using Dewstone.Model.Results;
using Json.Schema;
using Duration = Dewstone.Model.Quantities.Duration;

namespace Dewstone.Jobs.Tests.Emission;

/// <summary>
/// Holds the stored schemas against what is written: every file is valid, no member is written that its schema does not name, and every
/// member is needed.
/// </summary>
public sealed class SchemaTests
{
    [Theory]
    [MemberData(nameof(Jobs))]
    public void Written_files_are_valid_and_fully_described(string name, CompiledJob job)
    {
        foreach ((string file, EmittedFile written) in Files(job))
        {
            AssertValid(file, written, name);
        }
    }

    [Theory]
    [InlineData("job")]
    [InlineData("manifest")]
    [InlineData("estimate")]
    [InlineData("trials")]
    public void Every_member_of_a_written_file_is_needed(string file)
    {
        CompiledJob job = Full();
        JsonSchema schema = JsonSchema.FromText(Stored(file).ToJsonString());
        JsonNode whole = JsonNode.Parse(Files(job).Single(item => item.File == file).Written.Bytes.Span)!;
        int taken = 0;
        foreach (string path in Paths(whole))
        {
            JsonNode less = whole.DeepClone();
            Remove(less, path);
            Assert.False(schema.Evaluate(Element(less)).IsValid, $"{file} without {path} is still valid");
            taken++;
        }

        Assert.InRange(taken, 20, 1000);
    }

    [Fact]
    public void Wrong_values_are_told()
    {
        JsonNode manifest = JsonNode.Parse(Files(Full()).Single(item => item.File == "manifest").Written.Bytes.Span)!;
        manifest["job_fingerprint"] = "Q9W1DFWF077U";

        Assert.False(JsonSchema.FromText(Stored("manifest").ToJsonString()).Evaluate(Element(manifest)).IsValid);
    }

    public static TheoryData<string, CompiledJob> Jobs() => new()
    {
        { "plain", Samples.Job() },
        { "full", Full() },
        { "held", Samples.HeldJob() },
        { "strong", StrongJob.Make() },
        { "sea", SeaJobs.At(Samples.Job(), SeaJobs.Site with { Seabed = SeaJobs.Site.Seabed with { Method = BearingMethod.Vesic }, Permit = new PermitRules(0.5, new Length(3.66), "permit 7") }) },
    };

    /// <summary>A job in which everything optional is there, in its other forms.</summary>
    private static CompiledJob Full()
    {
        NeedleTable needles = new() { Needles = [new NeedleState { Column = 2, Row = 2, Board = "B1", Channel = "7", Condition = NeedleCondition.Limited, Flow = new FlowRate(4e-6), Repeatability = 0.02 }] };
        Tonight tonight = new() { MixBatch = "B17", BedTemperature = new Temperature(12.0) };
        CompiledJob job = Samples.Build(needles, tonight, [Samples.SolidError with { AcceptedBecause = "trial piece" }]);
        Site site = new()
        {
            Name = "Wrackline shoal",
            Water = new SiteWater { Depth = new Length(6.0) },
            Wave = new DesignWave { SignificantHeight = new Length(1.2), PeakPeriod = new Duration(7.0), HeightRule = DesignHeightRule.HighestTenth, ReturnPeriodYears = 50.0 },
            Current = new SeaCurrent(new Speed(0.6), new Angle(90.0)),
            Seabed = new SeabedSoil { Soil = SoilKind.Clay, Friction = 0.55, UndrainedStrength = new Pressure(5000.0), EffectiveWeight = new UnitWeight(8500.0) },
            Clearance = new Length(1.83),
            Animals = new ShelterAnimals(new Length(0.03), new Length(0.09)),
        };
        ReefUnit unit = Samples.Unit with
        {
            Lifting = new InsertLifting { Points = [new Point3(0.05, 0.025, 0.1)], Embedment = new Length(0.05), TestedCapacity = new Force(12000.0), Test = "report 14" },
            Place = new PlacementWish { QuarterTurns = 1, Shift = new Point3(0.01, 0.0, 0.0), ShiftedLayers = false },
            Cavities = [.. Samples.Unit.Cavities, new FormedCavity { Name = "ball", Form = new SphereForm { Centre = new Point3(0.05, 0.025, 0.05), Diameter = new Length(0.01) }, Clear = new Length(0.005) }],
        };
        DryMix mix = Samples.Mix with
        {
            Strength = new StrengthLaw { Measured = [new MeasuredStrength(new Duration(604800.0), new Temperature(20.0), new Pressure(12.4e6))] },
            Wetting = new ExponentialLaw { AtSaturation = new Diffusivity(1.5e-5), Exponent = 8 },
        };
        return SeaJobs.At(job with { Trials = Samples.Trials(), Description = job.Description with { Unit = unit, Mix = mix } }, site);
    }

    private static IEnumerable<(string File, EmittedFile Written)> Files(CompiledJob job)
    {
        JobData data = JobDataEmitter.Emit(job, Samples.Settings);
        yield return ("job", data.Files[0]);
        yield return ("estimate", data.Files.Single(file => file.RelativePath == EstimateEmitter.Path));
        if (job.Trials is not null)
        {
            yield return ("trials", data.Files.Single(file => file.RelativePath == TrialsEmitter.FiguresPath));
        }

        yield return ("manifest", ManifestEmitter.Emit(job, data, data.Files, Samples.Settings.NameOfFile));
    }

    internal static void AssertValid(string file, EmittedFile written, string name = "")
    {
        JsonNode document = JsonNode.Parse(written.Bytes.Span)!;
        EvaluationResults results = Closed(Stored(file)).Evaluate(Element(document), new EvaluationOptions { OutputFormat = OutputFormat.List });

        Assert.True(
            results.IsValid,
            $"{name} {file}: {string.Join("; ", (results.Details ?? []).Where(d => d.Errors is { Count: > 0 }).Select(d => $"{d.InstanceLocation} {string.Join(' ', d.Errors!.Values)}"))}");
    }

    private static JsonElement Element(JsonNode node) => JsonSerializer.SerializeToElement(node);

    private static JsonObject Stored(string file, [CallerFilePath] string here = "")
    {
        string schemas = Path.Combine(Path.GetDirectoryName(here)!, "..", "..", "..", "schemas");
        return JsonNode.Parse(File.ReadAllText(Path.Combine(schemas, $"{file}.schema.json")))!.AsObject();
    }

    /// <summary>The schema with every object closed: readers must bear unknown members, but what we write is all named.</summary>
    private static JsonSchema Closed(JsonObject schema)
    {
        JsonNode closed = schema.DeepClone();
        Close(closed);
        return JsonSchema.FromText(closed.ToJsonString());
    }

    private static void Close(JsonNode? node)
    {
        if (node is JsonObject members)
        {
            if (members["properties"] is JsonObject && members.ContainsKey("type"))
            {
                members["additionalProperties"] = false;
            }

            foreach ((string _, JsonNode? child) in members.ToArray())
            {
                Close(child);
            }
        }
        else if (node is JsonArray items)
        {
            foreach (JsonNode? item in items)
            {
                Close(item);
            }
        }
    }

    /// <summary>Paths of all members, of lists only those of the first item.</summary>
    private static IEnumerable<string> Paths(JsonNode? node, string at = "") => node switch
    {
        JsonObject members => members.SelectMany(member => Paths(member.Value, $"{at}/{member.Key}").Prepend($"{at}/{member.Key}")),
        JsonArray { Count: > 0 } items => Paths(items[0], $"{at}/0"),
        _ => [],
    };

    private static void Remove(JsonNode node, string path)
    {
        string[] parts = path.Split('/', StringSplitOptions.RemoveEmptyEntries);
        foreach (string part in parts[..^1])
        {
            node = node is JsonArray items ? items[int.Parse(part)]! : node[part]!;
        }

        node.AsObject().Remove(parts[^1]);
    }
}
