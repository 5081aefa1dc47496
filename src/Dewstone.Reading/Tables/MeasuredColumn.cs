namespace Dewstone.Reading.Tables;

/// <summary>A column that a table of measurements may have.</summary>
/// <param name="Name">Its name, without a unit.</param>
/// <param name="Least">Least value, in the base unit; of numbers only.</param>
/// <param name="Most">Greatest value, in the base unit.</param>
internal sealed record MeasuredColumn(string Name, double Least = 0.0, double Most = 0.0)
{
    /// <summary>Endings that name the unit, with the factor that turns a value into the base unit; empty when the value has none.</summary>
    public IReadOnlyList<(string Ending, double Factor)> Units { get; init; } = [];

    /// <summary>Words that may stand in it; null for numbers, empty for any text.</summary>
    public IReadOnlyList<string>? Words { get; init; }

    /// <summary>Whether only whole numbers will do.</summary>
    public bool IsWhole { get; init; }

    /// <summary>Whether the table must have it, a value in every row.</summary>
    public bool IsRequired { get; init; } = true;

    /// <summary>Whether it holds numbers.</summary>
    public bool IsNumber => Words is null;

    /// <summary>Its name in a first line, with the first of its units.</summary>
    public string Written => Units.Count == 0 ? Name : $"{Name}_{Units[0].Ending}";

    /// <summary>The factor that goes with a name of the first line.</summary>
    /// <param name="title">Name found.</param>
    /// <returns>Null when the name is not this column's.</returns>
    public double? FactorOf(string title)
    {
        foreach ((string ending, double factor) in Units)
        {
            if (title == $"{Name}_{ending}")
            {
                return factor;
            }
        }

        return Units.Count == 0 && title == Name ? 1.0 : null;
    }
}
