using Dewstone.Model.Description;
using Dewstone.Model.Diagnostics;
using Dewstone.Model.Quantities;
using Dewstone.Reading.Binding;
using Dewstone.Reading.Yaml;

namespace Dewstone.Reading.Schema;

/// <summary>Rules over several keys that more than one table needs.</summary>
internal static class Rules
{
    /// <summary>Holds that one value is not above another.</summary>
    /// <typeparam name="T">Type of both.</typeparam>
    /// <param name="bound">Table.</param>
    /// <param name="lower">Key of the smaller.</param>
    /// <param name="upper">Key of the larger.</param>
    public static void InOrder<T>(Bound bound, KeyOf<T> lower, KeyOf<T> upper)
        where T : struct, IComparable<T>
    {
        if (bound.Has(lower, out T a) && bound.Has(upper, out T b) && a.CompareTo(b) > 0)
        {
            string at = bound.Stands(upper) ? upper.Name : lower.Name;
            bound.Report(DescriptionFindings.WrongOrder, at, $"`{lower.Name}` is above `{upper.Name}`", "exchange the two, or correct one");
        }
    }

    /// <summary>Holds that a range begins with its smaller end.</summary>
    /// <param name="bound">Table.</param>
    /// <param name="key">Key of the range.</param>
    public static void InOrder(Bound bound, KeyOf<Band> key)
    {
        if (bound.Has(key, out Band? band) && band.From > band.To)
        {
            bound.Report(DescriptionFindings.WrongOrder, key.Name, $"`{key.Name}` begins with its larger end",
                "write the smaller value first");
        }
    }

    /// <summary>Holds that a radius is at most half the smallest side.</summary>
    /// <param name="bound">Table.</param>
    /// <param name="rounding">Key of the radius.</param>
    /// <param name="smallestMetres">Smallest side, m.</param>
    public static void FitsHalf(Bound bound, KeyOf<Length> rounding, double smallestMetres)
    {
        if (bound.Has(rounding, out Length radius) && radius.Metres > smallestMetres / 2.0)
        {
            bound.Report(DescriptionFindings.RoundingTooLarge, rounding.Name,
                $"the rounding of {Show(radius.Metres)} is more than half the smallest side of {Show(smallestMetres)}",
                $"make it at most {Show(smallestMetres / 2.0)}");
        }
    }

    /// <summary>
    /// Holds that no two items of some lists have the same name. Reads the text itself, so that it also works while other values of an
    /// item are at fault.
    /// </summary>
    /// <param name="bound">Table that holds the lists.</param>
    /// <param name="key">Key of the name within an item.</param>
    /// <param name="lists">Keys of the lists.</param>
    public static void Unique(Bound bound, string key, params string[] lists)
    {
        Dictionary<string, string> seen = new(StringComparer.Ordinal);
        foreach (string list in lists)
        {
            List<YamlNode> items = (((YamlMap)bound.Spot.Node).Find(list)?.Value as YamlList)?.Items ?? [];
            for (int i = 0; i < items.Count; i++)
            {
                string path = $"{list}[{i}].{key}";
                if ((items[i] as YamlMap)?.Find(key)?.Value is YamlScalar { IsNothing: false } name && !seen.TryAdd(name.Text, path))
                {
                    bound.Report(DescriptionFindings.NameTwice, path,
                        $"`{Quoting.Short(name.Text)}` is used twice, here and at `{seen[name.Text]}`",
                        "give each its own");
                }
            }
        }
    }

    /// <summary>A length for a message, in millimetres.</summary>
    /// <param name="metres">Length, m.</param>
    /// <returns>Text such as <c>450 mm</c>.</returns>
    public static string Show(double metres) => $"{Math.Round(metres * 1000.0, 3)} mm";
}
