using System.Security.Cryptography;
using Dewstone.Jobs.Emission;
using Dewstone.Model.Diagnostics;
using Dewstone.Model.Results;
using Dewstone.Orders.Batches;
using Dewstone.Orders.SitePlans;
using Dewstone.Reading;
using Dewstone.Reading.Files;

namespace Dewstone.Orders.Gathering;

/// <summary>Gathers an order: writes nothing until everything is there, then the lists, the overview and last of all the manifest. Safe to run again.</summary>
/// <param name="order">The order as read, without error.</param>
/// <param name="folder">Its folder.</param>
/// <param name="toolVersion">Version of the tool.</param>
public sealed class OrderGatherer(OrderReading order, OrderFolder folder, string toolVersion)
{
    /// <summary>Gathers.</summary>
    /// <param name="progress">Told how far it is.</param>
    /// <param name="cancellation">Looked at before anything is written.</param>
    /// <returns>What came of it.</returns>
    /// <exception cref="IOException">The disk's fault; each file stands whole or not at all.</exception>
    /// <exception cref="UnauthorizedAccessException">No permission.</exception>
    /// <exception cref="OperationCanceledException">Cancelled.</exception>
    public GatherResult Gather(IProgress<Progress>? progress, CancellationToken cancellation)
    {
        progress?.Report(new Progress("reading", 0.1));
        FolderContents contents = new FolderInspection(order, folder, toolVersion).Read();
        if (!contents.Complete)
        {
            return new GatherResult(contents, null, contents.Findings);
        }

        GatheredOrder gathered = GatheredOrder.Of(order.Order!, contents, toolVersion);
        Diagnostic[] findings = [.. contents.Findings, .. gathered.Findings.Select(order.Place)];
        cancellation.ThrowIfCancellationRequested();
        progress?.Report(new Progress("files", 0.9));
        EmittedFile[] files = [.. Files(gathered)];
        EmittedFile manifest = OrderManifest.Emit(gathered, contents.Pin!, [.. Standing(gathered), .. files.Select(file => (file.RelativePath, Hash(file.Bytes.Span)))]);
        Withdraw(manifest);
        foreach (EmittedFile file in files.Append(manifest))
        {
            SharedFile.Write(Path.Combine(folder.Root, file.RelativePath), file.Bytes.Span);
        }

        return new GatherResult(contents, gathered, findings);
    }

    private List<EmittedFile> Files(GatheredOrder gathered)
    {
        List<EmittedFile> files =
        [
            NightsTable.Emit(gathered.Nights),
            OrderLabels.Emit(gathered, gathered.Bins.Select(bin => new ReadOnlyMemory<byte>(WholeFile.Read(Path.Combine(folder.Bins, bin.Record.Folder, OrderLabels.Path))))),
        ];
        if (gathered.Loads is { } loads)
        {
            files.Add(LoadTable.Emit(loads, gathered.Standing));
        }

        EmittedFile? drawing = null;
        if (gathered.Standing.Count > 0)
        {
            files.Add(DeploymentTable.Emit(gathered.Standing, gathered.Loads));
            files.Add(SiteMap.Emit(gathered.Order.SitePlan!, gathered.Standing));
            files.Add(drawing = SitePlanDrawing.Emit(gathered.Order.Name, gathered.Order.SitePlan!, gathered.Standing));
        }

        files.Add(OverviewPage.Emit(gathered, SharedFile.TryRead(Path.Combine(folder.Root, OverviewPage.PlanDrawing)) is { } plan ? new ReadOnlyMemory<byte>(plan) : null, drawing?.Bytes));
        return files;
    }

    // What stands already: the plan and what it was written out as, each unit's record, each bin's record and the manifest of its job.
    private IEnumerable<(string Path, string Sha256)> Standing(GatheredOrder gathered) =>
    [
        ("order.json", HashOf(folder.Pin)),
        ("plan.json", HashOf(folder.Plan)),
        .. PlanFilesBeside(gathered).Select(path => (path, HashOf(Path.Combine(folder.Root, path)))),
        .. gathered.Units.Select(unit => ($"units/{unit.Ordered.Mark}.json", HashOf(folder.Unit(unit.Ordered.Mark)))),
        .. gathered.Bins.Select(bin => ($"bins/{bin.Planned.Name}.json", HashOf(folder.Bin(bin.Planned.Name)))),
        .. gathered.Bins.Select(bin => ($"bins/{bin.Record.Folder}/{ManifestEmitter.Path}", bin.Record.ManifestSha256)),
    ];

    // What the plan was written out as; a plan laid by hand has none of it.
    private IEnumerable<string> PlanFilesBeside(GatheredOrder gathered) =>
        ((string[])["plan.csv", OverviewPage.PlanDrawing, "materials.csv", "crew.ics", .. gathered.Bins.Select(bin => $"layouts/{bin.Planned.Name}.svg")])
            .Where(path => File.Exists(Path.Combine(folder.Root, path)));

    // A manifest never stands beside files that are not its own: one of an earlier gathering goes before the first of its files is replaced.
    private void Withdraw(EmittedFile manifest)
    {
        string path = Path.Combine(folder.Root, manifest.RelativePath);
        if (SharedFile.TryRead(path) is { } standing && !manifest.Bytes.Span.SequenceEqual(standing))
        {
            File.Delete(path);
        }
    }

    private static string HashOf(string file) => Hash(WholeFile.Read(file));

    private static string Hash(ReadOnlySpan<byte> bytes) => Convert.ToHexStringLower(SHA256.HashData(bytes));
}
