using Dewstone.Jobs.Emission;
using Dewstone.Model.Diagnostics;
using Dewstone.Orders.Listing;
using Dewstone.Orders.Plans;

namespace Dewstone.Orders.Batches;

/// <summary>Draws a unit until a draw passes all checks or the order allows no more.</summary>
/// <param name="work">What the order is made from.</param>
/// <param name="store">Solved units.</param>
internal sealed class UnitDraws(PlannedWork work, UnitStore store)
{
    /// <summary>Draws a unit.</summary>
    /// <param name="bin">Its bin.</param>
    /// <param name="unit">The unit.</param>
    /// <param name="cancellation">Looked at within.</param>
    /// <returns>Its record, with the solved unit when a draw passed.</returns>
    public SolvedDraw Take(PlannedBin bin, OrderedUnit unit, CancellationToken cancellation)
    {
        List<DrawRecord> draws = [];
        int last = unit.VarySeed is null ? 0 : unit.Redraw;
        for (int draw = 0; ; draw++)
        {
            (UnitQuestion question, IReadOnlyList<DrawnSeed> seeds) = work.Draw(bin, unit, draw);
            string key = UnitKey.Of(question);
            StoredUnit answer = store.Answer(question, key, cancellation);
            draws.Add(new DrawRecord(draw, seeds, answer.Solved is not null, [.. answer.Findings.Where(f => f is { Severity: Severity.Error, AcceptedBecause: null })]));
            if (answer.Solved is not null || draw == last)
            {
                return new SolvedDraw(Record(bin, unit, question, key, answer, draws), answer.Solved);
            }
        }
    }

    private static UnitRecord Record(PlannedBin bin, OrderedUnit unit, UnitQuestion question, string key, StoredUnit answer, IReadOnlyList<DrawRecord> draws) => new()
    {
        Mark = unit.Mark,
        Name = question.Job.Unit.Name,
        File = question.Read.Sources.Find(DescriptionKind.Unit)?.File ?? "",
        Bin = bin.Name,
        State = answer.Solved is null ? UnitState.Failed : UnitState.Solved,
        Key = key,
        Draws = draws,
        DesignFingerprint = JobCoreEmitter.DesignOf(question.Job.Unit).ToString(),
        Figures = answer.Solved is not { } solved ? null : new UnitFigures
        {
            Box = solved.Unit.OuterBox,
            HardenedCubicMetres = solved.Solid.HardenedCubicMetres,
            LiftKilograms = solved.Estimate.LiftKilograms,
            DryKilograms = solved.Estimate.DryKilograms,
            SaturatedKilograms = solved.Estimate.SaturatedKilograms,
            SubmergedKilograms = solved.Estimate.SubmergedKilograms,
            StrengthPascals = solved.MeanPascals,
            DigOutDays = solved.DigOutDays,
            LiftDays = solved.LiftDays,
        },
        Requirements = answer.Requirements,
        Findings = answer.Findings,
        ExitCode = answer.ExitCode,
    };
}
