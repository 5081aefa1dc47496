using Dewstone.Model.Description;
using Dewstone.Model.Diagnostics;
using nietras.SeparatedValues;

namespace Dewstone.Reading.Tables;

/// <summary>Reads the needles file of a printer: comma-separated, one row a needle, with the fixed first line <see cref="Header"/>.</summary>
internal static class NeedleTableReader
{
    /// <summary>The first line.</summary>
    public const string Header = "column,row,board,channel,state,gain,offset_ml,flow_ml_s,repeatability_percent";

    /// <summary>Reads a table.</summary>
    /// <param name="text">Whole text.</param>
    /// <param name="file">File as shown in findings.</param>
    /// <param name="head">The head the needles belong to; null when it is not known.</param>
    /// <param name="findings">Takes the findings.</param>
    /// <returns>The table; null when any row is at fault.</returns>
    public static NeedleTable? Read(string text, string file, Head? head, DiagnosticBag findings)
    {
        string[] names = Header.Split(',');
        List<NeedleState> needles = [];
        Dictionary<(int Column, int Row), int> lines = [];
        int findingsBefore = findings.Items.Count;
        bool headerSeen = false;

        // Quotes are not needed in such a table and are left to be found as part of a cell.
        using SepReader reader =
            Sep.New(',').Reader(o => o with { HasHeader = false, DisableColCountCheck = true, DisableQuotesParsing = true }).FromText(text);
        foreach (SepReader.Row row in reader)
        {
            int line = row.LineNumberFrom;
            if (!headerSeen)
            {
                if (!row.Span.TrimEnd('\r').SequenceEqual(Header))
                {
                    findings.Add(NeedleFindings.Header.At("the first line does not name the columns expected",
                        $"write it as {Header}",
                        location: new SourceLocation(file, 1, 1)));
                    return null;
                }

                headerSeen = true;
            }
            else if (row.ColCount != names.Length)
            {
                if (!row.Span.IsWhiteSpace())
                {
                    findings.Add(NeedleFindings.RowLength.At($"the row has {row.ColCount} cells instead of {names.Length}",
                        $"give it the cells {Header}; leave empty what is not known", location: new SourceLocation(file, line, 1)));
                }
            }
            else
            {
                NeedleRow cells = new(row, names, file, findings);
                if (cells.ToNeedle() is { } needle && IsNew(needle, line, lines, cells) && FitsHead(needle, head, cells))
                {
                    needles.Add(needle);
                }
            }
        }

        if (!headerSeen)
        {
            findings.Add(NeedleFindings.Header.At("the file is empty", $"begin with the line {Header}",
                location: new SourceLocation(file, 1, 1)));
        }

        return findings.Items.Count > findingsBefore ? null : new NeedleTable { Needles = needles };
    }

    private static bool IsNew(NeedleState needle, int line, Dictionary<(int Column, int Row), int> lines, NeedleRow cells)
    {
        if (lines.TryAdd((needle.Column, needle.Row), line))
        {
            return true;
        }

        cells.Report(NeedleFindings.Twice, 0,
            $"the needle in column {needle.Column}, row {needle.Row} has a row already, on line {lines[(needle.Column, needle.Row)]}",
            "delete the older of the two");
        return false;
    }

    private static bool FitsHead(NeedleState needle, Head? head, NeedleRow cells)
    {
        if (head is null || (needle.Column <= head.Columns && needle.Row <= head.Rows))
        {
            return true;
        }

        cells.Report(NeedleFindings.OutsideHead, needle.Column > head.Columns ? 0 : 1,
            $"the needle in column {needle.Column}, row {needle.Row} is not in the head of {head.Columns} columns and {head.Rows} rows",
            "check that this file belongs to this printer");
        return false;
    }
}
