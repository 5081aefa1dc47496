using System.Text.Json;
using Json.Schema;

namespace Dewstone.Cli.Tests;

/// <summary>The checkout the tests run from.</summary>
internal static class Repository
{
    /// <summary>Its top folder: the nearest parent of the test program that holds <c>build.sh</c>.</summary>
    public static string Root { get; } = Find();

    /// <summary>A path in the repository.</summary>
    /// <param name="parts">Below the top.</param>
    /// <returns>The full path.</returns>
    public static string Path(params string[] parts) => System.IO.Path.Combine([Root, .. parts]);

    /// <summary>Holds a document against a stored schema.</summary>
    /// <param name="schema">File in <c>schemas/</c>.</param>
    /// <param name="text">The document.</param>
    public static void AssertValid(string schema, string text)
    {
        using JsonDocument document = JsonDocument.Parse(text);
        EvaluationResults result = JsonSchema.FromText(File.ReadAllText(Path("schemas", schema)))
            .Evaluate(document.RootElement, new EvaluationOptions { OutputFormat = OutputFormat.List });
        Assert.True(result.IsValid, string.Join('\n', (result.Details ?? []).Where(d => d.Errors is { Count: > 0 }).Select(d => $"{d.InstanceLocation} {string.Join(' ', d.Errors!.Values)}")));
    }

    private static string Find()
    {
        DirectoryInfo? folder = new(AppContext.BaseDirectory);
        while (folder is not null && !File.Exists(System.IO.Path.Combine(folder.FullName, "build.sh")))
        {
            folder = folder.Parent;
        }

        return folder?.FullName ?? throw new InvalidOperationException("The tests run from a checkout of the repository.");
    }
}
