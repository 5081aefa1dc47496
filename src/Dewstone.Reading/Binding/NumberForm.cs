using System.Text.Json;
using Dewstone.Model.Diagnostics;
using Dewstone.Reading.Quantities;
using Dewstone.Reading.Yaml;

namespace Dewstone.Reading.Binding;

/// <summary>A bare number within a range, for ratios and factors that have no unit.</summary>
/// <param name="least">Least value.</param>
/// <param name="most">Greatest value.</param>
/// <param name="example">A good value.</param>
internal sealed class NumberForm(double least, double most, string example) : ScalarForm<double>
{
    /// <summary>Least value.</summary>
    public double Least => least;

    /// <summary>Greatest value.</summary>
    public double Most => most;

    /// <inheritdoc/>
    public override string InWords => $"a number from {least} to {most}";

    /// <inheritdoc/>
    public override string Example => example;

    /// <inheritdoc/>
    protected override bool TakesQuoted => false;

    /// <inheritdoc/>
    public override TextFault? Read(string text, out double value)
    {
        if (NumberText.Split(text, out value, out string rest) is { } fault)
        {
            return fault with { Remedy = $"{fault.Remedy}; {InWords} is due here" };
        }

        if (rest.Length > 0)
        {
            return new TextFault(DescriptionFindings.WrongUnit,
                $"`{Quoting.Short(text)}` has `{Quoting.Short(rest)}` after its number; a bare number is due here",
                $"write {InWords}, without unit, as in `{example}`");
        }

        return value < least || value > most
            ? new TextFault(DescriptionFindings.OutOfRange, $"`{Quoting.Short(text)}` is out of range", $"{InWords} will do")
            : null;
    }

    /// <inheritdoc/>
    public override void WriteSchema(Utf8JsonWriter json)
    {
        json.WriteString("type", "number");
        json.WriteNumber("minimum", least);
        json.WriteNumber("maximum", most);
    }
}
