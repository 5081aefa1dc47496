using System.Globalization;
using Dewstone.Reading.Binding;
using Dewstone.Reading.Quantities;
using static Dewstone.Reading.Tests.Binding.KeyPlace;

namespace Dewstone.Reading.Tests.Binding;

/// <summary>Values that a form must refuse, each with the code that says why; the mark stands where the finding must point.</summary>
internal static class BadValues
{
    public static IEnumerable<(string Value, string Code)> Of(Form form)
    {
        yield return ($"{Mark}~", "DW1012");
        foreach ((string, string) bad in OfSort(form))
        {
            yield return bad;
        }
    }

    private static IEnumerable<(string Value, string Code)> OfSort(Form form)
    {
        string sort = form.GetType().Name;
        return sort.Split('`')[0] switch
        {
            "QuantityForm" => Scalar(form).Concat(Quantity(form)),
            "NumberForm" => Scalar(form).Concat(Number(form)),
            "WholeNumberForm" => Scalar(form).Concat(Whole(form)),
            "WordForm" => Scalar(form).Append(($"{Mark}quite-another", "DW1020")),
            "OriginForm" => Scalar(form).Append(($"{Mark}guessed", "DW1020")),
            "TextForm" => Scalar(form).Append(($"{Mark}\"\"", "DW1024")),
            "DateForm" => Scalar(form).Append(($"{Mark}2027-02-30", "DW1023")),
            "TimeOfDayForm" => Scalar(form).Append(($"{Mark}24:00", "DW1023")),
            "RowForm" => Row(form),
            "MappedForm" => OfSort(form.Inner.Single()),
            "ListForm" => List(form),
            "TableForm" => [($"{Mark}[1, 2]", "DW1013"), ($"{Mark}word", "DW1013")],
            "EitherForm" => [($"{Mark}[1, 2]", "DW1013")],
            _ => throw new NotSupportedException(sort),
        };
    }

    private static IEnumerable<(string Value, string Code)> Scalar(Form form)
    {
        yield return ($"{Mark}[{form.Example}]", "DW1013");
        yield return ($"{Mark}{{a: {form.Example}}}", "DW1013");
    }

    private static IEnumerable<(string Value, string Code)> Quantity(Form form)
    {
        QuantityKind kind = Property<QuantityKind>(form, "Kind");
        string example = form.Example;
        string number = example[..example.IndexOf(' ')];
        string other = QuantityKinds.All.First(k => k.Name != kind.Name && kind.Find(k.Units[0].Symbol) is null).Units[0].Symbol;
        yield return (Mark + number, "DW1016");
        yield return ($"{Mark}{number} {other}", "DW1017");
        yield return ($"{Mark}{number} zz", "DW1017");
        yield return ($"{Mark}.nan {kind.Units[0].Symbol}", "DW1018");
        yield return ($"{Mark}\"{number},5 {kind.Units[0].Symbol}\"", "DW1018");
        yield return (Mark + Beyond(Property<string>(form, "Most"), 1), "DW1019");
        yield return (Mark + Beyond(Property<string>(form, "Least"), -1), "DW1019");
    }

    private static IEnumerable<(string Value, string Code)> Number(Form form)
    {
        double least = Property<double>(form, "Least");
        double most = Property<double>(form, "Most");
        yield return ($"{Mark}{form.Example} kg", "DW1017");
        yield return ($"{Mark}.inf", "DW1018");
        yield return (Mark + (least - 1e-3).ToString(CultureInfo.InvariantCulture), "DW1019");
        yield return (Mark + (most + 1e-3).ToString(CultureInfo.InvariantCulture), "DW1019");
    }

    private static IEnumerable<(string Value, string Code)> Whole(Form form)
    {
        long least = Property<long>(form, "Least");
        long most = Property<long>(form, "Most");
        yield return ($"{Mark}{form.Example} kg", "DW1017");
        yield return ($"{Mark}0o7", "DW1017");
        yield return ($"{Mark}{least}.5", "DW1021");
        yield return ($"{Mark}{least - 1}", "DW1019");
        yield return ($"{Mark}{most + 1}", "DW1019");
    }

    private static IEnumerable<(string Value, string Code)> Row(Form form)
    {
        Form[] columns = [.. form.Inner];
        yield return ($"{Mark}{columns[0].Example}", "DW1013");
        yield return ($"{Mark}[{columns[0].Example}]", "DW1022");
        for (int i = 0; i < columns.Length; i++)
        {
            foreach ((string value, string code) in Of(columns[i]))
            {
                yield return ("[" + string.Join(", ", columns.Select((column, j) => j == i ? value : column.Example)) + "]", code);
            }
        }
    }

    private static IEnumerable<(string Value, string Code)> List(Form form)
    {
        Form item = form.Inner.Single();
        yield return ($"{Mark}word", "DW1013");
        if (Property<int>(form, "Fewest") > 0)
        {
            yield return ($"{Mark}[]", "DW1022");
        }

        int count = Math.Max(1, Property<int>(form, "Fewest"));
        foreach ((string value, string code) in Of(item))
        {
            yield return ("[" + string.Join(", ", Enumerable.Repeat(item.Example, count - 1).Append(value)) + "]", code);
        }
    }

    // A little more than the greatest or less than the least, in the same unit.
    private static string Beyond(string limit, int direction)
    {
        int blank = limit.IndexOf(' ');
        decimal number = decimal.Parse(limit.AsSpan(0, blank), NumberStyles.Float, CultureInfo.InvariantCulture);
        // South and west are counted downwards.
        int sign = limit[(blank + 1)..] is "S" or "W" ? -1 : 1;
        decimal beyond = number == 0 ? direction * 1e-3m : number + (sign * direction * Math.Abs(number) * 1e-3m);
        return beyond.ToString(CultureInfo.InvariantCulture) + limit[blank..];
    }

    private static T Property<T>(Form form, string name) => (T)form.GetType().GetProperty(name)!.GetValue(form)!;
}
