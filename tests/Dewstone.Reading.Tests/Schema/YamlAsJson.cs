using System.Globalization;
using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using YamlDotNet.Core;
using YamlDotNet.RepresentationModel;

namespace Dewstone.Reading.Tests.Schema;

/// <summary>YAML as an editor sees it: plain scalars by the core schema of YAML 1.2, read by the library and not by our reader.</summary>
internal static partial class YamlAsJson
{
    public static JsonNode Convert(string yaml)
    {
        YamlStream stream = [];
        stream.Load(new StringReader(yaml));
        return Node(stream.Documents[0].RootNode)!;
    }

    private static JsonNode? Node(YamlNode node) => node switch
    {
        YamlMappingNode map =>
            new JsonObject(map.Select(entry => KeyValuePair.Create(((YamlScalarNode)entry.Key).Value!, Node(entry.Value)))),
        YamlSequenceNode list => new JsonArray([.. list.Select(Node)]),
        YamlScalarNode { Style: ScalarStyle.Plain } scalar => Plain(scalar.Value!),
        YamlScalarNode scalar => JsonValue.Create(scalar.Value),
        _ => throw new NotSupportedException(node.NodeType.ToString()),
    };

    private static JsonValue? Plain(string text) => text switch
    {
        "" or "~" or "null" or "Null" or "NULL" => null,
        "true" or "True" or "TRUE" => JsonValue.Create(true),
        "false" or "False" or "FALSE" => JsonValue.Create(false),
        _ when Whole().IsMatch(text) => JsonValue.Create(long.Parse(text, CultureInfo.InvariantCulture)),
        _ when Real().IsMatch(text) => JsonValue.Create(double.Parse(text, CultureInfo.InvariantCulture)),
        _ => JsonValue.Create(text),
    };

    [GeneratedRegex("^[-+]?[0-9]+$", RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Whole();

    [GeneratedRegex(@"^[-+]?(\.[0-9]+|[0-9]+(\.[0-9]*)?)([eE][-+]?[0-9]+)?$", RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture,
        1000)]
    private static partial Regex Real();
}
