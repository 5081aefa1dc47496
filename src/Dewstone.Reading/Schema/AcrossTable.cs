using Dewstone.Model.Description;
using Dewstone.Model.Diagnostics;
using Dewstone.Model.Quantities;
using Dewstone.Reading.Binding;

namespace Dewstone.Reading.Schema;

/// <summary>Key table of a position given by the coordinates across a direction.</summary>
internal static class AcrossTable
{
    private static readonly KeyOf<Length> X = Key.May("x", Forms.Coordinate, "x of the centre line");
    private static readonly KeyOf<Length> Y = Key.May("y", Forms.Coordinate, "y of the centre line");
    private static readonly KeyOf<Length> Z = Key.May("z", Forms.Coordinate, "z of the centre line", "270 mm");

    /// <summary>The table.</summary>
    public static readonly TableForm<Across> Table = new("a position", [X, Y, Z],
        bound => new Across(bound.Maybe(X), bound.Maybe(Y), bound.Maybe(Z)));

    /// <summary>Holds that exactly the coordinates across a direction are given.</summary>
    /// <param name="bound">Table that holds the position.</param>
    /// <param name="key">Key of the position; empty when its coordinates stand in the table itself.</param>
    /// <param name="along">Direction.</param>
    /// <param name="at">Coordinates.</param>
    public static void Check(Bound bound, string key, Axis along, Across at)
    {
        (Axis Axis, Length? Value)[] given = [(Axis.X, at.X), (Axis.Y, at.Y), (Axis.Z, at.Z)];
        string right = string.Join(" and ", given.Where(g => g.Axis != along).Select(g => $"`{Letter(g.Axis)}`"));
        foreach ((Axis axis, Length? value) in given)
        {
            if (value is not null == (axis == along))
            {
                string letter = Letter(axis);
                bound.Report(DescriptionFindings.WrongPlaceKey, value is null ? key : $"{key}.{letter}",
                    value is null
                        ? $"`{letter}` is missing from `{key}` of something along {Letter(along)}"
                        : $"`{letter}` says nothing about something along {letter}",
                    $"along {Letter(along)} the position is given by {right}");
            }
        }
    }

    private static string Letter(Axis axis) => axis switch { Axis.X => "x", Axis.Y => "y", _ => "z" };
}
