using Dewstone.Model.Diagnostics;
using Dewstone.Reading.Binding;
using Dewstone.Reading.Quantities;
using Dewstone.Reading.Yaml;
using nietras.SeparatedValues;

namespace Dewstone.Reading.Tables;

/// <summary>Reads tables of measurements: a first line that names the columns in any order, each measure with its unit in its name.</summary>
/// <param name="columns">Columns the table may have.</param>
/// <param name="file">File as shown in findings.</param>
/// <param name="findings">Takes DW8340 to DW8343 and DW8345, one a fault.</param>
internal sealed class MeasuredTableReader(IReadOnlyList<MeasuredColumn> columns, string file, DiagnosticBag findings)
{
    private const int MostFindings = 100;
    private const int LongestText = 80;

    private string Wanted => string.Join(',', columns.Where(c => c.IsRequired).Select(c => c.Written));

    /// <summary>Reads a table.</summary>
    /// <param name="text">Whole text.</param>
    /// <returns>Its rows that could be read, in order.</returns>
    public IReadOnlyList<MeasuredRow> Read(string text)
    {
        List<MeasuredRow> rows = [];
        (int Column, double Factor)[]? titles = null;
        using SepReader reader =
            Sep.New(',').Reader(o => o with { HasHeader = false, DisableColCountCheck = true, DisableQuotesParsing = true }).FromText(text);
        foreach (SepReader.Row row in reader)
        {
            if (titles is null)
            {
                titles = Titles(row);
                if (titles is null)
                {
                    return [];
                }
            }
            else if (!row.Span.IsWhiteSpace() && findings.Items.Count < MostFindings && Cells(row, titles) is { } cells)
            {
                rows.Add(cells);
            }
        }

        if (titles is null)
        {
            Add(SurveyFileFindings.Header, "the file is empty", $"begin with the line {Wanted}", 1, 1);
        }
        else if (rows.Count == 0 && !findings.HasErrors)
        {
            Add(SurveyFileFindings.Empty, "there is no row below the first line", "see that the whole file was written", 1, 1);
        }

        CheckGaps(rows);
        return rows;
    }

    private (int Column, double Factor)[]? Titles(SepReader.Row row)
    {
        var titles = new (int Column, double Factor)[row.ColCount];
        HashSet<int> seen = [];
        bool isGood = true;
        int at = 1;
        for (int cell = 0; cell < titles.Length; cell++)
        {
            string written = row[cell].ToString(), title = written.Trim();
            titles[cell] = Column(title);
            if (titles[cell].Column < 0)
            {
                isGood = false;
                Unknown(title, at);
            }
            else if (!seen.Add(titles[cell].Column))
            {
                isGood = false;
                Add(SurveyFileFindings.Header, $"`{columns[titles[cell].Column].Name}` stands there twice", "take one of the two columns out", 1, at);
            }

            at += written.Length + 1;
        }

        if (isGood)
        {
            foreach (MeasuredColumn missing in columns.Where((c, i) => c.IsRequired && !seen.Contains(i)))
            {
                isGood = false;
                Add(SurveyFileFindings.Header, $"there is no column `{missing.Written}`", $"the columns needed are {Wanted}", 1, 1);
            }
        }

        return isGood ? titles : null;
    }

    private (int Column, double Factor) Column(string title)
    {
        for (int i = 0; i < columns.Count; i++)
        {
            if (columns[i].FactorOf(title) is { } factor)
            {
                return (i, factor);
            }
        }

        return (-1, 0.0);
    }

    private void Unknown(string title, int at)
    {
        string shown = Quoting.Short(title);
        MeasuredColumn? bare = columns.FirstOrDefault(c => c.Units.Count > 0 && (title == c.Name || title.StartsWith(c.Name + "_", StringComparison.Ordinal)));
        if (bare is not null)
        {
            string units = string.Join(", ", bare.Units.Select(u => $"{bare.Name}_{u.Ending}"));
            Add(SurveyFileFindings.Header, title == bare.Name ? $"`{shown}` does not say its unit" : $"`{shown}` is in no unit that is read", $"write {units}", 1, at);
        }
        else if (title.Contains(';', StringComparison.Ordinal) || title.Contains('\t', StringComparison.Ordinal))
        {
            Add(SurveyFileFindings.Header, "the columns are not separated by commas", $"write {Wanted}", 1, at);
        }
        else
        {
            string? near = Spelling.Nearest(title, columns.Select(c => c.Written));
            Add(SurveyFileFindings.Header, $"`{shown}` is no column of this table", near is null ? $"the columns are {string.Join(", ", columns.Select(c => c.Written))}" : $"did you mean `{near}`?", 1, at);
        }
    }

