using System.Security.Cryptography;
using Dewstone.Jobs.Bins;
using Dewstone.Jobs.Emission;
using Dewstone.Jobs.Folders;
using Dewstone.Model.Diagnostics;
using Dewstone.Model.Results;
using Dewstone.Orders.Plans;
using Dewstone.Reading;

namespace Dewstone.Orders.Batches;

/// <summary>Makes one bin: solves its units, records them, stands them in the bin, writes its job, and at last its record, which says that all of it is done.</summary>
/// <param name="question">The order.</param>
/// <param name="work">What it is made from.</param>
/// <param name="store">Solved units.</param>
/// <param name="threads">Threads for one bin; no byte depends on them.</param>
internal sealed class BinMaker(BatchQuestion question, PlannedWork work, UnitStore store, Parallelism threads)
{
    private readonly UnitDraws units = new(work, store);

    /// <summary>Makes a bin.</summary>
    /// <param name="bin">The bin.</param>
    /// <param name="unitDone">Called after each unit.</param>
    /// <param name="cancellation">Looked at within.</param>
    /// <returns>What became of it.</returns>
    /// <exception cref="IOException">The disk's fault.</exception>
    /// <exception cref="OperationCanceledException">Cancelled; what was finished stands.</exception>
    public BinOutcome Make(PlannedBin bin, Action unitDone, CancellationToken cancellation)
    {
        List<SolvedDraw> draws = [];
        foreach (PlannedUnit planned in bin.Units)
        {
            SolvedDraw draw = units.Take(bin, work.Unit(planned.Mark), cancellation);
            SharedFile.Write(question.Folder.Unit(planned.Mark), RecordJson.Of(draw.Record, work.NameOfFile));
            draws.Add(draw);
            unitDone();
        }

        PlacedUnit[] placed =
        [
            .. bin.Units.Zip(draws).Where(pair => pair.Second.Solved is not null)
                .Select(pair => new PlacedUnit(pair.First.Mark, pair.Second.Solved!, pair.First.QuarterTurns, pair.First.Column, pair.First.Row)),
        ];
        string[] leftOut = [.. draws.Where(draw => draw.Solved is null).Select(draw => draw.Record.Mark)];
        BinResult? result = placed.Length == 0 ? null : BinCompiler.Compile(Ask(bin, placed), threads, null, cancellation);
        (JobFolderOutcome written, string manifest) = result?.Job is null ? (new JobFolderOutcome(JobFolderStatus.Written, "", []), "") : Write(bin, result, cancellation);
        UnitRecord[] records = [.. draws.Select(draw => draw.Record)];
        if (written.Status != JobFolderStatus.Written)
        {
            return new BinOutcome(bin.Name, null, records, Kept: false, written.Status, OurFault: false, written.Findings);
        }

        BinRecord record = new()
        {
            Name = bin.Name,
            Key = work.Key(bin),
            Units = [.. placed.Select(unit => unit.Mark)],
            LeftOut = leftOut,
            Folder = Path.GetFileName(written.Path),
            ManifestSha256 = manifest,
            Findings = [.. result?.Findings ?? [], .. leftOut.Length == 0 ? [] : (Diagnostic[])[Incomplete(bin, leftOut, placed.Length)]],
            ExitCode = CodeOf(result, records),
        };
        SharedFile.Write(question.Folder.Bin(bin.Name), RecordJson.Of(record, work.NameOfFile));
        return new BinOutcome(bin.Name, record, records, Kept: false, JobFolderStatus.Written, OurFault: false, written.Findings);
    }

    private BinQuestion Ask(PlannedBin bin, IReadOnlyList<PlacedUnit> placed)
    {
        IEnumerable<ReadResult> reads = bin.Units.Select(unit => work.Read(bin, work.Unit(unit.Mark)));
        return new BinQuestion
        {
            Name = bin.Name,
            Conditions = reads.First().Job!,
            Units = placed,
            Gap = work.Order.Gap ?? default,
            SetBeforeDig = work.Order.Bins?.SetBeforeDig,
            Inputs = [.. reads.SelectMany(read => read.Inputs).Distinct().OrderBy(input => input.Role, StringComparer.Ordinal).ThenBy(input => input.FileName, StringComparer.Ordinal)],
            ToolVersion = question.ToolVersion,
        };
    }

    private (JobFolderOutcome Written, string Manifest) Write(PlannedBin bin, BinResult result, CancellationToken cancellation)
    {
        IReadOnlyList<EmittedFile> files = BinFiles.Of(result, work.NameOfFile, threads, cancellation);
        JobFolderOutcome written = JobFolderWriter.Write(
            new JobFolderOrder { OutputFolder = question.Folder.Bins, Name = bin.Name, Held = result.Job!.Held, Files = files }, cancellation);
        return (written, Convert.ToHexStringLower(SHA256.HashData(files.Single(file => file.RelativePath == ManifestEmitter.Path).Bytes.Span)));
    }

    private static Diagnostic Incomplete(PlannedBin bin, IReadOnlyList<string> leftOut, int left) => BatchFindings.BinIncomplete.At(
        $"{bin.Name} is made without {string.Join(", ", leftOut)}{(left == 0 ? ", and so not at all" : "")}", "mend the unit and compile the order into a new folder");

    private static int CodeOf(BinResult? result, IReadOnlyList<UnitRecord> units)
    {
        int bin = result switch { null => 0, { Job: null } => 2, { Job.Held: true } => 1, _ => 0 };
        int[] codes = [bin, .. units.Select(unit => unit.ExitCode)];
        return codes.Contains(2) ? 2 : codes.Max();
    }
}
