using System.Text.Json;
using Dewstone.Jobs.Emission;
using Dewstone.Model.Diagnostics;
using Dewstone.Reading.Files;
using Dewstone.Reading.Job;
using Json.Schema;

namespace Dewstone.Jobs.Verification;

/// <summary>Holds the JSON files of a job folder against the schemas of their kinds.</summary>
internal static class SchemaCheck
{
    // Read once: the library keeps every schema it is given for good.
    private static readonly (string File, Lazy<JsonSchema> Schema)[] Kinds =
    [
        (JobCoreEmitter.Path, Named("job.schema.json")), (ManifestEmitter.Path, Named("manifest.schema.json")), (EstimateEmitter.Path, Named("estimate.schema.json")),
        (TrialsEmitter.FiguresPath, Named("trials.schema.json")),
    ];

    /// <summary>Checks the files; one that is missing is passed over, since it is named elsewhere.</summary>
    /// <param name="folder">The job folder.</param>
    /// <returns>DW8204, one a file.</returns>
    public static IReadOnlyList<Diagnostic> Check(string folder)
    {
        List<Diagnostic> found = [];
        foreach ((string file, Lazy<JsonSchema> schema) in Kinds)
        {
            string path = Path.Combine(folder, file);
            if (File.Exists(path) && Fault(WholeFile.Read(path), schema.Value) is { } fault)
            {
                found.Add(VerifyFindings.NotBySchema.At($"`{file}` does not fit its schema: {fault}", "fetch an untouched copy of the job, or compile it again", location: new SourceLocation(path, 0, 0)));
            }
        }

        return found;
    }

    private static Lazy<JsonSchema> Named(string name) => new(() =>
    {
        using Stream stream = typeof(SchemaCheck).Assembly.GetManifestResourceStream(name) ?? throw new InvalidOperationException($"{name} is not in the assembly.");
        using StreamReader reader = new(stream);
        return JsonSchema.FromText(reader.ReadToEnd());
    });

    private static string? Fault(byte[] bytes, JsonSchema schema)
    {
        try
        {
            using JsonDocument document = SoundJson.Parse(bytes);
            EvaluationResults results = schema.Evaluate(document.RootElement, new EvaluationOptions { OutputFormat = OutputFormat.List });
            return results.IsValid
                ? null
                : (results.Details ?? []).Where(d => d.Errors is { Count: > 0 })
                    .Select(d => $"{(d.InstanceLocation.ToString() is { Length: > 0 } at ? at : "the file")}: {d.Errors!.Values.First()}").FirstOrDefault() ?? "it is not valid";
        }
        catch (JsonException broken)
        {
            return broken.Message.ReplaceLineEndings(" ").TrimEnd('.');
        }
        catch (FormatException)
        {
            // The library takes numbers as decimals of 28 digits.
            return "a number in it is out of all range";
        }
    }
}
