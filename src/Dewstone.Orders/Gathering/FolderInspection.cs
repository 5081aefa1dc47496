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
/// Reads the folder of an order: whether every unit and bin of the plan has its result, made from this order, each file with the hash it was written with.
/// Judged from the files alone, whatever a batch queue thinks of its tasks; no result is touched.
/// </summary>
/// <param name="order">The order as read, without error.</param>
/// <param name="folder">Its folder.</param>
/// <param name="toolVersion">Version of the tool.</param>
public sealed class FolderInspection(OrderReading order, OrderFolder folder, string toolVersion)
{
    private const int MostNamed = 12;

    private readonly DiagnosticBag findings = new();

    /// <summary>Reads the folder.</summary>
    /// <returns>What it holds.</returns>
    /// <exception cref="IOException">A file stands but cannot be read.</exception>
    public FolderContents Read()
    {
        OrderPin? pin = Pin();
        OrderPlan? plan = Plan();
        if (pin is null || plan is null)
        {
            return new FolderContents { Pin = pin, Plan = plan, Units = [], Bins = [], Tasks = [], Findings = findings.Items };
        }

        OrderState state = OrderState.Read(order, plan, folder, toolVersion);
        Dictionary<string, UnitStatus> byMark = state.Units.ToDictionary(unit => unit.Mark, StringComparer.Ordinal);
        MissingTasks[] tasks = [.. state.TaskCounts.Select(count => new MissingTasks(count, TaskNumbers.Text(state.MissingTasks(count)))).Where(missing => missing.Numbers.Length > 0)];
        GatheredBin?[] bins = [.. state.Bins.Where(bin => bin.State == WorkState.Done).Select(Bin)];
        Tell(state, tasks);
        return new FolderContents
        {
            Pin = pin,
            Plan = plan,
            Units =
            [
                .. OrderListing.Of(order.Order!).Where(unit => byMark.TryGetValue(unit.Mark, out UnitStatus? at) && at is { State: WorkState.Done, Record.Figures: not null })
                    .Select(unit => new GatheredUnit(unit, byMark[unit.Mark].Record!, AtSea(unit, byMark[unit.Mark].Record!))),
            ],
            Bins = [.. bins.OfType<GatheredBin>()],
            State = state,
            Tasks = tasks,
            Findings = findings.Items,
        };
    }

    private OrderPin? Pin()
    {
        if (RecordJson.ReadPin(SharedFile.TryRead(folder.Pin)) is not { } pin)
        {
            findings.Add(YardFindings.NotComplete.At($"`{folder.Pin}` is missing or cannot be read", "run dewstone order compile", location: new SourceLocation(folder.Pin, 0, 0)));
            return null;
        }

        if (OrderBegin.Hold(OrderBegin.PinOf(order, pin.Cells, toolVersion), folder) is { } changed)
        {
            findings.Add(changed);
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
        if ((fault ?? (plan is null ? null : PlanFit.Check(order, plan))) is not { } unfit)
        {
            return plan;
        }

        findings.Add(unfit);
        return null;
    }

    // The folder is whole, as its state says; what is not of this form was written by another release.
    private GatheredBin? Bin(BinStatus bin)
    {
        string job = Path.Combine(folder.Bins, bin.Record!.Folder);
        if (ManifestReader.TryRead(SharedFile.TryRead(Path.Combine(job, ManifestEmitter.Path)) ?? [], out Manifest? manifest, out _)
            && BinEstimateReader.Read(SharedFile.TryRead(Path.Combine(job, EstimateEmitter.Path)) ?? [], bin.Planned.Units.Count) is { } totals)
        {
            return new GatheredBin(bin.Planned, bin.Record, manifest!.JobFingerprint, totals);
        }

        findings.Add(YardFindings.ResultChanged.At($"the job of {bin.Planned.Name} has no estimate that can be read", $"remove `{job}` and run dewstone order compile --continue", location: new SourceLocation(job, 0, 0)));
        return null;
    }

    private void Tell(OrderState state, MissingTasks[] tasks)
    {
        string remedy = tasks.Length == 0 ? "run dewstone order compile --continue" : $"run again {string.Join(", or ", tasks.Select(split => $"tasks {split.Numbers} of {split.Of}"))}";
        Say(YardFindings.NotComplete, Marks(WorkState.Missing), "unit has no record yet", "units have no record yet", remedy);
        Say(YardFindings.NotComplete, Names(bin => bin is { State: WorkState.Missing, Record: null }), "bin has no job yet", "bins have no job yet", remedy);
        Say(YardFindings.ResultChanged, Names(bin => bin is { State: WorkState.Missing, Record: not null }), "bin is not as it was written", "bins are not as they were written", remedy);
        Say(YardFindings.OtherOrder, Names(bin => bin.State == WorkState.Stale), "bin was made from another state of the order", "bins were made from another state of the order", remedy);
        Say(YardFindings.HasFailed, Marks(WorkState.Failed), "unit failed", "units failed", $"look at their records in {folder.Units} and mend their descriptions");
        Say(YardFindings.HasFailed, Names(bin => bin.State == WorkState.Failed), "bin failed or is held", "bins failed or are held", $"look at their records in {folder.Bins}");

        string[] Marks(WorkState asked) => [.. state.Units.Where(unit => unit.State == asked).Select(unit => unit.Mark)];
        string[] Names(Func<BinStatus, bool> asked) => [.. state.Bins.Where(asked).Select(bin => bin.Planned.Name)];
    }

    private void Say(FindingKind kind, string[] names, string one, string several, string remedy)
    {
        if (names.Length > 0)
        {
            string more = names.Length > MostNamed ? $" and {names.Length - MostNamed} more" : "";
            findings.Add(kind.At($"{names.Length} {(names.Length == 1 ? one : several)}: {string.Join(", ", names.Take(MostNamed))}{more}", remedy));
        }
    }

    private SeaUnit AtSea(OrderedUnit unit, UnitRecord record)
    {
        JobDescription described = order.Jobs[unit.Line].Select(read => read?.Job).OfType<JobDescription>().First();
        UnitFigures figures = record.Figures!;
        return new SeaUnit
        {
            Mark = unit.Mark,
            Name = record.Name,
            Size = figures.Box,
            LiftKilograms = figures.LiftKilograms,
            SubmergedKilograms = figures.SubmergedKilograms,
            Lifting = described.Unit.Lifting,
            Site = described.Site,
        };
    }
}
