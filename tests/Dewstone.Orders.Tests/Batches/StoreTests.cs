using System.IO.Compression;
using System.Security.Cryptography;
using Dewstone.Jobs.Bins;
using Dewstone.Model.Description;
using Dewstone.Model.Diagnostics;
using Dewstone.Model.Quantities;
using Dewstone.Model.Results;
using Dewstone.Orders.Batches;
using Dewstone.Reading;
using Dewstone.Tests;

namespace Dewstone.Orders.Tests.Batches;

public sealed class StoreTests : IDisposable
{
    private static readonly PlacementWish Wish = new() { QuarterTurns = 0, Shift = default(Point3), ShiftedLayers = false };
    private readonly TinyOrder order = new(3);

    public void Dispose() => order.Dispose();

    [Fact]
    public void An_entry_is_read_back_to_the_last_bit_and_any_damage_is_seen()
    {
        UnitQuestion question = Ask();
        string key = UnitKey.Of(question);
        UnitStore store = new(new OrderFolder(order.In("o")), new Parallelism(2));

        StoredUnit solved = store.Answer(question, key, CancellationToken.None);

        SolvedUnit unit = solved.Solved!;
        Assert.True(unit.CentiMillilitres.Sum() > 0);
        byte[] bytes = File.ReadAllBytes(new OrderFolder(order.In("o")).Entry(key));
        StoredUnit read = StoredUnitBytes.Read(bytes, key, question.Job.Unit)!.In(question.Read);
        Assert.Equal(unit.CentiMillilitres, read.Solved!.CentiMillilitres);
        Assert.True(unit.Hardened.Packed.Span.SequenceEqual(read.Solved.Hardened.Packed.Span));
        Assert.Equal((unit.Lattice, unit.Cells, unit.Placement, unit.Solid, unit.Design), (read.Solved.Lattice, read.Solved.Cells, read.Solved.Placement, read.Solved.Solid, read.Solved.Design));
        Assert.Equal(unit.Estimate with { WaterByLayerCubicMetres = [], AdditiveKilograms = [], SecondsByAction = [] }, read.Solved.Estimate with { WaterByLayerCubicMetres = [], AdditiveKilograms = [], SecondsByAction = [] });
        Assert.Equal(unit.Estimate.WaterByLayerCubicMetres, read.Solved.Estimate.WaterByLayerCubicMetres);
        Assert.Equal(unit.Estimate.SecondsByAction, read.Solved.Estimate.SecondsByAction);
        Assert.Equal((unit.DigOutDays, unit.LiftDays, unit.MeanPascals), (read.Solved.DigOutDays, read.Solved.LiftDays, read.Solved.MeanPascals));
        Assert.Equal(unit.Requirements, read.Solved.Requirements);
        Assert.Equal(solved.Findings.Select(f => (f.Code, f.Message, f.Location)), read.Findings.Select(f => (f.Code, f.Message, f.Location)));
        Assert.Equal(bytes, StoredUnitBytes.Write(key, StoredUnitBytes.Read(bytes, key, question.Job.Unit)!));

        for (int at = 0; at < bytes.Length; at += 97)
        {
            byte[] damaged = [.. bytes];
            damaged[at] ^= 4;
            Assert.Null(StoredUnitBytes.Read(damaged, key, question.Job.Unit));
            Assert.Null(StoredUnitBytes.Read(bytes[..at], key, question.Job.Unit));
        }
    }

    [Fact]
    public void An_entry_made_to_unpack_without_end_is_refused()
    {
        // 66 kB of sound deflate with the right key and hash, and 67 MB of nothing in it.
        string key = new('a', 64);
        using MemoryStream body = new();
        using (ZLibStream packed = new(body, CompressionLevel.SmallestSize, leaveOpen: true))
        {
            packed.Write(new byte[(1 << 26) + 1]);
        }

        byte[] content = body.ToArray();
        byte[] bytes = [.. "dewstone unit 1\n"u8, .. Convert.FromHexString(key), .. SHA256.HashData(content), .. content];
        Assert.Equal(key, StoredUnitBytes.KeyOf(bytes));
        Assert.Throws<InvalidDataException>(() => StoredUnitBytes.Read(bytes, key, Ask().Job.Unit));
    }

