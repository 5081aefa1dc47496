using System.Diagnostics.CodeAnalysis;

namespace Dewstone.Reading.Binding;

/// <summary>A form whose values mean a <typeparamref name="T"/>.</summary>
/// <typeparam name="T">What a value means.</typeparam>
internal abstract class FormOf<T> : Form
    where T : notnull
{
    /// <summary>Binds a value.</summary>
    /// <param name="spot">Value.</param>
    /// <param name="value">What it means.</param>
    /// <returns>False when it is at fault, with a finding.</returns>
    public abstract bool TryBind(Spot spot, [MaybeNullWhen(false)] out T value);

    /// <inheritdoc/>
    public sealed override bool TryBindObject(Spot spot, out object? value)
    {
        bool good = TryBind(spot, out T? bound);
        value = bound;
        return good;
    }
}
