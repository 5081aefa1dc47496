using System.Globalization;
using System.Text.Json;
using Dewstone.Model.Diagnostics;
using Dewstone.Reading.Quantities;
using Dewstone.Reading.Yaml;

namespace Dewstone.Reading.Binding;

/// <summary>A time of day as <c>18:00</c>, on the 24-hour clock.</summary>
internal sealed class TimeOfDayForm : ScalarForm<TimeOnly>
{
    /// <inheritdoc/>
    public override string InWords => "a time of day as hours:minutes";

    /// <inheritdoc/>
    public override string Example => "\"18:00\"";

    /// <inheritdoc/>
    public override TextFault? Read(string text, out TimeOnly value) =>
        TimeOnly.TryParseExact(text, "HH:mm", CultureInfo.InvariantCulture, DateTimeStyles.None, out value)
            ? null
            : new TextFault(DescriptionFindings.BadDateOrTime, $"`{Quoting.Short(text)}` is no time of day",
                $"write {InWords}, as in `{Example}`");

    /// <inheritdoc/>
    public override void WriteSchema(Utf8JsonWriter json)
    {
        json.WriteString("type", "string");
        json.WriteString("pattern", "^([01][0-9]|2[0-3]):[0-5][0-9]$");
    }
}
