using System.Globalization;
using Dewstone.Compute.Dosing;
using Dewstone.Model.Description;
using Dewstone.Model.Diagnostics;
using Dewstone.Model.Lattices;
using Dewstone.Model.Results;

namespace Dewstone.Jobs.Resuming;

/// <summary>What a stop does to the ages of the layers.</summary>
/// <param name="job">Printer and stop.</param>
/// <param name="doses">All doses; the times of those that are 0 count for nothing.</param>
/// <param name="schedule">Times with the stop.</param>
/// <param name="inOneGo">Times without it.</param>
/// <param name="windowSeconds">Time after which a layer's water no longer moves, s.</param>
internal sealed class StopTimes(JobDescription job, DosePlan doses, DoseSchedule schedule, DoseSchedule inOneGo, double windowSeconds)
{
    private readonly bool[] done = DoneDoses.Of(job, doses.Lattice);

    /// <summary>The layer that was being printed or was the last dosed when the machine stopped, and the first that is dosed after it, from 1; the same for a layer in two goes.</summary>
    public (int Lower, int Upper) Joint() =>
        (1 + Enumerable.Range(0, doses.Lattice.Layers).LastOrDefault(k => First(schedule, k, true) is not null),
            1 + Enumerable.Range(0, doses.Lattice.Layers).FirstOrDefault(k => First(schedule, k, false) is not null));

    /// <summary>Time from the first dose of the lower layer to the first after the stop, s.</summary>
    public double AgeSeconds() => Joint() is var (lower, upper) && First(schedule, lower - 1, true) is { } from && First(schedule, upper - 1, false) is { } to ? to - from : 0.0;

    /// <summary>The joints that the stop made cold.</summary>
    /// <returns>DW3042, then DW3040 from the lowest up.</returns>
    public IEnumerable<Diagnostic> Findings()
    {
        KeyPath window = new(DescriptionKind.Mix, "hardening.window");
        if (IsSplit())
        {
            yield return JointFindings.SplitLayer.At(
                $"layer {Joint().Lower} is watered in two goes, {Minutes(AgeSeconds())} apart, against a window of {Minutes(windowSeconds)}: a cold joint stands upright in it, strength across it is not computed",
                "have it judged by licensed practice", window);
        }

        int? below = null;
        for (int k = 0; k < doses.Lattice.Layers; k++)
        {
            if (First(schedule, k, null) is null)
            {
                continue;
            }

            if (below is { } lower && Age(schedule, lower, k) is var age && age > windowSeconds && Age(inOneGo, lower, k) <= windowSeconds)
            {
                yield return JointFindings.ColdJoint.At(
                    $"cold joint between layer {lower + 1} and {k + 1}, {Minutes(age)} against a window of {Minutes(windowSeconds)}; strength across it is not computed",
                    "have it judged by licensed practice", window);
            }

            below = k;
        }
    }

    // Whether a layer was watered before the stop and is watered again after its window.
    private bool IsSplit() => Joint() is var (lower, upper) && lower == upper && AgeSeconds() > windowSeconds;

    private double Age(DoseSchedule times, int lower, int upper) => First(times, upper, null)!.Value - First(times, lower, null)!.Value;

    // First dose of a layer: of all, or only of those before or after the stop.
    private double? First(DoseSchedule times, int k, bool? before)
    {
        Lattice lattice = doses.Lattice;
        double? first = null;
        for (int index = lattice.Index(0, 0, k); index < lattice.Index(0, 0, k) + lattice.Columns * lattice.Rows; index++)
        {
            if (doses.CentiMillilitres[index] > 0 && (before is null || done[index] == before) && !(times.DoseStartSeconds[index] >= first))
            {
                first = times.DoseStartSeconds[index];
            }
        }

        return first;
    }

    private static string Minutes(double seconds) => string.Create(CultureInfo.InvariantCulture, $"{seconds / 60.0:0.#} min");
}
