using System.Text.Json;

namespace Dewstone.Cli.Tests.Commands;

public sealed class DiffTests : IDisposable
{
    private readonly SmallYard yard = new();

    public void Dispose() => yard.Dispose();

    [Fact]
    public async Task Unit_against_itself_is_no_difference_nor_is_a_remark_an_order_of_keys_or_a_name()
    {
        string same = yard.Write("same.unit.yaml", "# a remark\n\n" + SmallYard.Unit
            .Replace("box: [250 mm, 200 mm, 150 mm]\n", "")
            .Replace("rounding: 20 mm", "rounding: 2 cm   # in other words\nbox: [0.25 m, 200 mm, 150 mm]")
            .Replace("name: drain", "name: outlet").Replace("name: Small step", "name: Little step"));
        Words.Answer answer = await Words.Run("diff", yard.UnitFile, same, "--cells", "4", "--quiet");
        Assert.True(answer.Code == ExitCode.Done, answer.Output + answer.Error);
        Assert.Equal($"{yard.UnitFile} and {same}: no difference\n", answer.Output);
    }

    [Theory]
    [InlineData("oyster-step")]
    [InlineData("tide-sill")]
    [InlineData("wrack-block")]
    public async Task Example_against_itself_is_no_difference(string unit)
    {
        string file = Repository.Path("examples", "wrackline-bay", "units", $"{unit}.unit.yaml");
        Words.Answer answer = await Words.Run("diff", file, file, "--cells", "4", "--quiet");
        Assert.Equal((ExitCode.Done, $"{file} and {file}: no difference\n"), (answer.Code, answer.Output));
    }

    [Fact]
    public async Task Millimetre_of_a_tunnel_shows_in_the_wanted_solid_at_its_layers_only()
    {
        // A round tunnel of 60 mm at a height of 75 mm lies between 45 and 105 mm: in the slabs from 0, 50 and 100 mm.
        string wider = yard.Write("wider.unit.yaml", SmallYard.Unit.Replace("diameter: 60 mm", "diameter: 61 mm"));
        JsonElement diff = await Json(yard.UnitFile, wider);
        Assert.True(diff.GetProperty("differs").GetBoolean());
        JsonElement change = Assert.Single(diff.GetProperty("description").EnumerateArray());
        Assert.Equal(("unit.tunnels[drain].section.diameter", "60 mm", "61 mm"), (change.GetProperty("key").GetString(), change.GetProperty("old").GetString(), change.GetProperty("new").GetString()));
        JsonElement target = diff.GetProperty("target");
        Assert.Equal([0.0, 50.0, 100.0], target.GetProperty("slabs").EnumerateArray().Select(s => s.GetProperty("from_mm").GetDouble()));

        // pi/4 x (61^2 - 60^2) mm2 x 200 mm = 0.0190 L, exact; the edges of 20 mm take a little off both ends.
        Assert.InRange(target.GetProperty("removed_l").GetDouble(), 0.0150, 0.0195);
        Assert.Equal(0.0, target.GetProperty("added_l").GetDouble());
    }

    [Fact]
    public async Task Swapped_sides_give_the_mirrored_report()
    {
        string other = yard.Write("other.unit.yaml", SmallYard.Unit.Replace("diameter: 60 mm", "diameter: 80 mm").Replace("max: 40 kg", "max: 5 kg").Replace("box: [250 mm,", "box: [200 mm,").Replace("x: 125 mm", "x: 100 mm"));
        JsonElement there = await Json(yard.UnitFile, other), back = await Json(other, yard.UnitFile);
        foreach (string solid in (string[])["target", "predicted"])
        {
            JsonElement a = there.GetProperty(solid), b = back.GetProperty(solid);
            Assert.True(a.GetProperty("removed_l").GetDouble() > 0.0, a.ToString());
            Assert.Equal(a.GetProperty("added_l").GetDouble(), b.GetProperty("removed_l").GetDouble());
            Assert.Equal(a.GetProperty("removed_l").GetDouble(), b.GetProperty("added_l").GetDouble());
            Assert.Equal(a.GetProperty("slabs").EnumerateArray().Select(s => s.GetProperty("added_l").GetDouble()), b.GetProperty("slabs").EnumerateArray().Select(s => s.GetProperty("removed_l").GetDouble()));
        }

        foreach (string list in (string[])["description", "findings", "figures"])
        {
            string[] forth = [.. there.GetProperty(list).EnumerateArray().Select(c => $"{c.GetProperty("old")} -> {c.GetProperty("new")}").Order(StringComparer.Ordinal)];
            string[] mirrored = [.. back.GetProperty(list).EnumerateArray().Select(c => $"{c.GetProperty("new")} -> {c.GetProperty("old")}").Order(StringComparer.Ordinal)];
            Assert.NotEmpty(forth);
            Assert.Equal(forth, mirrored);
        }

        Assert.Contains(there.GetProperty("findings").EnumerateArray(), f => f.GetProperty("change").GetString() == "new" && f.GetProperty("new_level").GetString() == "error");
        Assert.Contains(back.GetProperty("findings").EnumerateArray(), f => f.GetProperty("change").GetString() == "gone" && f.GetProperty("old_level").GetString() == "error");
    }

