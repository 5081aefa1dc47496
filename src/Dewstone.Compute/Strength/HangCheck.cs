using Dewstone.Model.Description;
using Dewstone.Model.Diagnostics;
using Dewstone.Model.Quantities;
using Dewstone.Model.Results;

namespace Dewstone.Compute.Strength;

/// <summary>Judges how a unit hangs by its straps or inserts: balance, tilt, tension in the legs, what the straps lie on.</summary>
/// <remarks>
/// Each strap goes round the underside and up both sides: two legs. The hook stands over the middle of the straps; the legs leave the top of the outer box, or the inserts, at
/// the angle said. A strap is <see cref="StrapMetres"/> wide. Widths, tilt and bearing limits: common practice, no source.
/// </remarks>
internal static class HangCheck
{
    /// <summary>Width of a strap, metres.</summary>
    public const double StrapMetres = 0.06;

    /// <summary>Tilt from which a warning is given, degrees.</summary>
    public const double MostTilt = 5.0;

    /// <summary>Share of a strap's length that should bear, 1.</summary>
    public const double LeastBearing = 0.5;

    private static readonly KeyPath Lifting = new(DescriptionKind.Unit, "lifting");

    /// <summary>What bears, strap by strap or insert by insert.</summary>
    /// <param name="lifting">As its file says; null for nothing.</param>
    /// <param name="box">Outer box, metres.</param>
    /// <param name="bricks">The body.</param>
    /// <returns>In the order of the file.</returns>
    public static IReadOnlyList<Support> Places(Lifting? lifting, Size3 box, BodyBricks bricks)
    {
        const double Half = 0.5 * StrapMetres;
        return lifting switch
        {
            StrapLifting straps =>
            [
                .. straps.Lines.Select(line => line.Along == Axis.X
                    ? Support.Under(bricks, new Point3(0.0, line.At.Metres - Half, 0.0), new Point3(box.X, line.At.Metres + Half, 0.0))
                    : Support.Under(bricks, new Point3(line.At.Metres - Half, 0.0, 0.0), new Point3(line.At.Metres + Half, box.Y, 0.0))),
            ],
            InsertLifting inserts =>
            [
                .. inserts.Points.Select(point => Support.Around(
                    bricks, point - new Point3(0.0, 0.0, 0.5 * inserts.Embedment.Metres), 0.5 * inserts.Embedment.Metres + Math.Max(0.05, bricks.Edges.X))),
            ],
            _ => [],
        };
    }

    /// <summary>Judges.</summary>
    /// <param name="lifting">As its file says.</param>
    /// <param name="box">Outer box, metres.</param>
    /// <param name="places">What bears.</param>
    /// <param name="kilograms">Mass on the hook, kg.</param>
    /// <param name="centre">Centre of gravity, metres, unit frame.</param>
    /// <param name="findings">DW5004 to DW5008 are added.</param>
    /// <returns>The hang.</returns>
    public static HangReport Check(
        Lifting lifting, Size3 box, IReadOnlyList<Support> places, double kilograms, Point3 centre, DiagnosticBag findings)
    {
        double weight = kilograms * SlingLoad.Gravity, degrees = lifting.SlingAngle.Degrees;
        bool byStraps = lifting is StrapLifting;
        int legs = byStraps ? 2 * places.Count : places.Count, carrying = SlingLoad.Carrying(legs);
        double leg = SlingLoad.Tension(weight, lifting.DynamicFactor, carrying, degrees);
        PlanPressure? pressure = PlanPressure.Carrying(places, weight, centre);
        HangPlace[] hung = [.. places.Select((place, i) => Place(lifting, i, place, box, pressure, weight))];
        HangReport report = new()
        {
            SlingDegrees = degrees,
            DynamicFactor = lifting.DynamicFactor,
            Legs = legs,
            CarryingLegs = carrying,
            LegNewtons = leg,
            InsertNewtons = byStraps ? null : SlingLoad.InsertFactor * leg,
            HardwareNewtons = SlingLoad.HardwareFactor * leg,
            TiltDegrees = Tilt(lifting, box, centre),
            Places = hung,
        };
        Judge(lifting, report, pressure is null || hung.Any(place => place.Share <= 0.0) || Pulls(places, pressure.Value), centre, findings);
        return report;
    }

    // A strap or insert is one place, however pressure is spread within it; only the whole can turn out.
    private static bool Pulls(IReadOnlyList<Support> places, PlanPressure pressure) =>
        places.Count == 1 && places[0].Press(null, 0, pressure).Least < 0.0;

