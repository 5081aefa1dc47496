using System.Security.Cryptography;
using Dewstone.Jobs.Emission;
using Dewstone.Model.Description;
using Dewstone.Model.Diagnostics;
using Dewstone.Orders.Batches;
using Dewstone.Orders.Listing;
using Dewstone.Orders.Plans;
using Dewstone.Orders.SitePlans;
using Dewstone.Reading;
using Dewstone.Reading.Job;

namespace Dewstone.Orders.Gathering;

/// <summary>
/// Reads the folder of an order and writes nothing: whether every unit and bin of the plan has its result, whether each file of each bin's job has the hash
/// it was written with, and whether all of it was made from this order. Judged from the files alone, whatever a batch queue thinks of its tasks.
/// </summary>
/// <param name="order">The order as read, without error.</param>
/// <param name="folder">Its folder.</param>
public sealed class FolderInspection(OrderReading order, OrderFolder folder)
{
    private const int MostNamed = 12;

    private readonly DiagnosticBag findings = new();

    /// <summary>Reads the folder.</summary>
    /// <param name="cancellation">Looked at before each bin.</param>
    /// <returns>What it holds.</returns>
    /// <exception cref="IOException">A file stands but cannot be read.</exception>
    /// <exception cref="OperationCanceledException">Cancelled.</exception>
    public FolderContents Read(CancellationToken cancellation)
    {
        OrderPin? pin = Pin();
        OrderPlan? plan = Plan();
        List<GatheredUnit> ready = [];
        List<string> missing = [], failed = [];
        foreach (OrderedUnit unit in OrderListing.Of(order.Order!))
        {
            if (RecordJson.ReadUnit(SharedFile.TryRead(folder.Unit(unit.Mark))) is not { } record || record.Mark != unit.Mark)
            {
                missing.Add(unit.Mark);
            }
            else if (record.State == UnitState.Failed || record.Figures is null)
            {
                failed.Add(unit.Mark);
            }
            else
            {
                ready.Add(new GatheredUnit(unit, record, AtSea(unit, record)));
            }
        }

        List<GatheredBin> bins = [];
        List<string> missingBins = [], failedBins = [];
        foreach (PlannedBin planned in plan?.Bins ?? [])
        {
            cancellation.ThrowIfCancellationRequested();
            Bin(planned, bins, missingBins, failedBins);
        }

        IReadOnlyList<MissingTasks> tasks = missing.Count + missingBins.Count == 0 ? [] : Tasks([.. missingBins]);
        Tell(missing, missingBins, failed, failedBins, tasks);
        return new FolderContents
        {
            Pin = pin,
            Plan = plan,
            Units = ready,
            Bins = bins,
            MissingUnits = missing,
            MissingBins = missingBins,
            FailedUnits = failed,
            FailedBins = failedBins,
            Tasks = tasks,
            Findings = findings.Items,
        };
    }

    private OrderPin? Pin()
    {
        SourceLocation whole = new(folder.Pin, 0, 0);
        if (RecordJson.ReadPin(SharedFile.TryRead(folder.Pin)) is not { } pin)
        {
            findings.Add(YardFindings.NotComplete.At($"`{folder.Pin}` is missing or cannot be read", "run dewstone order compile", location: whole));
            return null;
        }

        if (pin.OrderSha256 != order.Hash)
        {
            findings.Add(YardFindings.OtherOrder.At(
                $"`{folder.Pin}` was begun with another state of the order's file", "compile the order as it stands now, or gather with the file it was begun with", location: whole));
        }

        return pin;
    }

    private OrderPlan? Plan()
    {
        if (SharedFile.TryRead(folder.Plan) is not { } bytes)
        {
            findings.Add(YardFindings.NotComplete.At($"`{folder.Plan}` is missing", "run dewstone order compile", location: new SourceLocation(folder.Plan, 0, 0)));
            return null;
        }

        (OrderPlan? plan, Diagnostic? fault) = PlanJson.Read(bytes, folder.Plan, order.Hash);
        if (fault is not null)
        {
            findings.Add(fault);
        }

        return plan;
    }

