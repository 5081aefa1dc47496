using Dewstone.Model.Description;
using Dewstone.Model.Diagnostics;
using Dewstone.Reading.Files;

namespace Dewstone.Reading;

/// <summary>Reads an order and, for each of its lines, the unit with mix, printer, needles and site that go with it.</summary>
/// <param name="statedRoot">What <c>--root</c> says; null when it is not given.</param>
internal sealed class OrderReader(string? statedRoot)
{
    private readonly DiagnosticBag findings = new();
    private SourceText text = null!;
    private SourceMap source = null!;
    private string root = "";

    /// <summary>Reads.</summary>
    /// <param name="path">Path, relative to the current folder.</param>
    /// <returns>The reading.</returns>
    public OrderReading Read(string path)
    {
        source = new SourceMap(path);
        if (!JobReader.IsPath(path, findings))
        {
            return Result(null, [], []);
        }

        string full = Path.GetFullPath(path);
        if (FileLoader.Load(new FileRequest(full, path, null, null, null), findings) is not { } loaded)
        {
            return Result(null, [], []);
        }

        text = loaded;
        FileReading<Order> reading = DescriptionReader.OrderText(text.Text, text.Shown);
        source = reading.Source;
        findings.AddRange(reading.Diagnostics);
        if (reading.Value is not { } order || RootFolder.Find(full, statedRoot, findings) is not { } found)
        {
            return Result(null, [], []);
        }

        root = found;
        string? mix = order.MixFile is { } named ? Named(named, "mix") : null;
        List<string?> units = [.. order.Units.Select((line, index) => Named(line.File, $"units[{index}].file"))];
        List<string?> listed = [.. order.PrinterFiles.Select((file, index) => Named(file, $"printers[{index}]"))];
        if (findings.HasErrors)
        {
            return Result(order, [], []);
        }

        List<string?> own = listed.Count > 0 ? [.. units.Select(_ => (string?)null)] : [.. units.Select(unit => OwnPrinter(unit!))];
        List<string> printers = listed.Count > 0 ? listed.ConvertAll(file => file!)
            : [.. own.OfType<string>().DistinctBy(Path.GetFullPath, StringComparer.Ordinal)];
        if (printers.Count == 0)
        {
            findings.Add(DescriptionFindings.NoFileNamed.At(
                "no printer is named, neither by the order nor by its units", "add `printers:` with the paths of printer files", new KeyPath(DescriptionKind.Order, "")));
            return Result(order, [], []);
        }

        List<IReadOnlyList<ReadResult?>> jobs = [.. units.Select((unit, line) => (IReadOnlyList<ReadResult?>)
            [.. printers.Select(printer => listed.Count > 0 || own[line] is not { } only || Path.GetFullPath(only) == Path.GetFullPath(printer) ? Job(order, unit!, mix, printer) : null)])];
        return Result(order, printers, jobs);
    }

    private OrderReading Result(Order? order, IReadOnlyList<string> printers, IReadOnlyList<IReadOnlyList<ReadResult?>> jobs) => new()
    {
        Order = order,
        Hash = text?.Sha256 ?? "",
        Diagnostics = [.. findings.Items.Select(f => f.Location is null && f.Key is { Kind: DescriptionKind.Order } key ? f with { Location = source.Find(key.Path) } : f)
            .DistinctBy(f => (f.Code, f.Location, f.Message))],
        Source = source,
        PrinterPaths = printers,
        Jobs = jobs,
    };

    // The path to read it by, when it lies under the root and can be read.
    private string? Named(string reference, string key)
    {
        KeyPath by = new(DescriptionKind.Order, key);
        if (Path.IsPathRooted(reference))
        {
            findings.Add(FileFindings.OutsideRoot.At($"`{reference}` is an absolute path", "write the path relative to this file", by, source.Find(key)));
            return null;
        }

        string full = Path.GetFullPath(Path.Combine(Path.GetDirectoryName(text.FullPath)!, reference)), shown = ShownPath.Beside(text.Shown, reference);
        return FileLoader.Load(new FileRequest(full, shown, root, source.Find(key), by), findings) is null ? null : shown;
    }

    // What the unit's file names; its own faults are found when its job is read.
    private static string? OwnPrinter(string unit) => DescriptionReader.ReadUnit(unit).Value?.Printer is { } named && !Path.IsPathRooted(named) ? ShownPath.Beside(unit, named) : null;

    private ReadResult Job(Order order, string unit, string? mix, string printer)
    {
        ReadResult read = new JobReader(new ReadOptions { Mix = mix, Printer = printer, Root = root }).Read(unit);
        findings.AddRange(read.Diagnostics);
        return read.Job is { } job && order.Curing is { } curing ? read with { Job = job with { Tonight = new Tonight { CuringTemperature = curing } } } : read;
    }
}
