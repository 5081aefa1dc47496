using System.Xml.Linq;
using Dewstone.Jobs.Emission;
using Dewstone.Jobs.Emission.Report;
using Dewstone.Jobs.Tests.Emission.Pictures;
using Dewstone.Model.Description;
using Dewstone.Model.Diagnostics;
using Dewstone.Model.Results;

namespace Dewstone.Jobs.Tests.Emission.Report;

public sealed class ReportEmitterTests
{
    [Fact]
    public void Page_is_well_formed_and_its_tables_and_pictures_are_told()
    {
        XElement root = SamplePage.Of(Samples.Job()).Root;

        Assert.Equal("en", (string?)root.Attribute("lang"));
        Assert.NotEmpty(root.Descendants("table"));
        Assert.All(root.Descendants("table"), table =>
        {
            Assert.NotNull(table.Element("caption"));
            Assert.All(table.Element("thead")!.Descendants("th"), head => Assert.Equal("col", (string?)head.Attribute("scope")));
            int columns = table.Element("thead")!.Descendants("th").Count();
            Assert.All(table.Element("tbody")!.Elements("tr"), row => Assert.Equal(columns, row.Elements().Count()));
        });
        Assert.All(root.Descendants("img"), picture => Assert.False(string.IsNullOrEmpty((string?)picture.Attribute("alt"))));
        Assert.All(
            root.Descendants().Where(element => element.Name.LocalName is "svg" or "canvas"),
            picture => Assert.False(string.IsNullOrEmpty((string?)picture.Attribute("aria-label"))));
        string[] ids = [.. root.Descendants().Attributes("id").Select(id => id.Value)];
        Assert.Equal(ids.Length, ids.Distinct(StringComparer.Ordinal).Count());
    }

    /// <summary>Web Content Accessibility Guidelines 2.2, 1.4.3: text at least 4.5 : 1 against its ground; contrast and relative luminance as defined there (from memory).</summary>
    [Fact]
    public void Text_stands_out_from_its_ground_by_light_and_by_dark()
    {
        string[] sets = [.. SamplePage.Of(Samples.Job()).Text.Split(":root {").Skip(1).Select(set => set[..set.IndexOf('}')])];

        Assert.Equal(2, sets.Length);
        foreach (string set in sets)
        {
            double Luminance(string ink)
            {
                int at = set.IndexOf($"--{ink}: #", StringComparison.Ordinal) + ink.Length + 5;
                double Part(int i)
                {
                    double share = Convert.ToInt32(set.Substring(at + 2 * i, 2), 16) / 255.0;
                    return share <= 0.04045 ? share / 12.92 : Math.Pow((share + 0.055) / 1.055, 2.4);
                }

                return 0.2126 * Part(0) + 0.7152 * Part(1) + 0.0722 * Part(2);
            }

            double Contrast(string one, string other) =>
                (Math.Max(Luminance(one), Luminance(other)) + 0.05) / (Math.Min(Luminance(one), Luminance(other)) + 0.05);

            // Lettering on paper; the plan's on the unit; doses as numbers on what sets.
            Assert.All(
                ((string Text, string Ground)[])[("line", "paper"), ("quiet", "paper"), ("line", "elsewhere"), ("line", "solid"), ("line", "excess")],
                pair => Assert.True(Contrast(pair.Text, pair.Ground) >= 4.5, $"{pair} {Contrast(pair.Text, pair.Ground)}"));
        }
    }

    [Fact]
    public void Page_loads_nothing()
    {
        SamplePage page = SamplePage.Of(Samples.Job());

        string policy = page.Root.Descendants("meta").Select(meta => (string?)meta.Attribute("content")).First(text => text?.Contains("default-src") == true)!;
        Assert.StartsWith("default-src 'none'; img-src data:; style-src 'sha256-", policy);
        Assert.DoesNotContain("unsafe", policy);
        Assert.DoesNotContain("http://", page.Text);
        Assert.DoesNotContain("https://", page.Text);
        Assert.DoesNotContain("@import", page.Text);
        Assert.All(
            page.Root.Descendants().Attributes().Where(attribute => attribute.Name.LocalName is "src" or "href" or "action" or "data"),
            attribute => Assert.True(attribute.Value.StartsWith('#') || attribute.Value.StartsWith("data:image/png;base64,", StringComparison.Ordinal), attribute.ToString()));
        Assert.DoesNotContain(page.Root.Descendants().Attributes(), attribute => attribute.Name.LocalName.StartsWith("on", StringComparison.Ordinal));
        Assert.DoesNotContain(page.Root.Descendants().Attributes(), attribute => attribute.Name.LocalName == "style");
    }

