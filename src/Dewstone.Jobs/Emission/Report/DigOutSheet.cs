using Dewstone.Compute.Strength;
using Dewstone.Model.Description;
using Dewstone.Model.Results;

namespace Dewstone.Jobs.Emission.Report;

/// <summary>The second sheet, one page of A4 for those who dig out and lift: when, in what order, by what, who stands where.</summary>
internal static class DigOutSheet
{
    private const int MostPlaces = 6;

    /// <summary>Writes the sheet; of a held job, or one whose strength was not reckoned, nothing.</summary>
    /// <param name="html">The page.</param>
    /// <param name="job">The job.</param>
    public static void Write(HtmlWriter html, CompiledJob job)
    {
        if (job.Held || job.Strength is not { } strength)
        {
            return;
        }

        html.Add($"""<section id="lift"><header><div><p class="kind">Dig out and lift</p><h1>{job.Description.Unit.Name}</h1></div>""");
        html.Add($"""<p class="state">Not lifted before {StrengthWords.Age(strength.LiftDays)}</p></header><div class="beside"><div>""");
        Figures(html, job.Description, strength);
        html.Add($"</div>");
        HangDrawing.Write(html, job.Description.Unit, strength.Lifting);
        html.Add($"</div>");
        Clearing(html, job, strength);
        html.Add($"<p><strong>Not to be touched:</strong> {Places(job)}</p>");
        html.Add($"<p><strong>Who stands where.</strong> One person gives the signs, in sight of the crane and of every leg. Nobody under the load, between it and a wall of the bin, or nearer than its height while it hangs. Two guide it by lines from opposite corners; hands off straps once they draw tight.</p>");
        html.Add($"""<div class="cautions"><h2>Take care</h2><ul>""");
        html.Add($"<li><strong>A licensed engineer decides on the lift</strong>; ages, strengths and masses here are predictions. Break cubes cut from this bed first. Local codes and the yard's rules come before this sheet.</li>");
        html.Add($"<li><strong>Silica dust</strong> (29 CFR 1926.1153): at most 50 µg/m³ over 8 hours, measures from 25 on. Digging out dry mix is none of the tasks of its table 1: measure, wear a respirator, clean wet or by filtered vacuum.</li>");
        html.Add($"<li><strong>Wet cement burns</strong> without early pain: gloves, covered skin, eye protection; rinse at once and long.</li></ul></div></section>");
    }

    private static void Figures(HtmlWriter html, JobDescription job, StrengthReport strength)
    {
        LiftingReport lifting = strength.Lifting;
        double rate = strength.AgeRate;
        ReportTable.Pairs(
            html,
            ("dig out", $"not before {StrengthWords.Age(strength.DigOutDays)} after the last layer, mean strength 2 MPa"),
            ("lift", strength.LiftDays is not { } days
                ? "never: it does not grow strong enough"
                : $"not before {StrengthWords.Age(strength.LiftDays)}, mean strength {StrengthWords.Stress(strength.LiftPascals)} ({StrengthWords.Stress(strength.MeanPascals)} at 28 days of 20 °C), a maturity of {Maturity.NurseSaul(strength.CuringCelsius, 24.0 * days):0} °C h above 0 °C"),
            ("cured at", $"{strength.CuringCelsius:0.#} °C{(job.Tonight?.CuringTemperature is null ? ", taken, not measured" : "")}; a day counts as {rate:0.00} at 20 °C"),
            ("mass on the hook", $"{ReportFigures.Mass(lifting.Kilograms)}, of which {ReportFigures.Mass(lifting.TrappedKilograms)} loose mix that stays in"),
            ("load cell", $"{lifting.LoadCellKilograms.Least:0} to {lifting.LoadCellKilograms.Most:0} kg; more: mix clings, set down and clear; less: something stayed behind, stop"),
            ("centre of gravity", ReportFigures.Place(lifting.CentreOfGravity)),
            ("hangs by", Hang(job.Unit.Lifting, lifting.Hang)),
            ("each leg", lifting.Hang is { } hang
                ? $"{StrengthWords.Force(hang.LegNewtons)} at {hang.SlingDegrees:0.#}° from the horizontal, factor {hang.DynamicFactor:0.##} for hoisting, {hang.CarryingLegs} of {hang.Legs} legs counted"
                : ""),
            ("hardware", lifting.Hang is { } gear ? $"breaks at {StrengthWords.Force(gear.HardwareNewtons)} or more (5 times){(gear.InsertNewtons is { } insert ? $", inserts at {StrengthWords.Force(insert)} (4 times)" : "")}, 29 CFR 1926.704" : ""),
            ("tilt", lifting.Hang is { } level ? $"{level.TiltDegrees:0.0}° when it hangs free" : ""));
    }

    private static string Hang(Lifting? lifting, HangReport? hang) => lifting switch
    {
        StrapLifting straps => $"{straps.Lines.Count} straps under it, at {string.Join(", ", straps.Lines.Select(line => $"{(line.Along == Axis.X ? "y" : "x")} {ReportFigures.Length(line.At.Metres)}"))}; on hardened mix over {string.Join(", ", hang!.Places.Select(place => ReportFigures.Share(place.BearingShare)))} of their length",
        InsertLifting inserts => $"{inserts.Points.Count} inserts, tested: {inserts.Test}",
        _ => "the unit's file does not say how it is lifted; inserts only with a tested capacity",
    };

    private static void Clearing(HtmlWriter html, CompiledJob job, StrengthReport strength)
    {
        ReefUnit unit = job.Description.Unit;
        html.Add($"<h2>Order of clearing</h2><ol>");
        html.Add($"<li>From the top down and on all sides alike, so that no side is pushed by the mix on the other. Wet the mix; by hand within 100 mm of the unit.</li>");
        if (unit.Tunnels.Count > 0)
        {
            html.Add($"<li>Tunnels from both ends, roof last: {string.Join(", ", unit.Tunnels.Select(tunnel => tunnel.Name))}. Brush, never lever.</li>");
        }

        if (unit.Cavities.Count > 0)
        {
            html.Add($"<li>Hollows, highest first: {string.Join(", ", unit.Cavities.Select(cavity => cavity.Name))}.</li>");
        }

        html.Add($"<li>The bed under the unit stays. {(unit.Lifting is StrapLifting ? "Cut a slot under each strap line only, wide as the strap, and thread the strap before the next slot." : "Nothing is dug from under it.")}</li>");
        html.Add($"<li>Draw tight, look at every leg, lift 20 mm, stop, read the load cell. Level and within the band: go on. Set down flat: {Stands(strength)}.</li></ol>");
    }

    private static string Stands(StrengthReport strength)
    {
        string[] bad = [.. strength.Tension.Where(held => held.Case != LoadCase.Lifted && (held.FactorAtLift < 1.5 || held.Overturns)).Select(held => LoadCaseWords.Of(held.Case))];
        return bad.Length == 0 ? "edges and stacking were reckoned and hold, but are not for young concrete" : $"it does not bear {string.Join(" or ", bad)}";
    }

    private static string Places(CompiledJob job)
    {
        IReadOnlyList<ThinPlace> thin = job.Inspection?.Wall.ThinPlaces ?? [];
        return thin.Count == 0
            ? "no neck or wall is thinner than was asked; even so, do not lean on edges."
            : string.Join("; ", thin.Take(MostPlaces).Select(place => $"{(place.IsNeck ? "neck" : "thin part")} of {ReportFigures.Length(place.ThicknessMetres)} at {ReportFigures.Place(place.Where)}")) + (thin.Count > MostPlaces ? $"; and {thin.Count - MostPlaces} more" : "") + ".";
    }
}