    private void Bin(PlannedBin planned, List<GatheredBin> bins, List<string> missing, List<string> failed)
    {
        if (RecordJson.ReadBin(SharedFile.TryRead(folder.Bin(planned.Name))) is not { } record || record.Name != planned.Name)
        {
            missing.Add(planned.Name);
            return;
        }

        if (record.ExitCode != 0 || record.Folder != Path.GetFileName(folder.BinJob(planned.Name, held: false)))
        {
            failed.Add(planned.Name);
            return;
        }

        string job = Path.Combine(folder.Bins, record.Folder), shown = Path.Combine(job, ManifestEmitter.Path);
        byte[]? bytes = SharedFile.TryRead(shown);
        if (bytes is null || Hash(bytes) != record.ManifestSha256 || !ManifestReader.TryRead(bytes, out Manifest? manifest, out _))
        {
            Changed(missing, planned.Name, shown, "is missing or is not the one that was written");
            return;
        }

        foreach ((string path, string hash) in manifest!.Files)
        {
            string file = Path.Combine(job, path);
            if (HashOf(file) != hash)
            {
                Changed(missing, planned.Name, file, "is missing or is not the one that was written: its hash differs");
                return;
            }
        }

        if (BinEstimateReader.Read(SharedFile.TryRead(Path.Combine(job, EstimateEmitter.Path)) ?? [], planned.Units.Count) is not { } totals)
        {
            Changed(missing, planned.Name, Path.Combine(job, EstimateEmitter.Path), "cannot be read");
            return;
        }

        bins.Add(new GatheredBin(planned, record, manifest.JobFingerprint, totals));
    }

    private void Changed(List<string> missing, string bin, string file, string how)
    {
        missing.Add(bin);
        findings.Add(YardFindings.ResultChanged.At($"`{file}` {how}", $"remove the folder of {bin} and run dewstone order compile --continue", location: new SourceLocation(file, 0, 0)));
    }

    // A task is to run again when it left no report, or when a bin it reported does not stand. Without any report nobody has said how many tasks there are.
    private MissingTasks[] Tasks(HashSet<string> missingBins)
    {
        string[] files = Directory.Exists(folder.Tasks) ? [.. Directory.EnumerateFiles(folder.Tasks, "task-*.json").Order(StringComparer.Ordinal)] : [];
        TaskReport[] reports = [.. files.Select(file => RecordJson.ReadTask(SharedFile.TryRead(file))).OfType<TaskReport>().Where(report => report.OrderSha256 == order.Hash)];
        return
        [
            .. reports.GroupBy(report => report.Tasks).OrderBy(split => split.Key).Select(split => new MissingTasks(
                split.Key, TaskNumbers.Text(Enumerable.Range(0, split.Key).Except(split.Where(report => !report.Bins.Any(missingBins.Contains)).Select(report => report.Task))))),
        ];
    }

    private void Tell(IReadOnlyList<string> units, IReadOnlyList<string> bins, IReadOnlyList<string> failedUnits, IReadOnlyList<string> failedBins, IReadOnlyList<MissingTasks> tasks)
    {
        string remedy = tasks.Count == 0 ? "run dewstone order compile --continue" : $"run again {string.Join(", or ", tasks.Select(split => $"tasks {split.Numbers} of {split.Of}"))}";
        if (units.Count > 0)
        {
            findings.Add(YardFindings.NotComplete.At($"{Counted(units.Count, "unit has", "units have")} no record yet: {Named(units)}", remedy));
        }

        if (bins.Count > 0)
        {
            findings.Add(YardFindings.NotComplete.At($"{Counted(bins.Count, "bin has", "bins have")} no job that stands: {Named(bins)}", remedy));
        }

        if (failedUnits.Count > 0)
        {
            findings.Add(YardFindings.HasFailed.At($"{Counted(failedUnits.Count, "unit", "units")} failed: {Named(failedUnits)}", $"look at the findings in {folder.Units} and mend their descriptions"));
        }

        if (failedBins.Count > 0)
        {
            findings.Add(YardFindings.HasFailed.At($"{Counted(failedBins.Count, "bin", "bins")} failed or held: {Named(failedBins)}", $"look at the findings in {folder.Bins}"));
        }
    }

    private SeaUnit AtSea(OrderedUnit unit, UnitRecord record)
    {
        JobDescription? described = order.Jobs[unit.Line].Select(read => read?.Job).FirstOrDefault(job => job is not null);
        UnitFigures figures = record.Figures!;
        return new SeaUnit
        {
            Mark = unit.Mark,
            Name = record.Name,
            Size = figures.Box,
            LiftKilograms = figures.LiftKilograms,
            SubmergedKilograms = figures.SubmergedKilograms,
            Lifting = described?.Unit.Lifting,
            Site = described?.Site,
        };
    }

    private static string Counted(int count, string one, string several) => $"{count} {(count == 1 ? one : several)}";

    private static string Named(IReadOnlyList<string> names) =>
        string.Join(", ", names.Take(MostNamed)) + (names.Count > MostNamed ? $" and {names.Count - MostNamed} more" : "");

    private static string Hash(ReadOnlySpan<byte> bytes) => Convert.ToHexStringLower(SHA256.HashData(bytes));

    private static string HashOf(string file)
    {
        try
        {
            using FileStream stream = File.OpenRead(file);
            return Convert.ToHexStringLower(SHA256.HashData(stream));
        }
        catch (Exception fault) when (fault is FileNotFoundException or DirectoryNotFoundException)
        {
            return "";
        }
    }
}