    [Fact]
    public void Text_of_users_stays_text()
    {
        const string Nasty = "</title><script>alert('x')</script> & \"Pebble\" <img src=x onerror=\"y\"/>";
        CompiledJob job = Samples.Build(needles: null, new Tonight { MixBatch = Nasty }, [Samples.SolidError with { Message = Nasty, Remedy = Nasty, AcceptedBecause = Nasty }]);
        JobDescription description = job.Description;
        SamplePage plain = SamplePage.Of(job), page = SamplePage.Of(job with
        {
            Description = description with
            {
                Unit = description.Unit with { Name = Nasty },
                Mix = description.Mix with { Name = Nasty, Currency = Nasty, Origin = new MixOrigin(MixOriginKind.Handbook, Nasty) },
                Printer = description.Printer with { Name = Nasty },
            },
            Requirements = [.. job.Requirements.Select(requirement => requirement with { Feature = Nasty, Quantity = Nasty, AcceptedBecause = Nasty })],
            Inputs = [new InputFile(Nasty, Nasty, Nasty)],
            ToolVersion = Nasty,
        });

        Assert.Equal(Nasty, page.Part("sheet").Descendants("h1").Single().Value);
        Assert.Equal($"{Nasty}: report", page.Root.Descendants("title").Single().Value);
        Assert.Equal(plain.Root.Descendants("script").Count(), page.Root.Descendants("script").Count());
        Assert.Equal(plain.Root.Descendants("img").Count(), page.Root.Descendants("img").Count());
    }

    [Fact]
    public void Ready_job_has_its_load_its_doses_and_lines_to_sign()
    {
        SamplePage page = SamplePage.Of(Samples.Build(
            new NeedleTable
            {
                Needles =
                [
                    new NeedleState { Column = 1, Row = 1, Condition = NeedleCondition.Blocked }, new NeedleState { Column = 2, Row = 1, Condition = NeedleCondition.Limited },
                    new NeedleState { Column = 3, Row = 1, Condition = NeedleCondition.Limited }, new NeedleState { Column = 99, Row = 1, Condition = NeedleCondition.Blocked },
                ],
            },
            tonight: null, findings: []));
        string sheet = page.TextOf("sheet");

        Assert.Contains("Ready to print", sheet);
        Assert.Contains(new Fingerprint(0x123456789ABCDEF).Grouped(), sheet);
        Assert.Contains(new Fingerprint(0xFEDCBA987654321).Grouped(), sheet);
        Assert.Contains("1 blocked, 2 limited of 96", sheet);
        Assert.Contains("mix to spread61.2 kg", sheet);
        Assert.Contains("0.11 L", sheet);
        Assert.Contains("3 of 50 mm, the lowest loose under the unit", sheet);
        Assert.Contains("turned 0°, corner at x 150, y 100, z 50 mm in the bin, layers straight", sheet);
        Assert.Contains("respirator", sheet);
        Assert.Single(page.Part("sheet").Descendants("table"), table => (string?)table.Attribute("class") == "sign");
        Assert.Contains("The printer shows job " + new Fingerprint(0x123456789ABCDEF).Grouped(), sheet);
        Assert.Equal(8, page.Part("sheet").Descendants("input").Count());
        Assert.Equal(3, page.Part("sheet").Descendants("ol").Single().Elements("li").Count());
        Assert.NotNull(page.Part("plate-doses"));
        Assert.Contains("4 doses", page.TextOf("doses"));
        Assert.Equal("sheet", (string?)page.Root.Descendants("section").First().Attribute("id"));
    }

    [Fact]
    public void Held_job_says_so_and_gives_out_no_doses()
    {
        SamplePage page = SamplePage.Of(Samples.HeldJob());

        Assert.Equal("HELD", page.Part("sheet").Descendants("p").Single(text => (string?)text.Attribute("class") == "state").Value);
        Assert.Contains(Samples.SolidError.Message, page.TextOf("sheet"));
        Assert.DoesNotContain(page.Root.Descendants().Attributes("id"), id => id.Value == "plate-doses");
        Assert.DoesNotContain(page.Root.Descendants("input"), input => (string?)input.Attribute("name") == "doses");
        Assert.DoesNotContain(page.Part("sheet").Descendants("table"), table => (string?)table.Attribute("class") == "sign");
        Assert.DoesNotContain("28.11 mL", page.Text);
        Assert.DoesNotContain("mix to spread", page.TextOf("sheet"));
        Assert.Empty(page.Part("sheet").Descendants("input"));
        Assert.Empty(page.Part("sheet").Descendants("ol"));
        Assert.Contains("its doses are not given out", page.TextOf("doses"));
        Assert.Empty(page.Part("doses").Descendants("svg"));
    }

