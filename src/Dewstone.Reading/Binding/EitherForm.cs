using System.Diagnostics.CodeAnalysis;
using System.Text.Json;
using Dewstone.Reading.Yaml;

namespace Dewstone.Reading.Binding;

/// <summary>A value that may be written in two ways.</summary>
/// <typeparam name="T">What it means.</typeparam>
/// <param name="isFirst">Whether a value is meant the first way.</param>
/// <param name="first">First way.</param>
/// <param name="second">Second way.</param>
internal sealed class EitherForm<T>(Func<YamlNode, bool> isFirst, FormOf<T> first, FormOf<T> second) : FormOf<T>
    where T : notnull
{
    /// <inheritdoc/>
    public override string InWords => $"{first.InWords} or {second.InWords}";

    /// <inheritdoc/>
    public override string Example => first.Example;

    /// <inheritdoc/>
    public override IEnumerable<Form> Inner => [first, second];

    /// <inheritdoc/>
    public override bool TryBind(Spot spot, [MaybeNullWhen(false)] out T value)
    {
        if (spot.Node is YamlScalar { IsNothing: true })
        {
            ReportWrongType(spot);
            value = default;
            return false;
        }

        return isFirst(spot.Node) ? first.TryBind(spot, out value) : second.TryBind(spot, out value);
    }

    /// <inheritdoc/>
    public override void WriteSchema(Utf8JsonWriter json)
    {
        json.WriteStartArray("anyOf");
        foreach (FormOf<T> way in new[] { first, second })
        {
            json.WriteStartObject();
            way.WriteSchema(json);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }
}
