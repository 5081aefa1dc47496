namespace Dewstone.Reading.Tables;

/// <summary>A column of a table of measurements; its name carries its unit.</summary>
/// <param name="Name">Name in the first line.</param>
/// <param name="Least">Least value.</param>
/// <param name="Most">Greatest value.</param>
/// <param name="IsWhole">Whether only whole numbers will do.</param>
/// <param name="IsText">Whether it holds text instead.</param>
/// <param name="IsOptional">Whether the table may do without it, and a cell may be empty.</param>
internal sealed record DataColumn(string Name, double Least = 0.0, double Most = 0.0, bool IsWhole = false, bool IsText = false, bool IsOptional = false);
