using Dewstone.Model.Description;
using Dewstone.Model.Diagnostics;
using Dewstone.Model.Results;
using Dewstone.Reading.Schema;
using Dewstone.Reading.Tables;

namespace Dewstone.Reading;

/// <summary>
/// Reads description files. Nothing a user writes makes it throw: every fault is a finding with its place and a remedy, and all faults
/// of a file are found in one go.
/// </summary>
public static class DescriptionReader
{
    /// <summary>
    /// Reads a unit's file and the mix, printer, needles, site and tonight's file that go with it. Who wins: the options, then tonight,
    /// then the unit (for needles: the options, then tonight, then the printer).
    /// </summary>
    /// <param name="unitPath">Path of the unit's file, relative to the current folder.</param>
    /// <param name="options">What the command line says; null for nothing.</param>
    /// <returns>The job's description or the findings that stand against it.</returns>
    public static ReadResult ReadJob(string unitPath, ReadOptions? options = null) =>
        new JobReader(options ?? ReadOptions.None).Read(unitPath);

    /// <summary>Reads a mix and a printer without any unit, and the needles and tonight's file that go with them.</summary>
    /// <param name="options">What the command line says; must name a mix and a printer.</param>
    /// <returns>Both, or the findings that stand against them.</returns>
    /// <exception cref="ArgumentException">No mix or no printer is named.</exception>
    public static MixOnPrinterReading ReadMixOnPrinter(ReadOptions options)
    {
        ArgumentNullException.ThrowIfNull(options);
        if (options.Mix is null || options.Printer is null)
        {
            throw new ArgumentException("A mix and a printer must be named.", nameof(options));
        }

        return new JobReader(options).ReadMixOnPrinter();
    }

    /// <summary>Reads an order and the unit, mix, printer, needles and site of each of its lines on each of its printers.</summary>
    /// <param name="orderPath">Path of the order's file, relative to the current folder.</param>
    /// <param name="root">Folder under which all files must lie; null for the nearest parent folder of the order with <c>.dewstone-root</c>, else its own.</param>
    /// <returns>The reading.</returns>
    public static OrderReading ReadOrderFiles(string orderPath, string? root = null) => new OrderReader(root).Read(orderPath);

    /// <summary>Reads a unit's file, without the files it names.</summary>
    /// <param name="path">Path, relative to the current folder.</param>
    /// <returns>The reading.</returns>
    public static FileReading<UnitFile> ReadUnit(string path) => JobReader.ReadFile(path, UnitText);

    /// <summary>Reads a mix file.</summary>
    /// <param name="path">Path, relative to the current folder.</param>
    /// <returns>The reading.</returns>
    public static FileReading<DryMix> ReadMix(string path) => JobReader.ReadFile(path, MixText);

    /// <summary>Reads a printer's file, without the needles file it names.</summary>
    /// <param name="path">Path, relative to the current folder.</param>
    /// <returns>The reading.</returns>
    public static FileReading<PrinterFile> ReadPrinter(string path) => JobReader.ReadFile(path, PrinterText);

    /// <summary>Reads a site file.</summary>
    /// <param name="path">Path, relative to the current folder.</param>
    /// <returns>The reading.</returns>
    public static FileReading<Site> ReadSite(string path) => JobReader.ReadFile(path, SiteText);

    /// <summary>Reads an order file, without the files it names.</summary>
    /// <param name="path">Path, relative to the current folder.</param>
    /// <returns>The reading.</returns>
    public static FileReading<Order> ReadOrder(string path) => JobReader.ReadFile(path, OrderText);

    /// <summary>Reads a needles file.</summary>
    /// <param name="path">Path, relative to the current folder.</param>
    /// <param name="head">Head the needles belong to; null when it is not known.</param>
    /// <returns>The reading; its source map is empty, since a table has no keys.</returns>
    public static FileReading<NeedleTable> ReadNeedles(string path, Head? head = null) =>
        JobReader.ReadFile(path, (text, file) => NeedlesText(text, file, head));

    /// <summary>Reads the log of what a machine really delivered.</summary>
    /// <param name="path">Path, relative to the current folder.</param>
    /// <returns>The reading; its source map is empty, since a table has no keys.</returns>
    public static FileReading<IReadOnlyList<DeliveredDose>> ReadRunLog(string path) => JobReader.ReadFile(path, (text, file) =>
    {
        DiagnosticBag findings = new();
        IReadOnlyList<DeliveredDose> doses = RunLogReader.Read(text, file, findings);
        return new FileReading<IReadOnlyList<DeliveredDose>>(findings.HasErrors ? null : doses, findings.Items, new SourceMap(file));
    });

    /// <summary>Reads a unit's description from its text.</summary>
    /// <param name="text">Whole text of the file.</param>
    /// <param name="file">File name for findings.</param>
    /// <returns>The reading.</returns>
    public static FileReading<UnitFile> UnitText(string text, string file) =>
        DescriptionBinder.Read(text, file, DescriptionKind.Unit, UnitTable.Table);

    /// <summary>Reads a mix from its text.</summary>
    /// <inheritdoc cref="UnitText"/>
    public static FileReading<DryMix> MixText(string text, string file) =>
        DescriptionBinder.Read(text, file, DescriptionKind.Mix, MixTable.Table);

    /// <summary>Reads a printer from its text.</summary>
    /// <inheritdoc cref="UnitText"/>
    public static FileReading<PrinterFile> PrinterText(string text, string file) =>
        DescriptionBinder.Read(text, file, DescriptionKind.Printer, PrinterTable.Table);

    /// <summary>Reads a site from its text.</summary>
    /// <inheritdoc cref="UnitText"/>
    public static FileReading<Site> SiteText(string text, string file) =>
        DescriptionBinder.Read(text, file, DescriptionKind.Site, SiteTable.Table);

    /// <summary>Reads an order from its text.</summary>
    /// <inheritdoc cref="UnitText"/>
    public static FileReading<Order> OrderText(string text, string file) =>
        DescriptionBinder.Read(text, file, DescriptionKind.Order, OrderTable.Table);

    /// <summary>Reads a night's description from its text.</summary>
    /// <inheritdoc cref="UnitText"/>
    public static FileReading<TonightFile> TonightText(string text, string file) =>
        DescriptionBinder.Read(text, file, DescriptionKind.Tonight, TonightTable.Table);

    /// <summary>Reads a needles table from its text.</summary>
    /// <param name="text">Whole text of the file.</param>
    /// <param name="file">File name for findings.</param>
    /// <param name="head">Head the needles belong to; null when it is not known.</param>
    /// <returns>The reading; its source map is empty, since a table has no keys.</returns>
    public static FileReading<NeedleTable> NeedlesText(string text, string file, Head? head = null)
    {
        DiagnosticBag findings = new();
        NeedleTable? table = NeedleTableReader.Read(text, file, head, findings);
        return new FileReading<NeedleTable>(table, DescriptionBinder.InOrder(findings.Items), new SourceMap(file));
    }
}
