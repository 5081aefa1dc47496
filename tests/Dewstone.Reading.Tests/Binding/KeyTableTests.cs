using Dewstone.Model.Diagnostics;
using Dewstone.Reading.Binding;
using Dewstone.Reading.Schema;
using static Dewstone.Reading.Tests.Binding.KeyPlace;

namespace Dewstone.Reading.Tests.Binding;

/// <summary>Malformed files made from the key tables: whatever key a newcomer adds is tried at once.</summary>
public sealed class KeyTableTests
{
    public static TheoryData<DescriptionKind> AllKinds => [.. Kinds.All];

    [Theory]
    [MemberData(nameof(AllKinds))]
    public void Example_of_each_key_reads(DescriptionKind kind) =>
        Try(kind, place => [(place.Write(Word(kind), $"{place.Key.Name}: {place.Key.Example}"), "", "")]);

    [Theory]
    [MemberData(nameof(AllKinds))]
    public void Bad_value_of_each_key_is_found_at_its_place(DescriptionKind kind) =>
        Try(kind, place => BadValues.Of(place.Key.Form).Select(bad => (place.Write(Word(kind), Entry(place, bad.Value)), bad.Code, "")));

    [Theory]
    [MemberData(nameof(AllKinds))]
    public void Unknown_neighbour_of_each_key_is_found_and_the_key_suggested(DescriptionKind kind) =>
        Try(kind, place =>
        {
            string wrong = Misspelt(place);
            string good = $"{place.Key.Name}: {place.Key.Example}";
            return [(place.Write(Word(kind), good, $"{Mark}{wrong}: {place.Key.Example}"), "DW1011",
                place.Key.Name.Length == 1 ? "its keys are " : $"did you mean `{place.Key.Name}`?")];
        });

    [Theory]
    [MemberData(nameof(AllKinds))]
    public void Missing_key_is_found(DescriptionKind kind) =>
        Try(kind, place =>
        {
            ITable table = place.Tables[^1];
            bool isFirstOfWay = table.Ways.Any(way => way.Selector is null && way.Keys[0] == place.Key);
            bool isSelector = table.Ways.Any(way => way.Selector == place.Key);
            return !place.Key.Required || isFirstOfWay || isSelector ? [] : [(place.Write(Word(kind)), "DW1012",
                $"add `{place.Key.Name}: ")];
        });

    [Theory]
    [MemberData(nameof(AllKinds))]
    public void Key_given_twice_is_found(DescriptionKind kind) =>
        Try(kind, place =>
        {
            string good = $"{place.Key.Name}: {place.Key.Example}";
            return [(place.Write(Word(kind), good, Mark + good), "DW1006", "keep one of the two")];
        });

    [Theory]
    [MemberData(nameof(AllKinds))]
    public void Each_key_is_documented_and_its_default_reads(DescriptionKind kind)
    {
        foreach (KeyPlace place in All(DescriptionTables.For(kind)))
        {
            Assert.Matches("^[a-z][a-z0-9_]*$", place.Key.Name);
            Assert.False(string.IsNullOrWhiteSpace(place.Key.Doc) || place.Key.Doc.EndsWith('.'), place.Name);
            if (place.Key.Fallback is not null)
            {
                Assert.False(place.Key.Required, place.Name);
                Assert.NotNull(place.Key.GetType().GetMethod("FallbackValue")!.Invoke(place.Key, null));
            }
        }
    }

    private static string Word(DescriptionKind kind) => DescriptionTables.Word(kind);

    private static string Misspelt(KeyPlace place)
    {
        string name = place.Key.Name + "q";
        return place.Tables[^1].Keys.Any(key => key.Name == name) ? name + "q" : name;
    }

    // A value that is nothing is pointed at by its key.
    private static string Entry(KeyPlace place, string value) =>
        value == $"{Mark}~" ? $"{Mark}{place.Key.Name}: ~" : $"{place.Key.Name}: {value}";

    private static void Try(DescriptionKind kind, Func<KeyPlace, IEnumerable<(string Text, string Code, string Remedy)>> cases)
    {
        List<string> failures = [];
        int count = 0;
        foreach (KeyPlace place in All(DescriptionTables.For(kind)))
        {
            foreach ((string text, string code, string remedy) in cases(place))
            {
                count++;
                if (Failure(kind, text, code, remedy) is { } failure)
                {
                    failures.Add($"{place.Name}: {failure}\n{text}");
                }
            }
        }

        Assert.True(failures.Count == 0, $"{failures.Count} of {count} cases failed:\n" + string.Join("\n", failures.Take(10)));
        Assert.True(count > 0 || kind == DescriptionKind.Tonight);
    }

    private static string? Failure(DescriptionKind kind, string marked, string code, string remedy)
    {
        int at = marked.IndexOf(Mark);
        string text = marked.Replace(Mark.ToString(), "");
        Diagnostic[] found = [.. Kinds.Findings(kind, text).Where(finding => finding.Severity == Severity.Error)];
        string all = string.Join(" | ",
            found.Select(finding => $"{finding.Code} {finding.Location?.Line}:{finding.Location?.Column} {finding.Message}; {finding.Remedy}"));
        if (code.Length == 0)
        {
            return found.Length == 0 ? null : "unexpected " + all;
        }

        if (found is not [{ } one] || one.Code != code)
        {
            return $"{code} expected, found {all}";
        }

        int line = marked[..Math.Max(0, at)].Count(c => c == '\n') + 1;
        int column = at - marked.LastIndexOf('\n', Math.Max(0, at));
        bool placed = at < 0 || (one.Location?.Line == line && one.Location.Column == column);
        return !placed ? $"{line}:{column} expected, found {all}"
            : one.Remedy.Length == 0 || !one.Remedy.Contains(remedy, StringComparison.Ordinal) ? $"remedy `{remedy}` expected, found {all}"
            : null;
    }
}
