using System.Diagnostics.CodeAnalysis;
using Dewstone.Model.Diagnostics;

namespace Dewstone.Reading.Binding;

/// <summary>The values of one table, by key.</summary>
/// <param name="spot">The table.</param>
internal sealed class Bound(Spot spot)
{
    private readonly Dictionary<Key, object?> values = [];

    /// <summary>The table.</summary>
    public Spot Spot => spot;

    /// <summary>Whether a key stands in the table, good or at fault.</summary>
    /// <param name="key">Key.</param>
    /// <returns>True when it stands there.</returns>
    public bool Stands(Key key) => values.ContainsKey(key);

    /// <summary>The value of a key, or its default.</summary>
    /// <typeparam name="T">What it means.</typeparam>
    /// <param name="key">Key that is required or has a default.</param>
    /// <returns>The value.</returns>
    public T Get<T>(KeyOf<T> key)
        where T : notnull => values.TryGetValue(key, out object? value) ? (T)value! : key.FallbackValue();

    /// <summary>The value of a key that may be absent.</summary>
    /// <typeparam name="T">What it means.</typeparam>
    /// <param name="key">Key.</param>
    /// <returns>The value, or null.</returns>
    public T? Maybe<T>(KeyOf<T> key)
        where T : struct => values.TryGetValue(key, out object? value) ? (T)value! : null;

    /// <summary>The value of a key that may be absent.</summary>
    /// <typeparam name="T">What it means.</typeparam>
    /// <param name="key">Key.</param>
    /// <returns>The value, or null.</returns>
    public T? MaybeOf<T>(KeyOf<T> key)
        where T : class => values.TryGetValue(key, out object? value) ? (T)value! : null;

    /// <summary>The value of a key or its default, for rules over several keys, which also run while others are at fault.</summary>
    /// <typeparam name="T">What it means.</typeparam>
    /// <param name="key">Key.</param>
    /// <param name="value">The value.</param>
    /// <returns>False when the key is at fault, or absent without a default.</returns>
    public bool Has<T>(KeyOf<T> key, [MaybeNullWhen(false)] out T value)
        where T : notnull
    {
        if (values.TryGetValue(key, out object? bound))
        {
            value = bound is T good ? good : default;
            return bound is not null;
        }

        value = key.Fallback is null ? default : key.FallbackValue();
        return key.Fallback is not null;
    }

    /// <summary>Adds a finding at a key or below it.</summary>
    /// <param name="finding">Entry of the catalogue.</param>
    /// <param name="key">Path from this table.</param>
    /// <param name="message">What was found.</param>
    /// <param name="remedy">What to do.</param>
    public void Report(FindingKind finding, string key, string message, string remedy) => spot.ReportBelow(finding, key, message, remedy);

    /// <summary>Notes a value; null when it is at fault.</summary>
    /// <param name="key">Key.</param>
    /// <param name="value">Value.</param>
    internal void Set(Key key, object? value) => values[key] = value;
}
