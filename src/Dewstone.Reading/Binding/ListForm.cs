using System.Diagnostics.CodeAnalysis;
using System.Text.Json;
using Dewstone.Model.Diagnostics;
using Dewstone.Reading.Yaml;

namespace Dewstone.Reading.Binding;

/// <summary>A list of like values.</summary>
/// <typeparam name="T">What an item means.</typeparam>
/// <param name="item">Form of an item.</param>
/// <param name="fewest">Least number of items.</param>
/// <param name="many">What the items are called together: <c>solids</c>.</param>
/// <param name="example">A good value; null for one item's example.</param>
internal sealed class ListForm<T>(FormOf<T> item, int fewest, string many, string? example = null) : FormOf<IReadOnlyList<T>>
    where T : notnull
{
    /// <summary>Form of an item.</summary>
    public FormOf<T> Item => item;

    /// <summary>Least number of items.</summary>
    public int Fewest => fewest;

    /// <inheritdoc/>
    public override string InWords => $"a list of {many}";

    /// <inheritdoc/>
    public override string Example => example ?? $"[{item.Example}]";

    /// <inheritdoc/>
    public override IEnumerable<Form> Inner => [item];

    /// <inheritdoc/>
    public override bool TryBind(Spot spot, [MaybeNullWhen(false)] out IReadOnlyList<T> value)
    {
        value = null;
        if (spot.Node is not YamlList list)
        {
            ReportWrongType(spot);
            return false;
        }

        if (list.Items.Count < fewest)
        {
            spot.Report(DescriptionFindings.WrongCount, $"{list.InWords} stands here; at least {fewest} {many} are due",
                $"write it as `{Example}`");
            return false;
        }

        List<T> bound = new(list.Items.Count);
        for (int i = 0; i < list.Items.Count; i++)
        {
            if (item.TryBind(spot.Item(i, list.Items[i]), out T? one))
            {
                bound.Add(one);
            }
        }

        value = bound;
        return bound.Count == list.Items.Count;
    }

    /// <inheritdoc/>
    public override void WriteSchema(Utf8JsonWriter json)
    {
        json.WriteString("type", "array");
        json.WriteNumber("minItems", fewest);
        json.WriteStartObject("items");
        item.WriteSchema(json);
        json.WriteEndObject();
    }
}