    private static HangPlace Place(Lifting lifting, int index, Support place, Size3 box, PlanPressure? pressure, double weight)
    {
        if (place.Weight <= 0.0 || pressure is not { } found)
        {
            return new HangPlace(default, 0.0, 0.0, 0.0);
        }

        double newtons = place.Press(null, 0, found).Newtons;
        if (lifting is not StrapLifting straps)
        {
            return new HangPlace(place.Middle, newtons / weight, 1.0, 0.0);
        }

        bool alongX = straps.Lines[index].Along == Axis.X;
        return new HangPlace(
            place.Middle, newtons / weight, Math.Min(1.0, place.Length(alongX) / (alongX ? box.X : box.Y)), lifting.DynamicFactor * newtons / place.Weight);
    }

    private static double Tilt(Lifting lifting, Size3 box, Point3 centre)
    {
        Point3[] legs = lifting switch
        {
            StrapLifting straps =>
            [
                .. straps.Lines.SelectMany(line => line.Along == Axis.X
                    ? (Point3[])[new Point3(0.0, line.At.Metres, box.Z), new Point3(box.X, line.At.Metres, box.Z)]
                    : [new Point3(line.At.Metres, 0.0, box.Z), new Point3(line.At.Metres, box.Y, box.Z)]),
            ],
            InsertLifting inserts => [.. inserts.Points],
            _ => throw new ArgumentOutOfRangeException(nameof(lifting), lifting, "Straps or inserts."),
        };
        Point3 middle = default;
        foreach (Point3 leg in legs)
        {
            middle += leg * (1.0 / legs.Length);
        }

        double reach = legs.Max(leg => Math.Sqrt((leg.X - middle.X) * (leg.X - middle.X) + (leg.Y - middle.Y) * (leg.Y - middle.Y)));
        double hook = middle.Z + reach * Math.Tan(Math.Min(lifting.SlingAngle.Degrees, 89.0) * Math.PI / 180.0);
        double aside = Math.Sqrt((centre.X - middle.X) * (centre.X - middle.X) + (centre.Y - middle.Y) * (centre.Y - middle.Y));
        return Math.Atan2(aside, hook - centre.Z) * 180.0 / Math.PI;
    }

    private static void Judge(Lifting lifting, HangReport hang, bool unbalanced, Point3 centre, DiagnosticBag findings)
    {
        string middle = string.Create(null, $"({centre.X * 1e3:0}, {centre.Y * 1e3:0}, {centre.Z * 1e3:0}) mm");
        if (lifting is InsertLifting { TestedCapacity: { } capacity } && capacity.Newtons < hang.InsertNewtons)
        {
            findings.Add(StrengthFindings.InsertTooWeak.At(
                $"an insert was tested to {capacity.Newtons / 1e3:0.##} kN; 4 times the {hang.LegNewtons / 1e3:0.##} kN in its leg are {hang.InsertNewtons / 1e3:0.##} kN",
                "use more inserts or steeper legs, test a stronger insert in this bed, or lift by straps", Lifting.Key("tested_capacity")));
        }

        if (hang.SlingDegrees < SlingLoad.LeastDegrees)
        {
            findings.Add(StrengthFindings.SlingTooFlat.At(
                $"legs at {hang.SlingDegrees:0.#} deg from the horizontal carry {hang.LegNewtons / 1e3:0.##} kN each; below {SlingLoad.LeastDegrees:0} deg no sling is used",
                "use longer legs or a spreader beam", Lifting.Key("sling_angle")));
        }

        if (unbalanced)
        {
            findings.Add(StrengthFindings.HangUnbalanced.At(
                $"the centre of gravity {middle} is not borne from all sides: shares of the weight {string.Join(", ", hang.Places.Select(place => $"{100.0 * place.Share:0} %"))}",
                "set straps or inserts on both sides of it, over hardened mix", Lifting) with
            { Where = centre });
        }
        else if (hang.TiltDegrees > MostTilt)
        {
            findings.Add(StrengthFindings.HangTilted.At(
                $"the unit tilts by {hang.TiltDegrees:0.#} deg when it hangs free; its centre of gravity is {middle}",
                "shift the straps towards it, or use legs of different length", Lifting) with
            { Where = centre });
        }

        for (int i = 0; i < hang.Places.Count; i++)
        {
            if (lifting is StrapLifting && hang.Places[i].BearingShare < LeastBearing)
            {
                findings.Add(StrengthFindings.StrapBearsLittle.At(
                    $"strap {i + 1} lies on hardened mix over {100.0 * hang.Places[i].BearingShare:0} % of its length under the unit",
                    "move it clear of openings in the underside", Lifting.Key("lines").Item(i)));
            }
        }
    }
}
