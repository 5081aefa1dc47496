using Dewstone.Model.Diagnostics;
using Dewstone.Model.Quantities;
using Dewstone.Model.Results;
using Dewstone.Orders.Batches;

namespace Dewstone.Orders.Tests.Batches;

public sealed class RecordJsonTests
{
    private static readonly Diagnostic Finding = ShapeFindings.All[0].At("a message with \"quotes\"", "do this", new KeyPath(DescriptionKind.Unit, "tunnels[1].clear"), new SourceLocation("u/a.unit.yaml", 9, 3)) with
    {
        Where = new Point3(0.1, 0.25, 0.5),
        Related = [new RelatedPlace(new SourceLocation("u/a.unit.yaml", 2, 1), null, "here too")],
    };

    [Fact]
    public void A_units_record_is_read_back_as_it_was_written()
    {
        UnitRecord record = new()
        {
            Mark = "WB-001",
            Name = "Wrack block",
            File = "units/a.unit.yaml",
            Bin = "yard-001",
            State = UnitState.Solved,
            Key = new string('a', 64),
            Draws = [new DrawRecord(0, [new DrawnSeed("niches", (1UL << 53) - 1)], false, [Finding]), new DrawRecord(1, [new DrawnSeed("niches", 4)], true, [])],
            DesignFingerprint = "0123456789AB",
            Figures = new UnitFigures
            {
                Box = new Size3(0.9, 0.9, 0.9),
                HardenedCubicMetres = 0.5,
                LiftKilograms = 1000.0,
                DryKilograms = 950.0,
                SaturatedKilograms = 1010.0,
                SubmergedKilograms = 520.0,
                StrengthPascals = 2e7,
                DigOutDays = 1.5,
                LiftDays = null,
            },
            Requirements =
            [
                new RequirementResult
                {
                    Id = "mass.max", Key = new KeyPath(DescriptionKind.Unit, "require.mass.max"), Location = new SourceLocation("u/a.unit.yaml", 12, 2), Quantity = "mass", Op = "<=", Limit = 1150.0, Value = 1000.0, Unit = "kg",
                },
            ],
            Findings = [Finding with { AcceptedBecause = "agreed" }],
            ExitCode = 0,
        };

        byte[] bytes = RecordJson.Of(record, file => file);
        UnitRecord read = RecordJson.ReadUnit(bytes)!;

        Assert.Equal(bytes, RecordJson.Of(read, file => file));
        Assert.Equal(record.Figures, read.Figures);
        Assert.Equal(record.Requirements, read.Requirements);
        Assert.Equal(record.Draws[0].Seeds, read.Draws[0].Seeds);
        Assert.Equal(Finding.Related, read.Draws[0].Errors[0].Related);
        Assert.Equal(Finding with { Related = [], AcceptedBecause = "agreed" }, read.Findings[0] with { Related = [] });
        Assert.Equal((UnitState.Solved, "yard-001", 0), (read.State, read.Bin, read.ExitCode));
    }

    [Fact]
    public void Bins_tasks_and_pins_are_read_back_as_they_were_written()
    {
        BinRecord bin = new() { Name = "yard-001", Key = "k", Units = ["A-001"], LeftOut = ["A-002"], Folder = "yard-001.job", ManifestSha256 = "m", Findings = [Finding], ExitCode = 1 };
        BinRecord read = RecordJson.ReadBin(RecordJson.Of(bin, file => file))!;
        Assert.Equal(RecordJson.Of(bin, file => file), RecordJson.Of(read, file => file));
        Assert.Equal((bin.Name, bin.Key, bin.Folder, bin.ManifestSha256, 1), (read.Name, read.Key, read.Folder, read.ManifestSha256, read.ExitCode));
        TaskReport task = new(2, 5, "h", ["yard-001"], ["A-002"], 1);
        Assert.Equal(RecordJson.Of(task), RecordJson.Of(RecordJson.ReadTask(RecordJson.Of(task))!));
        OrderPin pin = new() { Name = "o", OrderSha256 = "h", Cells = 8, ToolVersion = "0.1.0", Inputs = [new InputFile("unit", "a.unit.yaml", "s")], Marks = ["A-001"] };
        Assert.Equal(RecordJson.Of(pin), RecordJson.Of(RecordJson.ReadPin(RecordJson.Of(pin))!));
        Assert.Equal(8, RecordJson.ReadPin(RecordJson.Of(pin))!.Cells);
    }

    [Fact]
    public void What_is_cut_short_or_of_another_kind_is_none()
    {
        byte[] bin = RecordJson.Of(new BinRecord { Name = "b", Key = "k", Units = [], LeftOut = [], Folder = "", ManifestSha256 = "", Findings = [Finding], ExitCode = 0 }, file => file);
        Assert.Null(RecordJson.ReadUnit(bin));
        Assert.Null(RecordJson.ReadTask(bin));
        Assert.Null(RecordJson.ReadPin(null));
        for (int length = 0; length < bin.Length - 2; length++)
        {
            Assert.Null(RecordJson.ReadBin(bin[..length]));
        }

        Assert.NotNull(RecordJson.ReadBin(bin));
    }
}
