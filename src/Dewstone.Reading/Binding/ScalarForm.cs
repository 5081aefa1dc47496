using System.Diagnostics.CodeAnalysis;
using Dewstone.Reading.Quantities;
using Dewstone.Reading.Yaml;

namespace Dewstone.Reading.Binding;

/// <summary>A form whose values are single texts.</summary>
/// <typeparam name="T">What a value means.</typeparam>
internal abstract class ScalarForm<T> : FormOf<T>
    where T : notnull
{
    /// <summary>Whether a value in quotes will do as well.</summary>
    protected virtual bool TakesQuoted => true;

    /// <inheritdoc/>
    public sealed override bool TryBind(Spot spot, [MaybeNullWhen(false)] out T value)
    {
        value = default;
        if (spot.Node is not YamlScalar { IsNothing: false } scalar || (!scalar.IsPlain && !TakesQuoted))
        {
            ReportWrongType(spot);
            return false;
        }

        if (Read(scalar.Text, out T? read) is { } fault)
        {
            spot.Report(fault);
            return false;
        }

        value = read!;
        return true;
    }

    /// <summary>Reads a text.</summary>
    /// <param name="text">Text without quotes.</param>
    /// <param name="value">What it means.</param>
    /// <returns>Null when it is good; else what is wrong with it.</returns>
    public abstract TextFault? Read(string text, out T? value);
}
