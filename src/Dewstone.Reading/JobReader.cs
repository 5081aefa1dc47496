using Dewstone.Model.Description;
using Dewstone.Model.Diagnostics;
using Dewstone.Model.Results;
using Dewstone.Reading.Files;

namespace Dewstone.Reading;

/// <summary>Reads one unit with all that goes with it, and decides who wins.</summary>
/// <param name="options">What the command line says.</param>
internal sealed class JobReader(ReadOptions options)
{
    private readonly DiagnosticBag findings = new();
    private readonly SourceMaps sources = new();
    private readonly List<InputFile> inputs = [];
    private bool rootIsMissing;

    /// <summary>Reads a unit's file and what goes with it.</summary>
    /// <param name="unitPath">Path, relative to the current folder.</param>
    /// <returns>The result.</returns>
    public ReadResult Read(string unitPath)
    {
        Opened<UnitFile>? unit = OpenNamed(unitPath, "unit", DescriptionKind.Unit, DescriptionReader.UnitText);
        Opened<TonightFile>? tonight = OpenNamed(options.Tonight, "tonight", DescriptionKind.Tonight, DescriptionReader.TonightText);
        Opened<DryMix>? mix = OpenNamed(options.Mix, "mix", DescriptionKind.Mix, DescriptionReader.MixText)
            ?? OpenReferenced(options.Mix is null, unit, unit?.Value?.Mix, "mix", DescriptionKind.Mix, DescriptionReader.MixText);
        bool tonightNamesPrinter = tonight?.Value?.Printer is not null;
        Opened<PrinterFile>? printer = OpenNamed(options.Printer, "printer", DescriptionKind.Printer, DescriptionReader.PrinterText)
            ?? OpenReferenced(options.Printer is null, tonight, tonight?.Value?.Printer, "printer", DescriptionKind.Printer,
                DescriptionReader.PrinterText)
            ?? OpenReferenced(options.Printer is null && !tonightNamesPrinter, unit, unit?.Value?.Printer, "printer",
                DescriptionKind.Printer, DescriptionReader.PrinterText);
        Opened<NeedleTable>? needles = OpenNeedles(tonight, printer);
        Opened<Site>? site = OpenNamed(options.Site, "site", DescriptionKind.Site, DescriptionReader.SiteText)
            ?? OpenReferenced(options.Site is null, unit, unit?.Value?.Site, "site", DescriptionKind.Site, DescriptionReader.SiteText);

        if (unit?.Value is not null)
        {
            NeedsFile(options.Mix ?? unit.Value.Mix, "mix");
            bool printerMayBeTonights = options.Tonight is not null && tonight?.Value is null;
            NeedsFile(options.Printer ?? tonight?.Value?.Printer ?? unit.Value.Printer ?? (printerMayBeTonights ? "" : null), "printer");
        }

        CheckPores(mix?.Value, tonight?.Value?.Tonight);
        JobDescription? job = findings.HasErrors ? null : new JobDescription
        {
            Unit = unit!.Value!.Unit,
            Mix = mix!.Value!,
            Printer = printer!.Value!.Printer,
            Needles = needles?.Value,
            Site = site?.Value,
            Tonight = tonight?.Value?.Tonight,
        };
        return new ReadResult(job, [.. findings.Items.Select(sources.Place)], sources, inputs);
    }

    /// <summary>Reads the mix and the printer of the options, with what goes with them, and no unit.</summary>
    /// <returns>The result.</returns>
    public MixOnPrinterReading ReadMixOnPrinter()
    {
        Opened<TonightFile>? tonight = OpenNamed(options.Tonight, "tonight", DescriptionKind.Tonight, DescriptionReader.TonightText);
        Opened<DryMix>? mix = OpenNamed(options.Mix, "mix", DescriptionKind.Mix, DescriptionReader.MixText);
        Opened<PrinterFile>? printer = OpenNamed(options.Printer, "printer", DescriptionKind.Printer, DescriptionReader.PrinterText);
        Opened<NeedleTable>? needles = OpenNeedles(tonight, printer);
        CheckPores(mix?.Value, tonight?.Value?.Tonight);
        MixOnPrinter? value = findings.HasErrors || mix?.Value is null || printer?.Value is null
            ? null : new MixOnPrinter(mix.Value, printer.Value.Printer, needles?.Value, tonight?.Value?.Tonight);
        return new MixOnPrinterReading(value, [.. findings.Items.Select(sources.Place)], sources);
    }

    /// <summary>Reads one file by itself.</summary>
    /// <typeparam name="T">What it describes.</typeparam>
    /// <param name="path">Path, relative to the current folder.</param>
    /// <param name="read">Reads its text.</param>
    /// <returns>The reading.</returns>
    public static FileReading<T> ReadFile<T>(string path, Func<string, string, FileReading<T>> read)
        where T : class
    {
        DiagnosticBag refusals = new();
        if (!IsPath(path, refusals))
        {
            return new FileReading<T>(null, refusals.Items, new SourceMap(path));
        }

        return FileLoader.Load(new FileRequest(Path.GetFullPath(path), path, null, null, null), refusals) is { } text
            ? read(text.Text, text.Shown)
            : new FileReading<T>(null, refusals.Items, new SourceMap(path));
    }

