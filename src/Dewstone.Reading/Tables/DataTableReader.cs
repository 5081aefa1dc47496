using Dewstone.Model.Diagnostics;
using Dewstone.Reading.Binding;
using Dewstone.Reading.Quantities;
using Dewstone.Reading.Yaml;
using nietras.SeparatedValues;

namespace Dewstone.Reading.Tables;

/// <summary>Reads a table of measurements whose kind the names in its first line tell. All faults are found in one go, each at its line and column.</summary>
/// <param name="file">File as shown in findings.</param>
/// <param name="findings">Takes DW8320 to DW8324.</param>
internal sealed class DataTableReader(string file, DiagnosticBag findings)
{
    private const int LongestText = 80;

    /// <summary>Reads a table.</summary>
    /// <param name="text">Whole text.</param>
    /// <param name="kinds">Columns of each kind of table that will do.</param>
    /// <returns>Kind, counted from 0, and its rows in order; no kind when the first line will not do.</returns>
    public (int? Kind, IReadOnlyList<DataRow> Rows) Read(string text, IReadOnlyList<IReadOnlyList<DataColumn>> kinds)
    {
        using SepReader reader =
            Sep.New(',').Reader(o => o with { HasHeader = false, DisableColCountCheck = true, DisableQuotesParsing = true }).FromText(text);
        int? kind = null;
        DataColumn[] columns = [];
        List<DataRow> rows = [];
        bool headerSeen = false;
        foreach (SepReader.Row row in reader)
        {
            if (!headerSeen)
            {
                headerSeen = true;
                kind = Kind(row, kinds, out columns);
                if (kind is null)
                {
                    return (null, []);
                }
            }
            else if (!row.Span.IsWhiteSpace() && Row(row, columns) is { } good)
            {
                rows.Add(good);
            }
        }

        if (!headerSeen)
        {
            Report(MeasurementFindings.Header, 1, 1, "the file is empty", $"begin with a line such as {Names(kinds[0])}");
        }
        else if (rows.Count == 0 && !findings.HasErrors)
        {
            Report(MeasurementFindings.NoRows, 1, 1, "there are no rows below the first line", "name the file that holds the readings");
        }

        return (kind, rows);
    }

    private int? Kind(SepReader.Row header, IReadOnlyList<IReadOnlyList<DataColumn>> kinds, out DataColumn[] columns)
    {
        string[] names = new string[header.ColCount];
        for (int i = 0; i < names.Length; i++)
        {
            names[i] = header[i].ToString().Trim();
        }

        int kind = Enumerable.Range(0, kinds.Count).MaxBy(k => kinds[k].Count(column => names.Contains(column.Name)));
        columns = [.. names.Select(name => kinds[kind].FirstOrDefault(column => column.Name == name) ?? new DataColumn(name, IsText: true, IsOptional: true))];
        int before = findings.Items.Count;
        if (names.Length == 1 && names[0].Contains(';', StringComparison.Ordinal))
        {
            Report(MeasurementFindings.Header, 1, 1, "the first line has semicolons between its names", "save the table with commas between cells and decimal points in numbers");
            return null;
        }

        for (int i = 0; i < names.Length; i++)
        {
            int at = Column(header, i);
            if (!kinds[kind].Any(column => column.Name == names[i]))
            {
                string? meant = kinds[kind].Select(column => column.Name).FirstOrDefault(name => names[i].Length > 1 && name.StartsWith(names[i] + "_", StringComparison.Ordinal))
                    ?? Spelling.Nearest(names[i], kinds[kind].Select(column => column.Name));
                Report(MeasurementFindings.Header, 1, at, $"there is no column `{Quoting.Short(names[i])}`",
                    meant is null ? $"the columns are {Names(kinds[kind])}" : $"write `{meant}`, with its unit");
            }
            else if (names.Take(i).Contains(names[i]))
            {
                Report(MeasurementFindings.Header, 1, at, $"the column `{names[i]}` stands there twice", "take one of them out");
            }
        }

        string[] missing = [.. kinds[kind].Where(column => !column.IsOptional && !names.Contains(column.Name)).Select(column => column.Name)];
        if (missing.Length > 0)
        {
            Report(MeasurementFindings.Header, 1, 1, $"the first line lacks {string.Join(", ", missing)}", $"the columns are {Names(kinds[kind])}");
        }

        return findings.Items.Count > before ? null : kind;
    }

    private DataRow? Row(SepReader.Row row, DataColumn[] columns)
    {
        if (row.ColCount != columns.Length)
        {
            string comma = row.ColCount > columns.Length ? "; write decimal points, not commas" : "";
            Report(MeasurementFindings.RowLength, row.LineNumberFrom, 1, $"the row has {row.ColCount} cells instead of {columns.Length}",
                $"give it the cells {string.Join(',', columns.Select(column => column.Name))}{comma}");
            return null;
        }

        int before = findings.Items.Count;
        Dictionary<string, double> numbers = [];
        Dictionary<string, string> texts = [];
        for (int i = 0; i < columns.Length; i++)
        {
            string cell = row[i].ToString().Trim();
            if (columns[i].IsText)
            {
                texts[columns[i].Name] = cell;
                if (cell.Length > LongestText || cell.Any(char.IsControl))
                {
                    Report(MeasurementFindings.Cell, row.LineNumberFrom, Column(row, i), $"`{Quoting.Short(cell)}` will not do as `{columns[i].Name}`", $"write up to {LongestText} characters in one line");
                }
            }

            if (cell.Length == 0 && !columns[i].IsOptional)
            {
                Report(MeasurementFindings.Empty, row.LineNumberFrom, Column(row, i), $"`{columns[i].Name}` is empty", "fill it in from the yard's sheet, or take the row out");
            }
            else if (!columns[i].IsText && Number(cell, columns[i], row.LineNumberFrom, Column(row, i)) is { } number)
            {
                numbers[columns[i].Name] = number;
            }
        }

        return findings.Items.Count > before ? null : new DataRow(file, row.LineNumberFrom, numbers, texts);
    }

    private double? Number(string cell, DataColumn column, int line, int at)
    {
        string due = $"write a {(column.IsWhole ? "whole " : "")}number from {column.Least} to {column.Most}, without its unit";
        if (NumberText.Split(cell, out double value, out string rest) is { } fault)
        {
            Report(MeasurementFindings.Cell, line, at, $"`{column.Name}`: {fault.Message}", due);
            return null;
        }

        if (rest.Length > 0 || value < column.Least || value > column.Most || (column.IsWhole && value != Math.Floor(value)))
        {
            Report(MeasurementFindings.Cell, line, at, $"`{Quoting.Short(cell)}` will not do as `{column.Name}`", due);
            return null;
        }

        return value;
    }

    private static int Column(SepReader.Row row, int cell)
    {
        int column = 1;
        for (int i = 0; i < cell; i++)
        {
            column += row[i].Span.Length + 1;
        }

        return column;
    }

    private static string Names(IReadOnlyList<DataColumn> columns) =>
        string.Join(',', columns.Select(column => column.IsOptional ? $"[{column.Name}]" : column.Name));

    private void Report(FindingKind kind, int line, int column, string message, string remedy) =>
        findings.Add(kind.At(message, remedy, location: new SourceLocation(file, line, column)));
}
