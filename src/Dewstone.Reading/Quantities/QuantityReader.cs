using Dewstone.Model.Diagnostics;
using Dewstone.Reading.Yaml;

namespace Dewstone.Reading.Quantities;

/// <summary>Reads a number with its unit of measure, strictly: <c>900 mm</c>, <c>3.2e-6 m2/s</c>, <c>0.16 /kg</c>.</summary>
internal static class QuantityReader
{
    /// <summary>Reads a quantity.</summary>
    /// <param name="text">Text.</param>
    /// <param name="kind">Kind of quantity that is due.</param>
    /// <param name="value">Its value in the kind's base unit.</param>
    /// <returns>Null when the text is good; else what is wrong with it.</returns>
    public static TextFault? Read(string text, QuantityKind kind, out double value)
    {
        value = 0.0;
        if (NumberText.Split(text, out ReadOnlySpan<char> number, out string symbol) is { } fault)
        {
            return fault with { Remedy = $"{fault.Remedy}; {kind.Name} is due here, in {kind.UnitList}" };
        }

        if (symbol.Length == 0)
        {
            return new TextFault(DescriptionFindings.UnitMissing,
                $"`{Quoting.Short(text)}` has no unit of measure; {kind.Name} is due here",
                $"add the one that is meant: {kind.UnitList}");
        }

        if (kind.Find(symbol) is not { } unit)
        {
            return WrongUnit(text, symbol, kind);
        }

        value = unit.ToBase(number);
        return double.IsFinite(value) ? null : NumberText.Fault(text, "is too large a number",
            $"write a smaller number, in {kind.UnitList}");
    }

    private static TextFault WrongUnit(string text, string symbol, QuantityKind kind)
    {
        string shown = Quoting.Short(symbol);
        string known = QuantityKinds.All.FirstOrDefault(other => other.Find(symbol) is not null) is { } other
            ? $"`{shown}` is a unit of {other.Name.Split(' ', 2)[1]}"
            : $"`{shown}` is no unit of measure known here";
        string meant = kind.Units.FirstOrDefault(unit => unit.Symbol.Equals(symbol, StringComparison.OrdinalIgnoreCase)) is { } near
            ? $"did you mean `{near.Symbol}`? "
            : "";
        return new TextFault(DescriptionFindings.WrongUnit, $"`{Quoting.Short(text)}`: {known}; {kind.Name} is due here",
            $"{meant}write it in {kind.UnitList}");
    }
}