    [Fact]
    public void Every_requirement_and_finding_appears()
    {
        RequirementResult met = Samples.Job().Requirements[0];
        Diagnostic released = Samples.SolidError with { Code = "DW3012", Message = "released message", AcceptedBecause = "seen in the yard", Where = null };
        Diagnostic note = Samples.SolidError with { Code = "DW2010", Severity = Severity.Note, Message = "short waves", Remedy = "lengthen them", Location = null, Where = null };
        CompiledJob job = Samples.Build(needles: null, tonight: null, [Samples.SolidError, released, note]) with
        {
            Requirements =
            [
                met,
                met with { Id = "clear", Feature = "east-west", Op = ">=", Limit = 0.2, Value = 0.17124, Unit = "m", Quantity = "clear opening" },
                met with { Id = "wall.min", Op = ">=", Limit = 60.0, Value = 41.0, Unit = "mm", Quantity = "least neck", AcceptedBecause = "foot only" },
            ],
        };
        SamplePage page = SamplePage.Of(job);
        string[] Rows(string caption) =>
        [
            .. page.Part("verdict").Elements("table").Single(table => table.Element("caption")!.Value == caption)
                .Element("tbody")!.Elements("tr").Select(row => string.Join('|', row.Elements().Select(cell => cell.Value))),
        ];

        Assert.Equal(
        [
            "mass on the hook|at most 2 kg|0.8 kg|1.2 kg|met|require.mass.max; units/pebble.unit.yaml, line 30",
            "clear opening (east-west)|at least 200 mm|171.2 mm|−28.8 mm|NOT\u00a0MET|require.mass.max; units/pebble.unit.yaml, line 30",
            "least neck|at least 60 mm|41 mm|−19 mm|released: foot only|require.mass.max; units/pebble.unit.yaml, line 30",
        ], Rows("Requirements"));
        Assert.Equal(
        [
            "DW3999|error|shape match 0.71 is below 0.80|make the walls thicker|units/pebble.unit.yaml, line 33; x 50, y 25, z 12.3 mm in the unit",
            "DW3012|error, released: seen in the yard|released message|make the walls thicker|units/pebble.unit.yaml, line 33",
            "DW2010|note|short waves|lengthen them|",
        ], Rows("Findings"));
        Assert.Contains("seen in the yard", page.TextOf("sheet"));
    }

    [Fact]
    public void Page_of_the_block_is_light_and_the_same_with_one_thread_and_two()
    {
        CompiledJob job = SampleJob.Block() with { Estimate = Samples.Job().Estimate };
        SamplePage one = SamplePage.Of(job), two = SamplePage.Of(job, threads: 2);

        Assert.True(one.File.Bytes.Span.SequenceEqual(two.File.Bytes.Span));
        Assert.InRange(one.File.Bytes.Length, 500_000, ReportEmitter.MostBytes);
        XElement hand = one.Part("hand");
        int Triangles(string body) => int.Parse(((string)hand.Attribute($"data-{body}")!).Split(' ')[1]);
        Assert.InRange(Triangles("predicted"), 20_000, ThinSurface.MostTriangles);
        Assert.InRange(Triangles("wanted"), 5_000, ThinSurface.MostTriangles);
        Assert.InRange(Triangles("voids"), 5_000, ThinSurface.MostTriangles);
    }

    [Fact]
    public void Trials_stand_with_their_shares_and_the_picture_of_doubt()
    {
        SamplePage with = SamplePage.Of(Samples.Job() with { Trials = Samples.Trials() }), without = SamplePage.Of(Samples.Job());
        string[] rows = [.. with.Part("trials").Descendants("tbody").Elements("tr").Select(row => string.Join('|', row.Elements().Select(cell => cell.Value)))];

        Assert.Equal(["mass on the hook at dig-out|at most 3 kg|3 of 4|30 to 95 %|2.5 kg|2.4 kg to 3.1 kg|bed temperature (−0.900)", "bed temperature|2 K|not measured tonight"], rows);
        Assert.Equal("data:image/png;base64,BQYHCA==", (string?)Assert.Single(with.Part("trials").Descendants("img")).Attribute("src"));
        Assert.Contains("No trials were made", without.TextOf("trials"));
        Assert.Empty(without.Part("trials").Descendants("img"));
    }

    [Fact]
    public void Needle_map_marks_each_needle_by_its_state_and_says_when_nothing_is_known()
    {
        NeedleTable table = new()
        {
            Needles =
            [
                new NeedleState { Column = 1, Row = 1, Condition = NeedleCondition.Blocked, Gain = 0.2 }, new NeedleState { Column = 2, Row = 1, Condition = NeedleCondition.Limited, Gain = 0.91 },
                new NeedleState { Column = 3, Row = 1, Condition = NeedleCondition.Ok, Gain = 1.04 },
            ],
        };
        XElement part = SamplePage.Of(Samples.Build(table, tonight: null, findings: [])).Part("conditions");
        int Marks(string kind, char each) => ((string)part.Descendants("path").Single(path => (string?)path.Attribute("class") == kind).Attribute("d")!).Count(letter => letter == each);

        Assert.Equal((94, 1, 1), (Marks("ok", 'h'), Marks("limited", 'M'), Marks("dead", 'M')));
        Assert.Contains("0.910 to 1.040", part.Value);
        Assert.Contains("No needles file was given", SamplePage.Of(Samples.Job()).TextOf("conditions"));
    }

    [Fact]
    public void No_rule_of_the_page_has_a_namesake()
    {
        string[] names =
        [
            .. ReportAssets.Read("report.css").Split('\n').Where(line => line.Contains('{', StringComparison.Ordinal) && line[0] is not (' ' or '@')).Select(line => line[..line.IndexOf('{', StringComparison.Ordinal)]),
        ];
        Assert.NotEmpty(names);
        Assert.Equal(names.Distinct(), names);
    }
}
