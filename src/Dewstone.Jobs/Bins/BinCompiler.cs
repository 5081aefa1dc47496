using Dewstone.Compute.Dosing;
using Dewstone.Compute.Geometry;
using Dewstone.Compute.Inspection;
using Dewstone.Compute.Sequencing;
using Dewstone.Jobs.Compilation;
using Dewstone.Model.Diagnostics;
using Dewstone.Model.Lattices;
using Dewstone.Model.Results;
using Dewstone.Reading;

namespace Dewstone.Jobs.Bins;

/// <summary>Stands solved units in one bin: one set of dose tables, wetted once, each unit held against itself as solved alone.</summary>
public static class BinCompiler
{
    /// <summary>Compiles a bin.</summary>
    /// <param name="question">The bin and its units.</param>
    /// <param name="parallelism">Threads; no result depends on them.</param>
    /// <param name="progress">Told within; may be null.</param>
    /// <param name="cancellation">Looked at within.</param>
    /// <returns>The job with each unit's verdict, or the findings that forbid it.</returns>
    /// <exception cref="ArgumentException">A bin without units, or with two of one mark.</exception>
    /// <exception cref="OperationCanceledException">Cancelled.</exception>
    public static BinResult Compile(BinQuestion question, Parallelism parallelism, IProgress<Progress>? progress, CancellationToken cancellation)
    {
        ArgumentNullException.ThrowIfNull(question);
        if (question.Units.Count == 0 || question.Units.DistinctBy(unit => unit.Mark).Count() < question.Units.Count)
        {
            throw new ArgumentException("A bin holds one unit or more, each with its own mark.", nameof(question));
        }

        StandingUnit[] units = [.. question.Units.Select(unit => StandingUnit.Of(unit, question.Conditions.Printer))];
        FindingList findings = new(new SourceMaps(), question.Accept);
        findings.AddRange(BinCheck.Check(question, units));
        // A gap or a held unit can be released; what no needle can give cannot.
        if (findings.Items.Any(fault => fault.AcceptedBecause is null || fault.Code == BinFindings.BeyondNeedles.Code || fault.Code == BinFindings.OtherBin.Code))
        {
            return new BinResult(question, null, [], findings.Items);
        }

        BinFrame frame = BinFrame.Of(question, units);
        CellGrid cells = CellGrid.Over(frame.Lattice, units[0].Placed.Solved.Cells.CellsPerPitch);
        TargetField target = WantedSolid.Voxelize(frame.Description, frame.Placement, cells, parallelism, progress, cancellation);
        BinColumns columns = BinColumns.Of(cells, frame.Lattice, units);
        double[] wanted = Wanted(frame.Lattice, units);
        DosePlan doses = new DoseRounder(frame.Description, frame.Lattice).Round(wanted);
        findings.AddRange(SupplyCheck.Check(frame.Description, frame.Lattice, doses, TimelineBuilder.Build(frame.Description, frame.Lattice, doses).Timeline));
        if (findings.Stop)
        {
            return new BinResult(question, null, [], findings.Items);
        }

        Prediction predicted = Prediction.Of(frame.Description, doses, target, parallelism, progress, cancellation);
        IReadOnlyList<BinVerdict> verdicts = BinJudge.Judge(cells, predicted.Moisture.Hardened, columns, units);
        if (verdicts.Any(verdict => !verdict.Serves))
        {
            DosePlan anew = BinRedose.Solve(
                frame, units, [.. verdicts.Select(verdict => !verdict.Serves)], wanted, parallelism, progress, cancellation);
            Prediction second = Prediction.Of(frame.Description, anew, target, parallelism, progress, cancellation);
            IReadOnlyList<BinVerdict> then = BinJudge.Judge(cells, second.Moisture.Hardened, columns, units);
            if (then.Min(verdict => verdict.Overlap) > verdicts.Min(verdict => verdict.Overlap))
            {
                findings.AddRange(verdicts.Zip(then).Where(pair => !pair.First.Serves).Select(pair => Redosed(pair.First, pair.Second)));
                (doses, predicted, verdicts) = (anew, second, then);
            }
        }

        findings.AddRange(WaterCheck.Check(frame.Placement, frame.Lattice, predicted.Moisture));
        findings.AddRange(verdicts.Where(verdict => !verdict.Serves).Select(Differs));
        CompiledJob job = Job(question, frame, target, doses, predicted, findings.Items);
        JobVerifier.Verify(job);
        return new BinResult(question, job, verdicts, findings.Items);
    }

    // Doses as solved where they fall in the bin, mL; index order of the lattice.
    private static double[] Wanted(Lattice lattice, IReadOnlyList<StandingUnit> units)
    {
        double[] wanted = new double[lattice.Count];
        foreach (StandingUnit unit in units)
        {
            foreach ((int column, int row, int layer, int dose) in unit.Doses())
            {
                wanted[lattice.Index(column - lattice.FirstColumn, row - lattice.FirstRow, layer)] = dose / 100.0;
            }
        }

        return wanted;
    }

    private static Diagnostic Differs(BinVerdict verdict) => BinFindings.UnitDiffers.At(
        FormattableString.Invariant(
            $"{verdict.Placed.Mark} (`{verdict.Binned.Unit.Name}`) overlaps with itself as solved alone by {verdict.Overlap * 100.0:0.00} %, its volume is off by {verdict.VolumeError * 100.0:+0.00;-0.00;0.00} %; {BinVerdict.LeastOverlap * 100.0:0.0} % and {BinVerdict.MostVolumeError * 100.0:0.0} % are let pass"),
        "turn or move it so that sound needles stand over it, or give it to another printer");

    private static Diagnostic Redosed(BinVerdict before, BinVerdict after) => BinFindings.Redosed.At(
        FormattableString.Invariant(
            $"the doses of {after.Placed.Mark} were found anew: overlap with itself as solved alone {after.Overlap * 100.0:0.00} instead of {before.Overlap * 100.0:0.00} %, volume off by {after.VolumeError * 100.0:+0.00;-0.00;0.00} instead of {before.VolumeError * 100.0:+0.00;-0.00;0.00} %"),
        "nothing to do");

    private static CompiledJob Job(
        BinQuestion question, BinFrame frame, TargetField target, DosePlan doses, Prediction predicted, IReadOnlyList<Diagnostic> findings)
    {
        DoseFigures figures = DoseFigures.Of(doses, predicted.Solid);
        return new CompiledJob
        {
            Description = frame.Description,
            Registration = new Registration { Wish = frame.Description.Unit.Place, Fixed = true },
            Placement = frame.Placement,
            Lattice = frame.Lattice,
            Target = target,
            Doses = doses,
            Dosing = DosingSummary.Given(figures),
            Timeline = predicted.Timeline,
            Schedule = predicted.Schedule,
            Moisture = predicted.Moisture,
            Solid = predicted.Solid,
            Estimate = predicted.Estimate,
            Requirements = [],
            Findings = findings,
            Accepted = question.Accept,
            Inputs = question.Inputs,
            ToolVersion = question.ToolVersion,
        };
    }
}
