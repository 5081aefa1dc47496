using System.Text;
using Dewstone.Model.Diagnostics;
using Dewstone.Reading.Yaml;

namespace Dewstone.Reading.Tests.Yaml;

public sealed class YamlTreeReaderTests
{
    public static TheoryData<string, string, int, int> BrokenTexts => new()
    {
        { "", "DW1008", 1, 1 },
        { "\n\n# only a remark\n", "DW1008", 1, 1 },
        { "---\n...\n", "DW1008", 1, 1 },
        { "~\n", "DW1008", 1, 1 },
        { "kind: mix\n---\nkind: mix\n", "DW1007", 2, 1 },
        { "box: [900 mm, 900 mm\nname: a\n", "DW1001", 1, 7 },
        { "name: \"a\n", "DW1001", 1, 7 },
        { "name: a: b\n", "DW1001", 1, 8 },
        { "a: 1\n b: 2\n", "DW1001", 2, 3 },
        { "a: 1\nb\nc: 2\n", "DW1001", 2, 1 },
        { "a: @b\n", "DW1001", 1, 4 },
        { "a: b\0c\n", "DW1001", 1, 5 },
        { "a: \u001b[31m\n", "DW1001", 1, 4 },
        { "a:\n\tb: 1\n", "DW1002", 2, 1 },
        { "a:\n  - 1\n  \t- 2\n", "DW1002", 3, 3 },
        { "a: 1\n\t\nb: 2\n", "DW1002", 2, 1 },
        { "a: &x 1\nb: *x\n", "DW1003", 1, 4 },
        { "a: 1\nb: *x\n", "DW1003", 2, 4 },
        { "a: !!int 1\n", "DW1003", 1, 4 },
        { "a: !thing {b: 1}\n", "DW1003", 1, 4 },
        { "a: &x [1]\n", "DW1003", 1, 4 },
        { "a: 1\nb: 2\na: 3\n", "DW1006", 3, 1 },
        { "a: {b: 1, b: 2}\n", "DW1006", 1, 11 },
        { "? [a, b]\n: 1\n", "DW1013", 1, 3 },
        { "{{a: 1}: 2}\n", "DW1013", 1, 2 },
        { new string('[', 40), "DW1004", 1, 33 },
    };

    [Theory]
    [MemberData(nameof(BrokenTexts))]
    public void Broken_text_is_found_at_its_place(string text, string code, int line, int column)
    {
        DiagnosticBag findings = new();

        YamlTreeReader.Read(text, "a.yaml", findings);

        Diagnostic found = Assert.Single(findings.Items);
        Assert.Equal((code, line, column), (found.Code, found.Location!.Line, found.Location.Column));
        Assert.NotEmpty(found.Remedy);
        Assert.DoesNotContain('\n', found.Message);
    }

    [Fact]
    public void Alias_bomb_is_refused_at_its_first_anchor()
    {
        StringBuilder text = new("a: &a [x, x, x, x, x, x, x, x, x]\n");
        for (char c = 'b'; c < 'z'; c++)
        {
            text.Append($"{c}: &{c} [{string.Join(", ", Enumerable.Repeat("*" + (char)(c - 1), 9))}]\n");
        }

        AssertOnly("DW1003", text.ToString());
    }

    [Theory]
    [InlineData("[")]
    [InlineData("{a: ")]
    [InlineData("- ")]
    public void Nesting_two_hundred_thousand_deep_is_refused_without_harm(string opening) =>
        AssertOnly("DW1004", string.Concat(Enumerable.Repeat(opening, 200_000)));

    [Fact]
    public void Keys_of_keys_two_hundred_thousand_deep_are_refused_without_harm() =>
        AssertOnly("DW1013", string.Concat(Enumerable.Repeat("? ", 200_000)));

    [Fact]
    public void List_beyond_the_most_values_is_refused() =>
        AssertOnly("DW1005", "a: [" + string.Concat(Enumerable.Repeat("1,", YamlTreeReader.MostEvents)) + "1]\n");

    [Fact]
    public void Nesting_as_deep_as_allowed_is_read()
    {
        DiagnosticBag findings = new();

        Assert.NotNull(YamlTreeReader.Read(new string('[', 32) + new string(']', 32), "a", findings));
        Assert.Empty(findings.Items);
    }

    [Fact]
    public void Place_of_each_value_is_its_first_character()
    {
        YamlMap map = Assert.IsType<YamlMap>(YamlTreeReader.Read("a: 1\nb:\n  - {c: \"2\"}\n  - d\n", "a", new DiagnosticBag()));

        YamlEntry b = map.Find("b")!;
        YamlList list = Assert.IsType<YamlList>(b.Value);
        YamlMap inner = Assert.IsType<YamlMap>(list.Items[0]);
        Assert.Equal(new TextPlace(1, 4), map.Find("a")!.Value.Place);
        Assert.Equal(new TextPlace(2, 1), b.Place);
        Assert.Equal(new TextPlace(3, 5), inner.Place);
        Assert.Equal(new TextPlace(3, 9), inner.Find("c")!.Place);
        Assert.Equal(new TextPlace(4, 5), list.Items[1].Place);
    }

    [Fact]
    public void Tab_after_a_value_does_no_harm()
    {
        DiagnosticBag findings = new();

        Assert.NotNull(YamlTreeReader.Read("a: 1\t# remark\nb: 2\n", "a", findings));
        Assert.Empty(findings.Items);
    }

    /// <summary>Texts cut, doubled and with characters exchanged, by a fixed seed: never an exception, and no null without a finding.</summary>
    [Fact]
    public void Damaged_sample_never_throws()
    {
        string sample = File.ReadAllText(SampleFiles.Unit);
        const string signs = "{}[],:-#&*!|>'\"%@` \t\n\r~?.0aé\u2028";
        ulong state = 2027;
        for (int i = 0; i < 3000; i++)
        {
            StringBuilder text = new(sample);
            for (int edits = 0; edits < 4; edits++)
            {
                state = (state * 6364136223846793005UL) + 1442695040888963407UL;
                int at = (int)((state >> 33) % (ulong)text.Length);
                switch ((state >> 20) % 3)
                {
                    case 0:
                        text.Remove(at, Math.Min(1 + (int)((state >> 40) % 30), text.Length - at));
                        break;
                    case 1:
                        text.Insert(at, signs[(int)((state >> 45) % (ulong)signs.Length)]);
                        break;
                    default:
                        text[at] = signs[(int)((state >> 45) % (ulong)signs.Length)];
                        break;
                }
            }

            FileReading<UnitFile> reading = DescriptionReader.UnitText(text.ToString(), "a");
            Assert.True(reading.Value is not null || reading.Diagnostics.Count > 0, text.ToString());
        }
    }

    private static void AssertOnly(string code, string text)
    {
        DiagnosticBag findings = new();

        Assert.Null(YamlTreeReader.Read(text, "a", findings));
        Assert.Equal(code, Assert.Single(findings.Items).Code);
    }
}
