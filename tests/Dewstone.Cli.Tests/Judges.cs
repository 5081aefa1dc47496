using System.Diagnostics;
using System.Text.Json;
using Json.Schema;

namespace Dewstone.Cli.Tests;

/// <summary>What others made to judge files of the kinds we write, fetched by <c>./build.sh judges</c>; a test that needs an absent one is skipped.</summary>
internal static class Judges
{
    private const string Validate = """
        const validator = require('gltf-validator');
        validator.validateBytes(new Uint8Array(require('fs').readFileSync(process.argv[1])))
          .then(report => console.log(JSON.stringify(report)), fault => { console.error(fault); process.exit(1); });
        """;

    private static string Modules => Repository.Path(".artifacts", "judges", "node_modules");

    /// <summary>What the Khronos glTF validator (npm gltf-validator) says of a file.</summary>
    /// <param name="file">A GLB file.</param>
    /// <returns>Its report.</returns>
    public static async Task<JsonDocument> GltfAsync(string file)
    {
        NeedPackage("gltf-validator");
        bool hasNode = (Environment.GetEnvironmentVariable("PATH") ?? "").Split(Path.PathSeparator).Any(folder => File.Exists(Path.Combine(folder, "node")));
        Assert.SkipUnless(hasNode, "no node on the path");
        ProcessStartInfo start = new("node", ["-e", Validate, file]) { RedirectStandardOutput = true, RedirectStandardError = true, UseShellExecute = false };
        start.Environment["NODE_PATH"] = Modules;
        using Process process = Process.Start(start)!;
        Task<string> output = process.StandardOutput.ReadToEndAsync(TestContext.Current.CancellationToken), error = process.StandardError.ReadToEndAsync(TestContext.Current.CancellationToken);
        await process.WaitForExitAsync(TestContext.Current.CancellationToken);
        Assert.True(process.ExitCode == 0, await error);
        return JsonDocument.Parse(await output);
    }

    /// <summary>
    /// Faults of a log against the SARIF 2.1.0 schema (rtm.5, as published in the JSON Schema Store; carried by npm @microsoft/jest-sarif). It is written
    /// in draft 4, which our library does not read; of what it uses, only the names of its own address and draft changed up to draft 7.
    /// </summary>
    /// <param name="log">The log.</param>
    /// <returns>The faults; empty for a valid log.</returns>
    public static IReadOnlyList<string> Sarif(string log)
    {
        NeedPackage("@microsoft/jest-sarif");
        string text = File.ReadAllText(Path.Combine(Modules, "@microsoft", "jest-sarif", "lib", "schemas", "sarif-2.1.0-rtm.5.json"))
            .Replace("http://json-schema.org/draft-04/schema#", "http://json-schema.org/draft-07/schema#", StringComparison.Ordinal)
            .Replace("\"id\": \"https://raw.", "\"$id\": \"https://raw.", StringComparison.Ordinal);
        Assert.DoesNotContain("exclusiveM", text, StringComparison.Ordinal);
        using JsonDocument document = JsonDocument.Parse(log);
        EvaluationResults result = Schema(text).Evaluate(document.RootElement, new EvaluationOptions { OutputFormat = OutputFormat.List, RequireFormatValidation = true });
        return result.IsValid ? [] : [.. (result.Details ?? []).Where(d => d.Errors is { Count: > 0 }).Select(d => $"{d.InstanceLocation} {string.Join(' ', d.Errors!.Values)}").DefaultIfEmpty("not valid")];
    }

    // A schema can be read only once: it registers itself under its address.
    private static readonly Lock Reading = new();
    private static JsonSchema? schema;

    private static JsonSchema Schema(string text)
    {
        lock (Reading)
        {
            return schema ??= JsonSchema.FromText(text);
        }
    }

    private static void NeedPackage(string name) =>
        Assert.SkipUnless(Directory.Exists(Path.Combine(Modules, name)), $"npm package {name} is not there: run ./build.sh judges");
}
