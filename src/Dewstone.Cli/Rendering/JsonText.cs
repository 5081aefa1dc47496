using System.Text;
using System.Text.Json;

namespace Dewstone.Cli.Rendering;

/// <summary>The frame of every <c>--json</c> document: format, version, tool and exit code first.</summary>
internal static class JsonText
{
    /// <summary>Version of the documents; rises when a field goes or changes meaning.</summary>
    public const int Version = 1;

    /// <summary>A document.</summary>
    /// <param name="command">The command.</param>
    /// <param name="exitCode">What the program ends with.</param>
    /// <param name="body">Writes the members after the frame's.</param>
    /// <returns>Indented JSON with a line feed at its end.</returns>
    public static string Of(string command, int exitCode, Action<Utf8JsonWriter> body)
    {
        using MemoryStream stream = new();
        using (Utf8JsonWriter json = new(stream, new JsonWriterOptions { Indented = true, NewLine = "\n" }))
        {
            json.WriteStartObject();
            json.WriteString("format", $"dewstone-{command}");
            json.WriteNumber("version", Version);
            json.WriteString("tool", ToolVersion.Text);
            json.WriteNumber("exit_code", exitCode);
            body(json);
            json.WriteEndObject();
        }

        return Encoding.UTF8.GetString(stream.ToArray()) + "\n";
    }
}
