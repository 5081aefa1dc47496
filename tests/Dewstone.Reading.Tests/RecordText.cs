using System.Collections;
using System.Globalization;
using System.Reflection;

namespace Dewstone.Reading.Tests;

/// <summary>A record as lines <c>path = value</c>, one for each simple value in it, computed members left out.</summary>
internal static class RecordText
{
    public static IReadOnlyList<string> Lines(object record)
    {
        List<string> lines = [];
        Add(lines, "", record);
        return lines;
    }

    private static void Add(List<string> lines, string path, object? value)
    {
        switch (value)
        {
            case null:
                lines.Add($"{path} = none");
                break;
            case string text:
                lines.Add($"{path} = \"{text}\"");
                break;
            case IEnumerable list:
                int i = 0;
                foreach (object? item in list)
                {
                    Add(lines, $"{path}[{i++}]", item);
                }

                lines.Add($"{path}.Count = {i}");
                break;
            case IFormattable simple when value.GetType().IsPrimitive || value is Enum or DateOnly or TimeOnly:
                lines.Add($"{path} = {simple.ToString(value is DateOnly ? "yyyy-MM-dd" : null, CultureInfo.InvariantCulture)}");
                break;
            case bool truth:
                lines.Add($"{path} = {(truth ? "yes" : "no")}");
                break;
            default:
                AddMembers(lines, path, value);
                break;
        }
    }

    private static void AddMembers(List<string> lines, string path, object record)
    {
        PropertyInfo[] members = [.. record.GetType().GetProperties().Where(member => member.SetMethod is not null).OrderBy(member => member.Name, StringComparer.Ordinal)];
        if (members.Length == 1 && record.GetType().IsValueType)
        {
            Add(lines, $"{path} {members[0].Name}", members[0].GetValue(record));
            return;
        }

        string prefix = path.Length == 0 ? "" : path + ".";
        if (record.GetType() is { IsValueType: false } type && type.BaseType != typeof(object))
        {
            lines.Add($"{path} is {type.Name}");
        }

        foreach (PropertyInfo member in members)
        {
            Add(lines, prefix + member.Name, member.GetValue(record));
        }
    }
}
