using System.Globalization;
using System.Text.Json;
using Dewstone.Model.Diagnostics;
using Dewstone.Reading.Quantities;
using Dewstone.Reading.Yaml;

namespace Dewstone.Reading.Binding;

/// <summary>A day as <c>2027-03-01</c>.</summary>
internal sealed class DateForm : ScalarForm<DateOnly>
{
    /// <inheritdoc/>
    public override string InWords => "a date as year-month-day";

    /// <inheritdoc/>
    public override string Example => "2027-03-01";

    /// <inheritdoc/>
    public override TextFault? Read(string text, out DateOnly value) =>
        DateOnly.TryParseExact(text, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out value)
            ? null
            : new TextFault(DescriptionFindings.BadDateOrTime, $"`{Quoting.Short(text)}` is no date",
                $"write {InWords}, as in `{Example}`");

    /// <inheritdoc/>
    public override void WriteSchema(Utf8JsonWriter json)
    {
        json.WriteString("type", "string");
        json.WriteString("pattern", "^[0-9]{4}-[0-9]{2}-[0-9]{2}$");
    }
}
