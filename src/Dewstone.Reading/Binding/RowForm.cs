using System.Diagnostics.CodeAnalysis;
using System.Text.Json;
using Dewstone.Model.Diagnostics;
using Dewstone.Reading.Yaml;

namespace Dewstone.Reading.Binding;

/// <summary>A list of a fixed number of values, each with a meaning of its own: <c>[900 mm, 900 mm, 900 mm]</c>.</summary>
/// <typeparam name="T">What the row means.</typeparam>
/// <param name="inWords">What is due, with its article.</param>
/// <param name="example">A good value.</param>
/// <param name="make">Makes the meaning from the values in order.</param>
/// <param name="columns">Forms of the values.</param>
internal sealed class RowForm<T>(string inWords, string example, Func<object[], T> make, params Form[] columns) : FormOf<T>
    where T : notnull
{
    /// <inheritdoc/>
    public override string InWords => inWords;

    /// <inheritdoc/>
    public override string Example => example;

    /// <inheritdoc/>
    public override IEnumerable<Form> Inner => columns;

    /// <inheritdoc/>
    public override bool TryBind(Spot spot, [MaybeNullWhen(false)] out T value)
    {
        value = default;
        if (spot.Node is not YamlList list)
        {
            ReportWrongType(spot);
            return false;
        }

        if (list.Items.Count != columns.Length)
        {
            spot.Report(DescriptionFindings.WrongCount, $"{list.InWords} stands here; {inWords} is due",
                $"write {columns.Length} values, as in `{example}`");
            return false;
        }

        object[] bound = new object[columns.Length];
        bool good = true;
        for (int i = 0; i < columns.Length; i++)
        {
            good &= columns[i].TryBindObject(spot.Item(i, list.Items[i]), out object? one);
            bound[i] = one!;
        }

        value = good ? make(bound) : default;
        return good;
    }

    /// <inheritdoc/>
    public override void WriteSchema(Utf8JsonWriter json)
    {
        json.WriteString("type", "array");
        json.WriteStartArray("prefixItems");
        foreach (Form column in columns)
        {
            json.WriteStartObject();
            column.WriteSchema(json);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteNumber("minItems", columns.Length);
        json.WriteBoolean("items", false);
    }
}
