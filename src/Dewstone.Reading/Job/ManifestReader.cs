using System.Globalization;
using System.Text.Json;
using Dewstone.Model.Results;

namespace Dewstone.Reading.Job;

/// <summary>Reads <c>manifest.json</c> of a job folder. Members it does not know are ignored; another format or version is refused.</summary>
public static class ManifestReader
{
    private const string Format = "dewstone-manifest";
    private const int Version = 1;

    /// <summary>Reads a manifest.</summary>
    /// <param name="file">Its bytes.</param>
    /// <param name="manifest">The manifest.</param>
    /// <param name="fault">What is wrong with it, one line; empty when it was read.</param>
    /// <returns>False when it is none of this version or is damaged.</returns>
    public static bool TryRead(ReadOnlyMemory<byte> file, out Manifest? manifest, out string fault)
    {
        manifest = null;
        fault = "";
        try
        {
            using JsonDocument document = SoundJson.Parse(file);
            JsonPlace root = new(document.RootElement, "");
            if (!root.Has("format") || root.Text("format") != Format || root.Whole("version") != Version)
            {
                throw new InvalidDataException($"it is not of the format {Format}, version {Version}");
            }

            manifest = Read(root);
            return true;
        }
        catch (Exception damage) when (damage is InvalidDataException or JsonException)
        {
            fault = damage.Message.ReplaceLineEndings(" ");
            return false;
        }
    }

    private static Manifest Read(JsonPlace root) => new()
    {
        Name = root.Text("name"),
        Held = root.Word("state", ("ready", false), ("held", true)),
        JobFingerprint = root.Text("job_fingerprint"),
        DesignFingerprint = root.Text("design_fingerprint"),
        ToolVersion = root["tool"].Text("version"),
        Inputs = root.Items("inputs", input => new InputFile(input.Text("role"), input.AnyText("file"), input.Text("sha256"))),
        Files = root.Items("files", file => (file.Text("path"), file.Text("sha256"))),
        Requirements = root.Items("requirements", r => new ClaimedRequirement(
            r.Text("id"), r.Text("feature"), r.Text("quantity"), r.Text("op"), r.Number("limit"), r.Number("value"), r.Number("margin"), r.Text("unit"), r.Flag("met"))),
        Totals =
        [
            .. root["totals"].Members().Where(t => t.Value.ValueKind is JsonValueKind.Number or JsonValueKind.Null)
                .Select(t => (t.Name, t.Value.ValueKind == JsonValueKind.Null ? (double?)null : t.Value.GetDouble())),
        ],
        Conditions = root.Items("conditions", Condition),
        Accepted = root.Items("accepted", a => new Acceptance(a.Text("code"), a.Text("reason"))),
    };

    private static string Condition(JsonPlace json)
    {
        string what = json.Text("what").Replace('_', ' ');
        string value = json["value"].Element.ValueKind == JsonValueKind.String ? json.Text("value") : Quantity("value");
        return json.Has("usual") ? $"{what} {value} instead of {Quantity("usual")}" : $"{what} {value}";

        string Quantity(string name)
        {
            string unit = json.Text("unit");
            return json.Number(name).ToString("0.######", CultureInfo.InvariantCulture) + (unit is "1" or "" ? "" : $" {unit}");
        }
    }
}
