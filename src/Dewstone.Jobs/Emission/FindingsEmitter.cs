using System.Text.Json;
using Dewstone.Jobs.Emission.Json;
using Dewstone.Model.Diagnostics;
using Dewstone.Model.Quantities;

namespace Dewstone.Jobs.Emission;

/// <summary>
/// Writes <c>findings.sarif</c>: every finding at its line, in the Static Analysis Results Interchange Format (OASIS Standard, SARIF
/// version 2.1.0, 2020). Findings the user released carry an accepted suppression with the reason.
/// </summary>
public static class FindingsEmitter
{
    /// <summary>Path in the job folder.</summary>
    public const string Path = "findings.sarif";

    private const string Schema = "https://docs.oasis-open.org/sarif/sarif/v2.1.0/errata01/os/schemas/sarif-schema-2.1.0.json";

    /// <summary>The findings as a file.</summary>
    /// <param name="findings">Placed findings, in order.</param>
    /// <param name="toolVersion">Version of the tool.</param>
    /// <param name="nameOfFile">Name of a description file as the log holds it.</param>
    /// <returns>The file.</returns>
    public static EmittedFile Emit(IReadOnlyList<Diagnostic> findings, string toolVersion, Func<string, string> nameOfFile)
    {
        ArgumentNullException.ThrowIfNull(findings);
        string[] codes = [.. findings.Select(finding => finding.Code).Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal)];
        FilePlaces places = new(nameOfFile);
        return new EmittedFile(Path, CanonicalJson.Indented(json =>
        {
            json.WriteString("$schema", Schema);
            json.WriteString("version", "2.1.0");
            json.Objects("runs", new[] { findings }, run =>
            {
                json.Object("tool", () => json.Object("driver", () =>
                {
                    json.WriteString("name", "dewstone");
                    json.WriteString("version", toolVersion);
                    json.Objects("rules", codes, code => Rule(json, code));
                }));
                json.WriteString("columnKind", "utf16CodeUnits");
                json.Objects("results", run, finding => Result(json, finding, Array.IndexOf(codes, finding.Code), places));
            });
        }));
    }

    private static void Rule(Utf8JsonWriter json, string code)
    {
        json.WriteString("id", code);
        if (DiagnosticCatalogue.Find(code) is not { } kind)
        {
            return;
        }

        Text(json, "shortDescription", kind.Title);
        Text(json, "fullDescription", $"{kind.What} {kind.Why}".Trim());
        Text(json, "help", kind.Cure);
        json.Object("defaultConfiguration", () => json.WriteString("level", Level(kind.Severity)));
    }

    private static void Result(Utf8JsonWriter json, Diagnostic finding, int rule, FilePlaces places)
    {
        json.WriteString("ruleId", finding.Code);
        json.WriteNumber("ruleIndex", rule);
        json.WriteString("level", Level(finding.Severity));
        Text(json, "message", finding.Message);
        if (finding.Location is { } location)
        {
            json.Objects("locations", new[] { location }, place => Place(json, place, places));
        }

        (SourceLocation Location, string Remark)[] related =
            [.. finding.Related.Where(place => place.Location is not null).Select(place => (place.Location!, place.Remark))];
        if (related.Length > 0)
        {
            json.Objects("relatedLocations", related, place =>
            {
                Place(json, place.Location, places);
                Text(json, "message", place.Remark);
            });
        }

        if (finding.AcceptedBecause is { } reason)
        {
            json.Objects("suppressions", new[] { reason }, given =>
            {
                json.WriteString("kind", "external");
                json.WriteString("status", "accepted");
                json.WriteString("justification", given);
            });
        }

        json.Object("properties", () =>
        {
            json.WriteString("remedy", finding.Remedy);
            if (finding.Where is { } where)
            {
                json.Numbers("unit_frame_mm", Millimetres(where));
            }
        });
    }

    private static void Place(Utf8JsonWriter json, SourceLocation location, FilePlaces places) =>
        json.Object("physicalLocation", () =>
        {
            json.Object("artifactLocation", () => json.WriteString("uri", places.UriOf(location.File)));
            if (location.Line > 0)
            {
                json.Object("region", () =>
                {
                    json.WriteNumber("startLine", location.Line);
                    if (location.Column > 0)
                    {
                        json.WriteNumber("startColumn", location.Column);
                    }
                });
            }
        });

    private static void Text(Utf8JsonWriter json, string name, string text) => json.Object(name, () => json.WriteString("text", text));

    private static string Level(Severity severity) => severity switch
    {
        Severity.Error => "error",
        Severity.Warning => "warning",
        _ => "note",
    };

    /// <summary>A place as files name it: to a tenth of a millimetre, like every length.</summary>
    /// <param name="point">Metres, unit frame.</param>
    /// <returns>x, y, z, mm.</returns>
    public static double[] Millimetres(Point3 point) =>
        [Tenth(point.X), Tenth(point.Y), Tenth(point.Z)];

    private static double Tenth(double metres) => Math.Round(metres * 1e4, MidpointRounding.AwayFromZero) / 10.0;
}
