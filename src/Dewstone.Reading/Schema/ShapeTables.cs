using Dewstone.Model.Description;
using Dewstone.Model.Quantities;
using Dewstone.Reading.Binding;

namespace Dewstone.Reading.Schema;

/// <summary>Key tables of the simple bodies that cavities and keep zones are made of.</summary>
internal static class ShapeTables
{
    private static readonly KeyOf<Point3> Centre = Key.Must("centre", Forms.Point, "centre in the unit frame");
    private static readonly KeyOf<Length> Diameter = Key.Must("diameter", Forms.Extent, "diameter");
    private static readonly KeyOf<Size3> Size = Key.Must("size", Forms.Size, "full edges or axes along x, y, z");
    private static readonly KeyOf<Length> Rounding =
        Key.May("rounding", Forms.Radius, "radius of edges and corners, at most half the smallest edge", fallback: "0 mm");

    private static readonly TableForm<SolidForm> SphereTable = new("a sphere", [Centre, Diameter],
        bound => new SphereForm { Centre = bound.Get(Centre), Diameter = bound.Get(Diameter) });

    private static readonly TableForm<SolidForm> EllipsoidTable = new("an ellipsoid", [Centre, Size],
        bound => new EllipsoidForm { Centre = bound.Get(Centre), Size = bound.Get(Size) });

    private static readonly TableForm<SolidForm> BlockTable = new("a block", [Centre, Size, Rounding],
        bound => new BlockForm { Centre = bound.Get(Centre), Size = bound.Get(Size), Rounding = bound.Get(Rounding) },
        bound =>
        {
            if (bound.Has(Size, out Size3 size))
            {
                Rules.FitsHalf(bound, Rounding, Math.Min(size.X, Math.Min(size.Y, size.Z)));
            }
        });

    /// <summary>A ball.</summary>
    public static readonly KeyOf<SolidForm> Sphere = Key.Must("sphere", SphereTable, "a ball");

    /// <summary>An ellipsoid.</summary>
    public static readonly KeyOf<SolidForm> Ellipsoid = Key.Must("ellipsoid", EllipsoidTable, "an ellipsoid with its axes along x, y, z");

    /// <summary>An upright block.</summary>
    public static readonly KeyOf<SolidForm> Block = Key.Must("block", BlockTable, "an upright block, with rounded edges if wished");

    /// <summary>The body that stands in a table with the three keys.</summary>
    /// <param name="bound">Table.</param>
    /// <returns>The body; null when none of the three stands.</returns>
    public static SolidForm? Find(Bound bound) => bound.MaybeOf(Sphere) ?? bound.MaybeOf(Ellipsoid) ?? bound.MaybeOf(Block);
}
