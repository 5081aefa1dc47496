using System.Diagnostics.CodeAnalysis;
using System.Text.Json;

namespace Dewstone.Reading.Binding;

/// <summary>A form whose values are made into something else.</summary>
/// <typeparam name="TFrom">What the inner form gives.</typeparam>
/// <typeparam name="T">What is made of it.</typeparam>
/// <param name="form">Inner form.</param>
/// <param name="make">Makes the meaning.</param>
internal sealed class MappedForm<TFrom, T>(FormOf<TFrom> form, Func<TFrom, T> make) : FormOf<T>
    where TFrom : notnull
    where T : notnull
{
    /// <inheritdoc/>
    public override string InWords => form.InWords;

    /// <inheritdoc/>
    public override string Example => form.Example;

    /// <inheritdoc/>
    public override IEnumerable<Form> Inner => [form];

    /// <inheritdoc/>
    public override bool TryBind(Spot spot, [MaybeNullWhen(false)] out T value)
    {
        bool good = form.TryBind(spot, out TFrom? from);
        value = good ? make(from!) : default;
        return good;
    }

    /// <inheritdoc/>
    public override void WriteSchema(Utf8JsonWriter json) => form.WriteSchema(json);
}
