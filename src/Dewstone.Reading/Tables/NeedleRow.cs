using Dewstone.Model.Description;
using Dewstone.Model.Diagnostics;
using Dewstone.Model.Quantities;
using Dewstone.Reading.Binding;
using Dewstone.Reading.Quantities;
using Dewstone.Reading.Yaml;
using nietras.SeparatedValues;

namespace Dewstone.Reading.Tables;

/// <summary>One row of a needles file.</summary>
internal readonly ref struct NeedleRow
{
    private static readonly (string Word, NeedleCondition Condition)[] States =
        [("ok", NeedleCondition.Ok), ("blocked", NeedleCondition.Blocked), ("limited", NeedleCondition.Limited)];

    private static readonly UnitOfMeasure MillilitresPerSecond = QuantityKinds.Flow.Find("mL/s")!;
    private static readonly UnitOfMeasure Percent = QuantityKinds.Share.Find("%")!;

    private readonly SepReader.Row row;
    private readonly string[] names;
    private readonly string file;
    private readonly DiagnosticBag findings;

    /// <summary>A row.</summary>
    /// <param name="row">Its cells.</param>
    /// <param name="names">Names of the cells.</param>
    /// <param name="file">File as shown in findings.</param>
    /// <param name="findings">Takes the findings.</param>
    public NeedleRow(SepReader.Row row, string[] names, string file, DiagnosticBag findings)
    {
        this.row = row;
        this.names = names;
        this.file = file;
        this.findings = findings;
    }

    /// <summary>The needle the row is about.</summary>
    /// <returns>The needle; null when a cell is at fault, with a finding for each such cell.</returns>
    public NeedleState? ToNeedle()
    {
        int before = findings.Items.Count;
        double column = Number(0, 1, 2000, true) ?? 0.0;
        double line = Number(1, 1, 2000, true) ?? 0.0;
        NeedleCondition condition = State(4);
        double gain = Number(5, 0.1, 10, false) ?? 1.0;
        double offset = Number(6, -100, 100, false) ?? 0.0;
        double? flow = Cell(7).Length == 0 ? null : Number(7, 0.001, 10_000, false);
        double? repeatability = Cell(8).Length == 0 ? null : Number(8, 0, 50, false);
        return findings.Items.Count > before
            ? null
            : new NeedleState
            {
                Column = (int)column,
                Row = (int)line,
                Board = Cell(2),
                Channel = Cell(3),
                Condition = condition,
                Gain = gain,
                OffsetMillilitres = offset,
                Flow = flow is null ? null : new FlowRate(MillilitresPerSecond.ToBase(Cell(7))),
                Repeatability = repeatability is null ? null : Percent.ToBase(Cell(8)),
            };
    }

    /// <summary>Adds a finding at a cell.</summary>
    /// <param name="finding">Entry of the catalogue.</param>
    /// <param name="cell">Cell from 0.</param>
    /// <param name="message">What was found.</param>
    /// <param name="remedy">What to do.</param>
    public void Report(FindingKind finding, int cell, string message, string remedy)
    {
        int column = row.Span.Overlaps(row[cell].Span, out int offset) ? offset + 1 : CellStart(cell);
        findings.Add(finding.At(message, remedy, location: new SourceLocation(file, row.LineNumberFrom, column)));
    }

    // An empty cell overlaps nothing.
    private int CellStart(int cell)
    {
        int column = 1;
        for (int i = 0; i < cell; i++)
        {
            column += row[i].Span.Length + 1;
        }

        return column;
    }

    private string Cell(int cell) => row[cell].Span.Trim().ToString();

    private double? Number(int cell, double least, double most, bool whole)
    {
        string text = Cell(cell);
        string due = $"a {(whole ? "whole " : "")}number from {least} to {most}";
        if (NumberText.Split(text, out double value, out string rest) is { } fault)
        {
            Report(NeedleFindings.Cell, cell,
                text.Length == 0 ? $"`{names[cell]}` is empty" : $"`{names[cell]}`: {fault.Message}", $"write {due}");
            return null;
        }

        if (rest.Length > 0 || value < least || value > most || (whole && value != Math.Floor(value)))
        {
            Report(NeedleFindings.Cell, cell, $"`{Quoting.Short(text)}` will not do as `{names[cell]}`", $"write {due}");
            return null;
        }

        return value;
    }

    private NeedleCondition State(int cell)
    {
        string text = Cell(cell);
        foreach ((string word, NeedleCondition condition) in States)
        {
            if (word == text)
            {
                return condition;
            }
        }

        string meant = Spelling.Nearest(text, States.Select(state => state.Word)) is { } near ? $"did you mean `{near}`? " : "";
        Report(NeedleFindings.Cell, cell, $"`{Quoting.Short(text)}` will not do as `state`",
            $"{meant}write ok, blocked or limited");
        return NeedleCondition.Ok;
    }
}
