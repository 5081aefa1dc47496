using Dewstone.Model.Description;
using Dewstone.Model.Quantities;
using Dewstone.Reading.Binding;

namespace Dewstone.Reading.Schema;

/// <summary>Key table of lifting: by straps, or by inserts of tested capacity.</summary>
internal static class LiftingTable
{
    private static readonly KeyOf<Axis> Along =
        Key.Must("along", new WordForm<Axis>(("y", Axis.Y), ("x", Axis.X)), "direction of the strap under the unit");
    private static readonly KeyOf<Length> X = Key.Must("x", Forms.Coordinate, "its position on x", "200 mm");
    private static readonly KeyOf<Length> Y = Key.Must("y", Forms.Coordinate, "its position on y", "200 mm");

    private static readonly TableForm<StrapLine> LineTable = new("a strap", [Along, X, Y],
        bound => new StrapLine(bound.Get(Along), bound.Stands(X) ? bound.Get(X) : bound.Get(Y)),
        ways: [Way.When(Along, "y", X), Way.When(Along, "x", Y)]);

    private static readonly KeyOf<string> By =
        Key.Must("by", new WordForm<string>(("straps", "straps"), ("inserts", "inserts")), "how it is lifted");

    private static readonly KeyOf<IReadOnlyList<StrapLine>> Lines =
        Key.Must("lines", new ListForm<StrapLine>(LineTable, 1, "straps"), "the straps under the unit",
            "[{along: y, x: 200 mm}, {along: y, x: 700 mm}]");

    private static readonly KeyOf<IReadOnlyList<Point3>> Points =
        Key.Must("points", new ListForm<Point3>(Forms.Point, 1, "points [x, y, z]",
            "[[200 mm, 450 mm, 900 mm], [700 mm, 450 mm, 900 mm]]"), "where the inserts are");

    private static readonly KeyOf<Length> Embedment =
        Key.Must("embedment", Forms.Length("10 mm", "2 m", "150 mm"), "how deep the inserts reach");

    private static readonly KeyOf<Force> TestedCapacity =
        Key.Must("tested_capacity", Forms.Force("1 N", "10000 kN", "12 kN"),
            "capacity of one insert found by test in this bed, without which inserts are not allowed");

    private static readonly KeyOf<string> Test = Key.Must("test", Forms.Name, "which test", "\"report 14\"");
    private static readonly KeyOf<Angle> SlingAngle = Key.May("sling_angle", Forms.AngleOf("15 deg", "90 deg", "60 deg"),
        "angle of the sling legs from the horizontal", fallback: "60 deg", starter: true);
    private static readonly KeyOf<double> Dynamic =
        Key.May("dynamic", new NumberForm(1, 5, "1.2"), "factor on the static load for hoisting", fallback: "1.2", starter: true);

    /// <summary>Lifting.</summary>
    public static readonly TableForm<Lifting> Table =
        new("lifting", [By, Lines, Points, Embedment, TestedCapacity, Test, SlingAngle, Dynamic], Make,
        ways: [Way.When(By, "straps", Lines), Way.When(By, "inserts", Points, Embedment, TestedCapacity, Test)]);

    private static Lifting Make(Bound bound) => bound.Get(By) == "straps"
        ? new StrapLifting { Lines = bound.Get(Lines), SlingAngle = bound.Get(SlingAngle), DynamicFactor = bound.Get(Dynamic) }
        : new InsertLifting
        {
            Points = bound.Get(Points),
            Embedment = bound.Get(Embedment),
            TestedCapacity = bound.Get(TestedCapacity),
            Test = bound.Get(Test),
            SlingAngle = bound.Get(SlingAngle),
            DynamicFactor = bound.Get(Dynamic),
        };
}
