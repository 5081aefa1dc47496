using Dewstone.Model.Description;
using Dewstone.Model.Results;

namespace Dewstone.Jobs.Emission;

/// <summary>What a job's machine reads: the tables of the doses to print, and the sequence. After a stop also the tables of what was delivered before it.</summary>
/// <param name="Doses">Tables of the doses to print, lowest layer first.</param>
/// <param name="Delivered">Tables of the doses given before the stop, lowest layer first; empty for a print in one go.</param>
/// <param name="Sequence">What the machine does, or has still to do.</param>
public sealed record JobTables(IReadOnlyList<EmittedFile> Doses, IReadOnlyList<EmittedFile> Delivered, EmittedFile Sequence)
{
    /// <summary>The tables of a job.</summary>
    /// <param name="job">Needles and stop.</param>
    /// <param name="doses">What each position gets, or got.</param>
    /// <param name="timeline">The machine's steps, those before the stop included.</param>
    /// <param name="addressing">Which needle waters which position.</param>
    /// <returns>The files.</returns>
    public static JobTables Of(JobDescription job, DosePlan doses, Timeline timeline, NeedleAddressing addressing)
    {
        ArgumentNullException.ThrowIfNull(job);
        ArgumentNullException.ThrowIfNull(timeline);
        if (job.Stop is not { } stop)
        {
            return new JobTables(DoseTableEmitter.Emit(doses, job.Needles, addressing), [], SequenceEmitter.Emit(timeline));
        }

        return new JobTables(
            DoseTableEmitter.Emit(doses, job.Needles, addressing, DoseTableEmitter.ToPrint, (layer, station) => !stop.IsDone(layer, station)),
            DoseTableEmitter.Emit(doses, stop.NeedlesBefore, addressing, DoseTableEmitter.Delivered, stop.IsDone),
            SequenceEmitter.Emit(timeline, step => step.Action != MachineAction.Pause && !stop.IsDone(step.Layer, step.Station, step.Action)));
    }
}
