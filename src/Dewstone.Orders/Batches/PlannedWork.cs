using System.Security.Cryptography;
using Dewstone.Jobs.Emission.Json;
using Dewstone.Model.Description;
using Dewstone.Orders.Listing;
using Dewstone.Orders.Plans;
using Dewstone.Reading;

namespace Dewstone.Orders.Batches;

/// <summary>What a bin of the plan is made from: questions to solve, the key of it all, and what it costs.</summary>
internal sealed class PlannedWork
{
    private readonly BatchQuestion question;
    private readonly Dictionary<string, OrderedUnit> units;
    private readonly Dictionary<(int Line, int Printer), Footing> footings;

    /// <summary>The work of a plan that fits its order.</summary>
    public PlannedWork(BatchQuestion question)
    {
        this.question = question;
        units = OrderListing.Of(Order).ToDictionary(unit => unit.Mark, StringComparer.Ordinal);
        footings = question.Plan.Footings.ToDictionary(footing => (footing.Line, footing.Printer));
    }

    /// <summary>The order.</summary>
    public Order Order => question.Reading.Order!;

    /// <summary>A unit by its mark.</summary>
    public OrderedUnit Unit(string mark) => units[mark];

    /// <summary>A unit's description on the printer of a bin, as its file says it.</summary>
    public ReadResult Read(PlannedBin bin, OrderedUnit unit) => question.Reading.Jobs[unit.Line][bin.Printer]!;

    /// <summary>The question a draw of a unit asks.</summary>
    public (UnitQuestion Question, IReadOnlyList<DrawnSeed> Seeds) Draw(PlannedBin bin, OrderedUnit unit, int draw)
    {
        ReadResult read = Read(bin, unit);
        (ReefUnit drawn, IReadOnlyList<DrawnSeed> seeds) = SeedVariation.Draw(read.Job!.Unit, unit.VarySeed, unit.Ordinal, draw);
        Footing footing = footings[(unit.Line, bin.Printer)];
        return (new UnitQuestion(read with { Job = read.Job with { Unit = drawn } }, footing.Wish, footing.Layers < Layers(bin), question.Cells, question.ToolVersion), seeds);
    }

    /// <summary>Hash of all that a bin's job follows from: its units' first draws and how they go on, where they stand, the real printer, the rules of the order.</summary>
    public string Key(PlannedBin bin) => Convert.ToHexStringLower(SHA256.HashData(CanonicalJson.Compact(json =>
    {
        json.WriteString("bin", bin.Name);
        json.WriteString("tool", question.ToolVersion);
        json.WriteString("module", typeof(PlannedWork).Assembly.ManifestModule.ModuleVersionId.ToString("N"));
        json.Number("gap_m", Order.Gap?.Metres);
        json.Number("set_s", Order.Bins?.SetBeforeDig.Seconds);
        json.Objects("units", bin.Units, planned =>
        {
            OrderedUnit unit = Unit(planned.Mark);
            json.WriteString("mark", planned.Mark);
            json.WriteNumber("turns", planned.QuarterTurns);
            json.WriteNumber("column", planned.Column);
            json.WriteNumber("row", planned.Row);
            json.WriteString("vary", unit.VarySeed?.ToString());
            json.WriteNumber("redraw", unit.Redraw);
            json.WriteString("first", UnitKey.Of(Draw(bin, unit, 0).Question));
            json.Objects("inputs", Read(bin, unit).Inputs, input =>
            {
                json.WriteString("role", input.Role);
                json.WriteString("sha256", input.Sha256);
            });
        });
    })));

    /// <summary>What a bin costs, in voxels solved.</summary>
    public long Cost(PlannedBin bin) => bin.Units.Sum(unit => Voxels(bin, Unit(unit.Mark)));

    /// <summary>Voxels of the window a unit alone is solved on: its footprint and a rim of two pitches.</summary>
    public long Voxels(PlannedBin bin, OrderedUnit unit)
    {
        Footing footing = footings[(unit.Line, bin.Printer)];
        return (long)(footing.Columns + 4) * (footing.Rows + 4) * footing.Layers;
    }

    /// <summary>Layers of a bin: those of its highest unit.</summary>
    public int Layers(PlannedBin bin) => bin.Units.Max(unit => footings[(Unit(unit.Mark).Line, bin.Printer)].Layers);

    /// <summary>Name of a description file as the files hold it: below the root of whichever line names it.</summary>
    public string NameOfFile(string file)
    {
        string bare = Path.GetFileName(file);
        return question.Reading.Jobs.SelectMany(jobs => jobs).Select(job => job?.Sources.BelowRoot(file)).FirstOrDefault(name => name is not null && name != bare) ?? bare;
    }
}
