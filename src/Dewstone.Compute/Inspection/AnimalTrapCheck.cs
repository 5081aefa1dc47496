using Dewstone.Compute.Geometry;
using Dewstone.Model.Description;
using Dewstone.Model.Diagnostics;
using Dewstone.Model.Quantities;
using Dewstone.Model.Results;

namespace Dewstone.Compute.Inspection;

/// <summary>Finds hollows that an animal may drop into and not get out of.</summary>
/// <remarks>
/// A cavity counts when it has one mouth, the mouth lies within 45 degrees of straight above its innermost part, the bottom more than the animal's body depth
/// below the mouth, and the predicted clear opening is between once and <see cref="SnugFactor"/> times that depth: in with ease, no room to turn. A plain rule of ours, not
/// confirmed by a published source.
/// </remarks>
internal static class AnimalTrapCheck
{
    /// <summary>Body depth when the site names no animals, metres.</summary>
    public const double UsualBodyMetres = 0.03;

    /// <summary>Clear opening over body depth up to which a mouth counts as snug.</summary>
    public const double SnugFactor = 1.5;

    /// <summary>Checks.</summary>
    /// <param name="job">The site, for its sheltered animal.</param>
    /// <param name="passages">All openings, measured.</param>
    /// <returns>The traps, and finding DW3029 for each feature that has any.</returns>
    public static Checked<IReadOnlyList<AnimalTrap>> Check(JobDescription job, IReadOnlyList<OpeningPassage> passages)
    {
        double body = job.Site?.Animals?.Sheltered.Metres ?? UsualBodyMetres;
        List<AnimalTrap> traps = [];
        foreach (OpeningPassage passage in passages)
        {
            ClearOpening clear = passage.Clear;
            Point3 up = passage.MouthCentre - passage.Core;
            double drop = passage.MouthCentre.Z - passage.LowestMetres;
            bool isSnug = clear.PredictedMetres >= body && clear.PredictedMetres <= SnugFactor * body;
            if (!clear.IsTunnel && passage.Mouths == 1 && isSnug && drop > body && up.Z > up.Norm * Math.Sqrt(0.5))
            {
                traps.Add(new AnimalTrap(clear.Name, clear.Key, clear.PredictedMetres, drop, passage.MouthCentre));
            }
        }

        return new Checked<IReadOnlyList<AnimalTrap>>(
            traps, [], [.. traps.GroupBy(trap => trap.Key).Select(group => Finding([.. group], body))]);
    }

    private static Diagnostic Finding(List<AnimalTrap> traps, double body)
    {
        AnimalTrap first = traps[0];
        string hollows = traps.Count > 1 ? $" ({traps.Count} hollows)" : "";
        return InspectionFindings.AnimalTrap.At(
            $"\"{first.Name}\"{hollows} opens upwards only, {UnitKeys.Millimetres(first.ClearMetres)} clear at {Wording.Place(first.Where)}: an animal {UnitKeys.Millimetres(body)} deep gets in and may not get out (not confirmed by a published source)",
            "give it a second mouth, a mouth to the side, or a wider one", first.Key) with { Where = first.Where };
    }
}