    private MeasuredRow? Cells(SepReader.Row row, (int Column, double Factor)[] titles)
    {
        int line = row.LineNumberFrom;
        if (row.ColCount != titles.Length)
        {
            Add(SurveyFileFindings.Row, $"the row has {row.ColCount} cells, the first line {titles.Length}", "write decimals with a point, and a cell for every column", line, 1);
            return null;
        }

        double[] numbers = new double[columns.Count];
        string[] texts = new string[columns.Count];
        Array.Fill(numbers, double.NaN);
        Array.Fill(texts, "");
        bool isGood = true;
        int at = 1;
        for (int cell = 0; cell < titles.Length; cell++)
        {
            string written = row[cell].ToString(), value = written.Trim();
            MeasuredColumn column = columns[titles[cell].Column];
            isGood &= value.Length > 0
                ? column.IsNumber ? Number(column, value, titles[cell].Factor, line, at, out numbers[titles[cell].Column]) : Word(column, value, line, at)
                : !column.IsRequired || Refuse($"`{column.Written}` is empty", "write what was measured, or take the row out", line, at);
            texts[titles[cell].Column] = value;
            at += written.Length + 1;
        }

        return isGood ? new MeasuredRow(line, numbers, texts) : null;
    }

    private bool Number(MeasuredColumn column, string value, double factor, int line, int at, out double number)
    {
        TextFault? fault = NumberText.Split(value, out number, out string rest);
        if (fault is not null)
        {
            return Refuse(fault.Message, fault.Remedy, line, at);
        }

        if (rest.Length > 0)
        {
            return Refuse($"`{Quoting.Short(value)}` is no plain number", "the unit stands in the first line; write the number alone", line, at);
        }

        double least = column.Least / factor, most = column.Most / factor;
        if (number < least || number > most || (column.IsWhole && number != Math.Floor(number)))
        {
            return Refuse($"`{Quoting.Short(value)}` will not do as `{column.Written}`", $"write a {(column.IsWhole ? "whole " : "")}number from {least:0.####} to {most:0.####}", line, at);
        }

        number *= factor;
        return true;
    }

    private bool Word(MeasuredColumn column, string value, int line, int at) =>
        value.Length > LongestText || value.Any(char.IsControl) ? Refuse($"`{Quoting.Short(value)}` will not do as `{column.Name}`", $"write up to {LongestText} characters in one line", line, at) : column.Words!.Count == 0 || column.Words.Contains(value)
        || Refuse($"`{Quoting.Short(value)}` will not do as `{column.Name}`", $"write one of {string.Join(", ", column.Words)}", line, at);

    private bool Refuse(string message, string remedy, int line, int column)
    {
        Add(SurveyFileFindings.Cell, message, remedy, line, column);
        return false;
    }

    private void CheckGaps(List<MeasuredRow> rows)
    {
        for (int i = 0; i < columns.Count; i++)
        {
            int column = i;
            int empty = rows.Count(row => columns[column].IsNumber && double.IsNaN(row.Numbers[column]));
            if (empty > 0 && empty < rows.Count)
            {
                int line = rows.First(row => double.IsNaN(row.Numbers[column])).Line;
                Add(SurveyFileFindings.PartlyFilled, $"`{columns[i].Written}` is empty in {empty} of {rows.Count} rows, first here, and is not used", "fill it in every row, or leave the column out", line, 1);
                rows.ForEach(row => row.Numbers[column] = double.NaN);
            }
        }
    }

    private void Add(FindingKind kind, string message, string remedy, int line, int column) =>
        findings.Add(kind.At(message, remedy, location: new SourceLocation(file, line, column)));
}
