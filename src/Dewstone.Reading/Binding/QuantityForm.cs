using System.Text.Json;
using Dewstone.Model.Diagnostics;
using Dewstone.Reading.Quantities;
using Dewstone.Reading.Yaml;

namespace Dewstone.Reading.Binding;

/// <summary>A number with its unit of measure, within a range.</summary>
/// <typeparam name="T">Quantity, or what is made of it.</typeparam>
/// <param name="kind">Kind of quantity.</param>
/// <param name="least">Least value as it would be written, with its unit.</param>
/// <param name="most">Greatest value as it would be written.</param>
/// <param name="example">A good value.</param>
/// <param name="make">Makes the quantity from the value in the kind's base unit.</param>
/// <param name="whole">Whether only whole numbers will do.</param>
internal sealed class QuantityForm<T>(
    QuantityKind kind, string least, string most, string example, Func<double, T> make, bool whole = false) : ScalarForm<T>
    where T : notnull
{
    private readonly double leastValue = Bound(least, kind);
    private readonly double mostValue = Bound(most, kind);

    /// <summary>Kind of quantity.</summary>
    public QuantityKind Kind => kind;

    /// <summary>Least value as it would be written.</summary>
    public string Least => least;

    /// <summary>Greatest value as it would be written.</summary>
    public string Most => most;

    /// <inheritdoc/>
    public override string InWords => $"{kind.Name} from {least} to {most}";

    /// <inheritdoc/>
    public override string Example => example;

    /// <inheritdoc/>
    public override TextFault? Read(string text, out T? value)
    {
        value = default;
        if (QuantityReader.Read(text, kind, out double read) is { } fault)
        {
            return fault;
        }

        if (read < leastValue || read > mostValue)
        {
            return new TextFault(DescriptionFindings.OutOfRange, $"`{Quoting.Short(text)}` is out of range",
                $"{kind.Name} from {least} to {most} will do");
        }

        if (whole && read != Math.Floor(read))
        {
            return new TextFault(DescriptionFindings.NotWhole, $"`{Quoting.Short(text)}` is not a whole number",
                $"write it as `{example}`");
        }

        value = make(read);
        return null;
    }

    /// <inheritdoc/>
    public override void WriteSchema(Utf8JsonWriter json)
    {
        json.WriteString("type", "string");
        string units = string.Join('|', kind.Units.Select(unit => unit.Symbol));
        json.WriteString("pattern", $@"^[-+]?(0|[1-9][0-9]*)(\.[0-9]+)?([eE][-+]?[0-9]+)? *({units})$");
    }

    private static double Bound(string text, QuantityKind kind) =>
        QuantityReader.Read(text, kind, out double value) is { } fault ? throw new ArgumentException(fault.Message, nameof(text)) : value;
}
