namespace Dewstone.Reading.Tables;

/// <summary>A row of a table of measurements, its cells in the order of the columns asked for.</summary>
/// <param name="Line">Line of the file.</param>
/// <param name="Numbers">Numbers in base units; not a number where there is none.</param>
/// <param name="Texts">Texts; empty where there is none.</param>
internal sealed record MeasuredRow(int Line, double[] Numbers, string[] Texts)
{
    /// <summary>A number.</summary>
    /// <param name="column">Column, from 0.</param>
    /// <returns>Null when there is none.</returns>
    public double? Number(int column) => double.IsNaN(Numbers[column]) ? null : Numbers[column];
}
