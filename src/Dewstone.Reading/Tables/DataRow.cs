using Dewstone.Model.Diagnostics;

namespace Dewstone.Reading.Tables;

/// <summary>A row of a table of measurements whose cells were all good.</summary>
/// <param name="File">File as shown in findings.</param>
/// <param name="Line">Line, from 1.</param>
/// <param name="Numbers">Numbers by column; columns of text are missing.</param>
/// <param name="Texts">Texts by column; columns that are not in the file are missing.</param>
internal sealed record DataRow(string File, int Line, IReadOnlyDictionary<string, double> Numbers, IReadOnlyDictionary<string, string> Texts)
{
    /// <summary>A number.</summary>
    /// <param name="column">Name of its column.</param>
    public double this[string column] => Numbers[column];

    /// <summary>A text.</summary>
    /// <param name="column">Name of its column.</param>
    /// <returns>The text; empty when the column is not in the file.</returns>
    public string Text(string column) => Texts.GetValueOrDefault(column, "");

    /// <summary>A finding about the whole row.</summary>
    /// <param name="message">What contradicts what.</param>
    /// <returns>DW8325.</returns>
    public Diagnostic Contradiction(string message) =>
        MeasurementFindings.Contradiction.At(message, "check the row against the yard's sheet", location: new SourceLocation(File, Line, 1));
}
