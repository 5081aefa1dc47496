using System.Text.Json;
using Dewstone.Model.Diagnostics;
using Dewstone.Reading.Quantities;
using Dewstone.Reading.Yaml;

namespace Dewstone.Reading.Binding;

/// <summary>A whole number within a range.</summary>
/// <typeparam name="T">Its type.</typeparam>
/// <param name="least">Least value.</param>
/// <param name="most">Greatest value, at most 2^53.</param>
/// <param name="example">A good value.</param>
/// <param name="make">Makes the value.</param>
internal sealed class WholeNumberForm<T>(long least, long most, string example, Func<long, T> make) : ScalarForm<T>
    where T : notnull
{
    /// <summary>Least value.</summary>
    public long Least => least;

    /// <summary>Greatest value.</summary>
    public long Most => most;

    /// <inheritdoc/>
    public override string InWords => $"a whole number from {least} to {most}";

    /// <inheritdoc/>
    public override string Example => example;

    /// <inheritdoc/>
    protected override bool TakesQuoted => false;

    /// <inheritdoc/>
    public override TextFault? Read(string text, out T? value)
    {
        value = default;
        if (NumberText.Split(text, out double number, out string rest) is { } fault)
        {
            return fault with { Remedy = $"{fault.Remedy}; {InWords} is due here" };
        }

        if (rest.Length > 0)
        {
            return new TextFault(DescriptionFindings.WrongUnit,
                $"`{Quoting.Short(text)}` has `{Quoting.Short(rest)}` after its number; a bare whole number is due here",
                $"write {InWords}, as in `{example}`");
        }

        if (number < least || number > most)
        {
            return new TextFault(DescriptionFindings.OutOfRange, $"`{Quoting.Short(text)}` is out of range", $"{InWords} will do");
        }

        if (!long.TryParse(text, out long whole))
        {
            return new TextFault(DescriptionFindings.NotWhole, $"`{Quoting.Short(text)}` is not a whole number in digits",
                $"write {InWords}, as in `{example}`");
        }

        value = make(whole);
        return null;
    }

    /// <inheritdoc/>
    public override void WriteSchema(Utf8JsonWriter json)
    {
        json.WriteString("type", "integer");
        json.WriteNumber("minimum", least);
        json.WriteNumber("maximum", most);
    }
}
