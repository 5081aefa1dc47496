using Dewstone.Model.Diagnostics;
using Dewstone.Model.Measurements;
using Dewstone.Reading.Files;
using Dewstone.Reading.Tables;

namespace Dewstone.Reading;

/// <summary>Reads tables of measurements. Nothing in a file makes it throw: every fault is a finding with its place and a remedy, all in one go.</summary>
public static class MeasurementReader
{
    /// <summary>Reads weighings of needles.</summary>
    /// <param name="path">Path, relative to the current folder.</param>
    /// <returns>The reading; its source map is empty, since a table has no keys.</returns>
    public static FileReading<IReadOnlyList<NeedleReading>> ReadNeedleChecks(string path) => JobReader.ReadFile(path, NeedleChecksText);

    /// <summary>Reads weighings of needles from their text.</summary>
    /// <param name="text">Whole text of the file.</param>
    /// <param name="file">File name for findings.</param>
    /// <returns>The reading.</returns>
    public static FileReading<IReadOnlyList<NeedleReading>> NeedleChecksText(string text, string file) => Collect(text, file, NeedleReadingTable.Read);

    /// <summary>Reads measurements of a mix: absorption, test balls, merged pairs or loose densities, as the first line tells.</summary>
    /// <param name="path">Path, relative to the current folder.</param>
    /// <returns>The reading; its source map is empty, since a table has no keys.</returns>
    public static FileReading<MixReadings> ReadMixData(string path) => JobReader.ReadFile(path, MixDataText);

    /// <summary>Reads measurements of a mix from their text.</summary>
    /// <param name="text">Whole text of the file.</param>
    /// <param name="file">File name for findings.</param>
    /// <returns>The reading.</returns>
    public static FileReading<MixReadings> MixDataText(string text, string file) => Collect(text, file, MixReadingTable.Read);

    /// <summary>Whether two paths lead to one file, links followed.</summary>
    /// <param name="path">A path, relative to the current folder.</param>
    /// <param name="other">Another.</param>
    /// <returns>True for one and the same place.</returns>
    public static bool IsSameFile(string path, string other)
    {
        string full = Path.GetFullPath(path), otherFull = Path.GetFullPath(other);
        return (LinkResolver.Resolve(full) ?? full) == (LinkResolver.Resolve(otherFull) ?? otherFull);
    }

    private static FileReading<T> Collect<T>(string text, string file, Func<string, string, DiagnosticBag, T> read)
        where T : class
    {
        DiagnosticBag findings = new();
        T value = read(text, file, findings);
        return new FileReading<T>(findings.HasErrors ? null : value, DescriptionBinder.InOrder(findings.Items), new SourceMap(file));
    }
}
