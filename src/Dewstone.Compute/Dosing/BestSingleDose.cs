using Dewstone.Model.Results;

namespace Dewstone.Compute.Dosing;

/// <summary>The single dose of a full voxel, to 1 mL, that serves a unit best when every voxel gets its wanted share of it.</summary>
/// <param name="rounder">Limits and pump steps.</param>
/// <param name="forward">What doses do.</param>
/// <param name="field">Wanted solid.</param>
/// <param name="objective">What is made small.</param>
internal sealed class BestSingleDose(DoseRounder rounder, ForwardModel forward, CorrectionField field, DoseObjective objective)
{
    private const int FirstStep = 4;

    /// <summary>Climbs down from a start in steps of 4, 2 and 1 mL.</summary>
    /// <param name="shares">Wanted share of each voxel, 0 below the cut; index order of the lattice.</param>
    /// <param name="startMillilitres">Where to start, mL.</param>
    /// <param name="solves">Most wetting computations.</param>
    /// <param name="told">Told every computation.</param>
    /// <param name="cancellation">Looked at in every computation.</param>
    /// <returns>The dose, mL.</returns>
    public double Find(double[] shares, double startMillilitres, int solves, Action<CorrectionRound> told, CancellationToken cancellation)
    {
        SortedDictionary<int, double> known = [];
        int least = Math.Max(1, (int)Math.Ceiling(rounder.Limits.LeastMillilitres));
        int most = Math.Max(least, (int)Math.Floor(rounder.Limits.UpperMillilitres));
        int at = Math.Clamp((int)Math.Floor(startMillilitres + 0.5), least, most);
        for (int step = FirstStep; step >= 1;)
        {
            int better = at;
            foreach (int tried in new[] { at, Math.Max(least, at - step), Math.Min(most, at + step) })
            {
                if (!known.ContainsKey(tried) && known.Count < solves)
                {
                    known[tried] = Judge(shares, tried, known, told, cancellation);
                }

                better = known.TryGetValue(tried, out double value) && value < known[better] ? tried : better;
            }

            step = better == at ? step / 2 : step;
            at = better;
        }

        return at;
    }

    private double Judge(double[] shares, int dose, SortedDictionary<int, double> known, Action<CorrectionRound> told, CancellationToken cancellation)
    {
        cancellation.ThrowIfCancellationRequested();
        DosePlan doses = rounder.Round(Array.ConvertAll(shares, share => share * dose));
        double reached = objective.Evaluate(forward.Wet(doses, field.Grid, cancellation));
        double best = known.Count == 0 ? reached : Math.Min(reached, known.Values.Min());
        told(new CorrectionRound(known.Count + 1, reached, best, doses.TotalCentiMillilitres / 1e5));
        return reached;
    }
}
