namespace Dewstone.Reading.Quantities;

/// <summary>A kind of quantity with the units it may be written in; the first is the one to suggest.</summary>
/// <param name="Name">With its article, for messages: <c>a length</c>.</param>
/// <param name="Units">Units that will do.</param>
internal sealed record QuantityKind(string Name, params UnitOfMeasure[] Units)
{
    /// <summary>The units as a list for messages.</summary>
    public string UnitList => string.Join(", ", Units.Select(unit => unit.Symbol));

    /// <summary>The unit with a symbol, or null.</summary>
    /// <param name="symbol">Symbol, case matters.</param>
    /// <returns>The unit, or null.</returns>
    public UnitOfMeasure? Find(ReadOnlySpan<char> symbol)
    {
        foreach (UnitOfMeasure unit in Units)
        {
            if (symbol.SequenceEqual(unit.Symbol))
            {
                return unit;
            }
        }

        return null;
    }
}
