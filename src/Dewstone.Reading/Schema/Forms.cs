using Dewstone.Model.Description;
using Dewstone.Model.Quantities;
using Dewstone.Reading.Binding;
using Dewstone.Reading.Quantities;

namespace Dewstone.Reading.Schema;

/// <summary>The forms that several key tables use. Ranges are wide: they catch slips of the unit or of a digit, not poor designs.</summary>
internal static class Forms
{
    private const double SecondsInYear = 31_557_600.0;

    /// <summary>A place in the unit frame, which may lie outside the box.</summary>
    public static readonly QuantityForm<Length> Coordinate = Length("-20 m", "20 m", "450 mm");

    /// <summary>An extent of something in the reef unit.</summary>
    public static readonly QuantityForm<Length> Extent = Length("1 mm", "20 m", "300 mm");

    /// <summary>A radius that may be nought.</summary>
    public static readonly QuantityForm<Length> Radius = Length("0 mm", "5 m", "40 mm");

    /// <summary>A name for people.</summary>
    public static readonly TextForm Name = new("a name of up to 80 characters", "east-west", 80);

    /// <summary>A path of another file.</summary>
    public static readonly TextForm File = new("the path of a file, relative to this one", "../mixes/estuary.mix.yaml", 1000);

    /// <summary>Yes or no.</summary>
    public static readonly WordForm<bool> Flag = new(("true", true), ("false", false));

    /// <summary>A share that may be nought.</summary>
    public static readonly QuantityForm<double> Share = ShareOf("0 %", "100 %", "95 %");

    /// <summary>A direction or angle of the compass.</summary>
    public static readonly QuantityForm<Angle> Bearing = AngleOf("0 deg", "360 deg", "270 deg");

    /// <summary>A seed of random numbers; whole numbers that other programs hold exactly.</summary>
    public static readonly WholeNumberForm<ulong> Seed = new(0, 9_007_199_254_740_991, "7", value => (ulong)value);

    /// <summary>A point in the unit frame.</summary>
    public static readonly RowForm<Point3> Point = new("a point [x, y, z]", "[450 mm, 450 mm, 50 mm]",
        v => new Point3(((Length)v[0]).Metres, ((Length)v[1]).Metres, ((Length)v[2]).Metres), Coordinate, Coordinate, Coordinate);

    /// <summary>Edges or axes.</summary>
    public static readonly RowForm<Size3> Size = new("a size [x, y, z]", "[900 mm, 900 mm, 100 mm]",
        v => new Size3(((Length)v[0]).Metres, ((Length)v[1]).Metres, ((Length)v[2]).Metres), Extent, Extent, Extent);

    /// <summary>A length.</summary>
    /// <param name="least">Least.</param>
    /// <param name="most">Greatest.</param>
    /// <param name="example">Example.</param>
    /// <returns>The form.</returns>
    public static QuantityForm<Length> Length(string least, string most, string example) =>
        new(QuantityKinds.Length, least, most, example, value => new Length(value));

    /// <summary>A mass.</summary>
    /// <inheritdoc cref="Length"/>
    public static QuantityForm<Mass> Mass(string least, string most, string example) =>
        new(QuantityKinds.Mass, least, most, example, value => new Mass(value));

    /// <summary>A density.</summary>
    /// <inheritdoc cref="Length"/>
    public static QuantityForm<Density> Density(string least, string most, string example) =>
        new(QuantityKinds.Density, least, most, example, value => new Density(value));

    /// <summary>A volume.</summary>
    /// <inheritdoc cref="Length"/>
    public static QuantityForm<Volume> Volume(string least, string most, string example) =>
        new(QuantityKinds.Volume, least, most, example, value => new Volume(value));

    /// <summary>A flow.</summary>
    /// <inheritdoc cref="Length"/>
    public static QuantityForm<FlowRate> Flow(string least, string most, string example) =>
        new(QuantityKinds.Flow, least, most, example, value => new FlowRate(value));

    /// <summary>A time.</summary>
    /// <inheritdoc cref="Length"/>
    public static QuantityForm<Duration> Time(string least, string most, string example) =>
        new(QuantityKinds.Time, least, most, example, value => new Duration(value));

    /// <summary>Years.</summary>
    /// <inheritdoc cref="Length"/>
    public static QuantityForm<double> Years(string least, string most, string example) =>
        new(QuantityKinds.Time, least, most, example, value => value / SecondsInYear);

    /// <summary>A temperature.</summary>
    /// <inheritdoc cref="Length"/>
    public static QuantityForm<Temperature> Temperature(string least, string most, string example) =>
        new(QuantityKinds.Temperature, least, most, example, value => new Temperature(value));

    /// <summary>An angle.</summary>
    /// <inheritdoc cref="Length"/>
    public static QuantityForm<Angle> AngleOf(string least, string most, string example) =>
        new(QuantityKinds.Angle, least, most, example, value => new Angle(value));

    /// <summary>A pressure.</summary>
    /// <inheritdoc cref="Length"/>
    public static QuantityForm<Pressure> Pressure(string least, string most, string example) =>
        new(QuantityKinds.Pressure, least, most, example, value => new Pressure(value));

    /// <summary>A force.</summary>
    /// <inheritdoc cref="Length"/>
    public static QuantityForm<Force> Force(string least, string most, string example) =>
        new(QuantityKinds.Force, least, most, example, value => new Force(value));

    /// <summary>A share.</summary>
    /// <inheritdoc cref="Length"/>
    public static QuantityForm<double> ShareOf(string least, string most, string example) =>
        Plain(QuantityKinds.Share, least, most, example);

    /// <summary>A quantity without a type of its own.</summary>
    /// <param name="kind">Kind.</param>
    /// <param name="least">Least.</param>
    /// <param name="most">Greatest.</param>
    /// <param name="example">Example.</param>
    /// <returns>The form.</returns>
    public static QuantityForm<double> Plain(QuantityKind kind, string least, string most, string example) =>
        new(kind, least, most, example, value => value);

    /// <summary>A number of layers or places, written with that word.</summary>
    /// <inheritdoc cref="Plain"/>
    public static QuantityForm<int> Counted(QuantityKind kind, string least, string most, string example) =>
        new(kind, least, most, example, value => (int)value, whole: true);

    /// <summary>A whole number.</summary>
    /// <param name="least">Least.</param>
    /// <param name="most">Greatest.</param>
    /// <param name="example">Example.</param>
    /// <returns>The form.</returns>
    public static WholeNumberForm<int> Whole(int least, int most, string example) => new(least, most, example, value => (int)value);

    /// <summary>A range from a smaller to a larger length.</summary>
    /// <param name="form">Form of both.</param>
    /// <param name="example">Example.</param>
    /// <returns>The form.</returns>
    public static RowForm<Band> Band(QuantityForm<Length> form, string example) =>
        new("a range [least, greatest]", example, v => new Band((Length)v[0], (Length)v[1]), form, form);
}