    [Fact]
    public async Task Job_folder_and_the_unit_it_was_made_from_are_the_same_and_pictures_show_what_changed()
    {
        await Words.Run("compile", yard.UnitFile, "-o", yard.In("out"), "--cells", "4", "--quiet");
        Words.Answer same = await Words.Run("diff", yard.In("out", "small.job"), yard.UnitFile, "--cells", "4", "--quiet");
        Assert.True(same.Code == ExitCode.Done, same.Output + same.Error);

        yard.Write("small.unit.yaml", SmallYard.Unit.Replace("diameter: 60 mm", "diameter: 90 mm"));
        await Words.Run("compile", yard.UnitFile, "-o", yard.In("new"), "--cells", "4", "--quiet");
        Words.Answer markdown = await Words.Run("diff", yard.In("out", "small.job"), yard.In("new", "small.job"), "--quiet", "--format", "markdown", "--pictures", yard.In("pictures"));
        Assert.Equal(ExitCode.No, markdown.Code);
        Assert.StartsWith("### Small step: different\n", markdown.Output, StringComparison.Ordinal);
        Assert.Contains("| `unit.tunnels[drain].section.diameter` | 60 mm | 90 mm |", markdown.Output, StringComparison.Ordinal);
        Assert.NotEmpty(Directory.EnumerateFiles(yard.In("pictures"), "change-01-*.png"));
    }

    [Fact]
    public async Task Differences_within_the_tolerance_do_not_count()
    {
        string wider = yard.Write("wider.unit.yaml", SmallYard.Unit.Replace("diameter: 60 mm", "diameter: 60.2 mm"));
        Words.Answer strict = await Words.Run("diff", yard.UnitFile, wider, "--cells", "4", "--quiet", "--results-only");
        Assert.Equal(ExitCode.No, strict.Code);
        Words.Answer tolerant = await Words.Run("diff", yard.UnitFile, wider, "--cells", "4", "--quiet", "--results-only", "--tolerance-volume", "1", "--tolerance-dose", "10");
        Assert.True(tolerant.Code == ExitCode.Done, tolerant.Output);
        Assert.Contains("no difference beyond the tolerance", tolerant.Output, StringComparison.Ordinal);
        Assert.Equal(ExitCode.No, (await Words.Run("diff", yard.UnitFile, wider, "--cells", "4", "--quiet", "--tolerance-volume", "1", "--tolerance-dose", "10")).Code);
    }

    [Fact]
    public async Task What_cannot_be_read_ends_with_2_and_says_why()
    {
        Words.Answer none = await Words.Run("diff", yard.UnitFile, yard.In("none.unit.yaml"), "--cells", "4", "--quiet");
        Assert.Equal((ExitCode.InputAtFault, ""), (none.Code, none.Output));
        Assert.Contains("error DW8001: ", none.Error, StringComparison.Ordinal);
        Words.Answer folder = await Words.Run("diff", yard.Folder, yard.UnitFile, "--cells", "4", "--quiet");
        Assert.Equal(ExitCode.InputAtFault, folder.Code);
        Assert.Contains("error DW8109: ", folder.Error, StringComparison.Ordinal);
    }

    private static async Task<JsonElement> Json(string old, string now)
    {
        Words.Answer answer = await Words.Run("diff", old, now, "--cells", "4", "--quiet", "--json");
        Assert.True(answer.Code == ExitCode.No, answer.Output + answer.Error);
        Repository.AssertValid("diff.schema.json", answer.Output);
        return JsonDocument.Parse(answer.Output).RootElement;
    }
}
