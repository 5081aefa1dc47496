using Dewstone.Model.Diagnostics;
using Dewstone.Model.Results;
using Dewstone.Reading.Quantities;
using Dewstone.Reading.Yaml;
using nietras.SeparatedValues;

namespace Dewstone.Reading.Tables;

/// <summary>Reads a run log: what each needle really delivered, with the fixed first line <see cref="Header"/>.</summary>
internal static class RunLogReader
{
    /// <summary>The first line.</summary>
    public const string Header = "layer,station,column,row,delivered_ml";

    private const double MostMillilitres = 10_000.0;
    private const int MostCount = 100_000;

    private static readonly string[] Names = Header.Split(',');

    /// <summary>Reads a log.</summary>
    /// <param name="text">Whole text.</param>
    /// <param name="file">File as shown in findings.</param>
    /// <param name="findings">Takes DW8301 and DW8302, one a fault.</param>
    /// <returns>Its rows in order; those that could be read when any is at fault.</returns>
    public static IReadOnlyList<DeliveredDose> Read(string text, string file, DiagnosticBag findings)
    {
        ArgumentNullException.ThrowIfNull(text);
        ArgumentNullException.ThrowIfNull(findings);
        List<DeliveredDose> doses = [];
        bool headerSeen = false;
        using SepReader reader =
            Sep.New(',').Reader(o => o with { HasHeader = false, DisableColCountCheck = true, DisableQuotesParsing = true }).FromText(text);
        foreach (SepReader.Row row in reader)
        {
            if (!headerSeen)
            {
                if (!row.Span.TrimEnd('\r').SequenceEqual(Header))
                {
                    break;
                }

                headerSeen = true;
            }
            else if (!row.Span.IsWhiteSpace() && ToDose(row, file, findings) is { } dose)
            {
                doses.Add(dose);
            }
        }

        if (!headerSeen)
        {
            findings.Add(RunLogFindings.Header.At("the first line does not name the columns expected", $"write it as {Header}", location: new SourceLocation(file, 1, 1)));
        }

        return doses;
    }

    private static DeliveredDose? ToDose(SepReader.Row row, string file, DiagnosticBag findings)
    {
        if (row.ColCount != Names.Length)
        {
            findings.Add(RunLogFindings.Cell.At(
                $"the row has {row.ColCount} cells instead of {Names.Length}", $"give it the cells {Header}", location: new SourceLocation(file, row.LineNumberFrom, 1)));
            return null;
        }

        Span<double> values = stackalloc double[Names.Length];
        int column = 1;
        bool isGood = true;
        for (int cell = 0; cell < values.Length; cell++)
        {
            bool whole = cell < Names.Length - 1;
            string text = row[cell].ToString();
            bool isNumber = NumberText.Split(text.Trim(), out values[cell], out string rest) is null && rest.Length == 0;
            if (!isNumber || (whole ? values[cell] < 1.0 || values[cell] > MostCount || values[cell] != Math.Floor(values[cell]) : values[cell] is < 0.0 or > MostMillilitres))
            {
                isGood = false;
                findings.Add(RunLogFindings.Cell.At(
                    $"`{Quoting.Short(text.Trim())}` will not do as `{Names[cell]}`", whole ? "write a whole number from 1" : $"write a number of mL from 0 to {MostMillilitres:0}",
                    location: new SourceLocation(file, row.LineNumberFrom, column)));
            }

            column += text.Length + 1;
        }

        return isGood
            ? new DeliveredDose(
                (int)values[0], (int)values[1], (int)values[2], (int)values[3],
                (int)decimal.Round((decimal)values[4] * 100m, 0, MidpointRounding.AwayFromZero), row.LineNumberFrom)
            : null;
    }
}
