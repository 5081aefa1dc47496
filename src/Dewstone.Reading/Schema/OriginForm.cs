using System.Text.Json;
using Dewstone.Model.Description;
using Dewstone.Model.Diagnostics;
using Dewstone.Reading.Binding;
using Dewstone.Reading.Quantities;
using Dewstone.Reading.Yaml;

namespace Dewstone.Reading.Schema;

/// <summary>Where the figures of a mix come from: <c>assumed</c>, <c>calibration FILE</c> or <c>handbook TITLE</c>.</summary>
internal sealed class OriginForm : ScalarForm<MixOrigin>
{
    /// <inheritdoc/>
    public override string InWords => "`assumed`, `calibration` with its file, or `handbook` with its title";

    /// <inheritdoc/>
    public override string Example => "assumed";

    /// <inheritdoc/>
    public override TextFault? Read(string text, out MixOrigin? value)
    {
        string[] parts = text.Split(' ', 2, StringSplitOptions.TrimEntries);
        string reference = parts.Length > 1 ? parts[1] : "";
        value = (parts[0], reference.Length > 0) switch
        {
            ("assumed", false) => new MixOrigin(MixOriginKind.Assumed, ""),
            ("calibration", true) => new MixOrigin(MixOriginKind.Calibration, reference),
            ("handbook", true) => new MixOrigin(MixOriginKind.Handbook, reference),
            _ => null,
        };
        return value is not null
            ? null
            : new TextFault(DescriptionFindings.UnknownWord, $"`{Quoting.Short(text)}` does not say where the figures come from",
                $"write {InWords}");
    }

    /// <inheritdoc/>
    public override void WriteSchema(Utf8JsonWriter json)
    {
        json.WriteString("type", "string");
        json.WriteString("pattern", "^(assumed|(calibration|handbook) +[^ ].*)$");
    }
}