    [Fact]
    public void A_damaged_entry_is_solved_anew_and_said()
    {
        UnitQuestion question = Ask();
        string key = UnitKey.Of(question);
        OrderFolder folder = new(order.In("o"));
        new UnitStore(folder, new Parallelism(1)).Answer(question, key, CancellationToken.None);
        byte[] whole = File.ReadAllBytes(folder.Entry(key));
        File.WriteAllBytes(folder.Entry(key), whole[..(whole.Length / 2)]);
        UnitStore store = new(folder, new Parallelism(2));

        StoredUnit answer = store.Answer(question, key, CancellationToken.None);

        Assert.NotNull(answer.Solved);
        Assert.Equal(whole, File.ReadAllBytes(folder.Entry(key)));
        Assert.Equal(BatchFindings.EntryDamaged.Code, Assert.Single(store.Damaged()).Code);
        Assert.Empty(new UnitStore(folder, new Parallelism(1)).Damaged());
    }

    [Fact]
    public void The_key_holds_what_decides_and_not_what_it_is_called()
    {
        UnitQuestion question = Ask();
        JobDescription job = question.Job;
        string key = UnitKey.Of(question);
        UnitQuestion With(JobDescription other) => question with { Read = question.Read with { Job = other } };

        Assert.Equal(key, UnitKey.Of(With(job with { Unit = job.Unit with { Name = "Another" }, Mix = job.Mix with { Name = "Other mix" } })));
        Assert.Equal(key, UnitKey.Of(With(job with { Needles = new NeedleTable { Needles = [] } })));
        Assert.Equal(key, UnitKey.Of(With(job with { Printer = job.Printer with { Head = job.Printer.Head with { Rows = 2 } } })));
        string[] others =
        [
            UnitKey.Of(With(job with { Unit = job.Unit with { Relief = job.Unit.Relief! with { Seed = 4 } } })),
            UnitKey.Of(With(job with { Mix = job.Mix with { LooseDensity = new Density(1710.0) } })),
            UnitKey.Of(With(job with { Tonight = new Tonight { CuringTemperature = new Temperature(10.0) } })),
            UnitKey.Of(With(job with { Printer = job.Printer with { Timing = job.Printer.Timing with { Spreading = new Duration(51.0) } } })),
            UnitKey.Of(question with { Cells = 6 }),
            UnitKey.Of(question with { Covered = true }),
            UnitKey.Of(question with { Wish = Wish with { QuarterTurns = 1 } }),
            key,
        ];
        Assert.Equal(others.Length, others.Distinct(StringComparer.Ordinal).Count());
    }

    [Fact]
    public void A_unit_that_fails_is_kept_with_its_reasons_and_without_its_solid()
    {
        order.Edit("tiny.unit.yaml", "min: 0.20", "min: 0.99");
        UnitQuestion question = Ask();
        string key = UnitKey.Of(question);
        OrderFolder folder = new(order.In("o"));

        StoredUnit answer = new UnitStore(folder, new Parallelism(2)).Answer(question, key, CancellationToken.None);
        StoredUnit again = new UnitStore(folder, new Parallelism(2)).Find(question, key)!.In(question.Read);

        Assert.Null(answer.Solved);
        Assert.Equal(1, again.ExitCode);
        Diagnostic error = Assert.Single(again.Findings, finding => finding.Severity == Severity.Error);
        Assert.Equal(9, error.Location!.Line);
        Assert.False(Assert.Single(again.Requirements).Met);
    }

    private UnitQuestion Ask()
    {
        ReadResult read = DescriptionReader.ReadJob(order.In("tiny.unit.yaml"));
        return new UnitQuestion(read, Wish, Covered: false, Cells: 4, "0.0.0");
    }
}