    private Opened<NeedleTable>? OpenNeedles(Opened<TonightFile>? tonight, Opened<PrinterFile>? printer)
    {
        FileReading<NeedleTable> Read(string text, string file) => DescriptionReader.NeedlesText(text, file, printer?.Value?.Printer.Head);
        bool tonightNames = tonight?.Value?.Needles is not null;
        return OpenNamed(options.Needles, "needles", null, Read)
            ?? OpenReferenced(options.Needles is null, tonight, tonight?.Value?.Needles, "needles", null, Read)
            ?? OpenReferenced(options.Needles is null && !tonightNames, printer, printer?.Value?.Needles, "needles", null, Read);
    }

    /// <summary>Whether a word can be a path at all.</summary>
    /// <param name="path">The word.</param>
    /// <param name="findings">Takes DW8101 when it cannot.</param>
    /// <returns>False with a finding.</returns>
    internal static bool IsPath(string path, DiagnosticBag findings)
    {
        bool isPath = path.Length > 0 && !path.Contains('\0');
        if (!isPath)
        {
            findings.Add(FileFindings.NotFound.At($"`{path.Replace('\0', ' ')}` is no path of a file", "name a file"));
        }

        return isPath;
    }

    // A file named on the command line; its own references are bound to the root found for it.
    private Opened<T>? OpenNamed<T>(string? path, string role, DescriptionKind? kind, Func<string, string, FileReading<T>> read)
        where T : class
    {
        if (path is null)
        {
            return null;
        }

        if (!IsPath(path, findings))
        {
            return null;
        }

        string full = Path.GetFullPath(path);
        return Open(new FileRequest(full, path, null, null, null), role, kind, read, () => RootOf(full));
    }

    // A root that is stated and does not exist is a single fault, however many files are named.
    private string? RootOf(string fullPath)
    {
        if (rootIsMissing)
        {
            return null;
        }

        string? root = RootFolder.Find(fullPath, options.Root, findings);
        rootIsMissing = root is null;
        return root;
    }

    // A file that another description names.
    private Opened<T>? OpenReferenced<TBy, T>(
        bool wanted, Opened<TBy>? by, string? reference, string role, DescriptionKind? kind, Func<string, string, FileReading<T>> read)
        where TBy : class
        where T : class
    {
        if (!wanted || by is null || reference is null || by.Root is null)
        {
            return null;
        }

        KeyPath key = new(by.Kind, role);
        string shown = ShownPath.Beside(by.Text.Shown, reference);
        if (Path.IsPathRooted(reference))
        {
            findings.Add(FileFindings.OutsideRoot.At($"`{reference}` is an absolute path", "write the path relative to this file", key,
                by.Source.Find(role)));
            return null;
        }

        string full = Path.GetFullPath(Path.Combine(Path.GetDirectoryName(by.Text.FullPath)!, reference));
        return Open(new FileRequest(full, shown, by.Root, by.Source.Find(role), key), role, kind, read, () => by.Root);
    }

    private Opened<T>? Open<T>(FileRequest request, string role, DescriptionKind? kind, Func<string, string, FileReading<T>> read,
        Func<string?> root)
        where T : class
    {
        if (FileLoader.Load(request, findings) is not { } text)
        {
            return null;
        }

        inputs.Add(new InputFile(role, Path.GetFileName(text.FullPath), text.Sha256));
        string? rootFolder = root();
        if (rootFolder is not null && LinkResolver.Resolve(text.FullPath) is { } real && LinkResolver.LiesUnder(real, rootFolder))
        {
            sources.SetBelowRoot(text.Shown, Path.GetRelativePath(rootFolder, real).Replace('\\', '/'));
        }

        FileReading<T> reading = read(text.Text, text.Shown);
        findings.AddRange(reading.Diagnostics);
        if (kind is { } known)
        {
            sources.Set(known, reading.Source);
        }

        return new Opened<T>(reading.Value, text, reading.Source, kind ?? DescriptionKind.Printer, rootFolder);
    }

    private void NeedsFile(string? named, string role)
    {
        if (named is null)
        {
            findings.Add(DescriptionFindings.NoFileNamed.At($"no {role} is named",
                $"add `{role}:` with the path of a {role} file, or name one with --{role}", new KeyPath(DescriptionKind.Unit, "")));
        }
    }

    // The mix's own loose density was held against its grains when the mix was read; tonight's can only be held here.
    private void CheckPores(DryMix? mix, Tonight? tonight)
    {
        if (mix is not null && tonight?.LooseDensity is { } loose && mix.Porosity(loose) <= mix.Wetting.Residual)
        {
            findings.Add(DescriptionFindings.NoPoreSpace.At(
                $"tonight's loose density of {loose.KilogramsPerCubicMetre} kg/m3 leaves no pores for water in `{mix.Name}`",
                "check tonight's loose density, or whether the right mix is named", new KeyPath(DescriptionKind.Tonight, "loose_density")));
        }
    }

    /// <summary>A file that could be opened.</summary>
    /// <param name="Value">What it describes; null when it is at fault.</param>
    /// <param name="Text">Its text.</param>
    /// <param name="Source">Where its values stand.</param>
    /// <param name="Kind">Its kind.</param>
    /// <param name="Root">Folder its references must stay under; null when that is at fault.</param>
    private sealed record Opened<T>(T? Value, SourceText Text, SourceMap Source, DescriptionKind Kind, string? Root)
        where T : class;
}
