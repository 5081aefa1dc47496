namespace Dewstone.Cli.Tests.Commands;

public sealed class NewCommandTests
{
    [Fact]
    public async Task New_files_of_every_kind_pass_the_drawing_check()
    {
        using SmallYard yard = new();
        foreach (string kind in new[] { "unit", "mix", "printer", "site", "order", "tonight" })
        {
            Words.Answer made = await Words.Run("new", kind, yard.In($"my.{kind}.yaml"));
            Assert.Equal((ExitCode.Done, ""), (made.Code, made.Error));
        }

        Words.Answer check = await Words.Run(
            "check", "--drawing", "--quiet", yard.In("my.unit.yaml"), "--mix", yard.In("my.mix.yaml"), "--printer", yard.In("my.printer.yaml"),
            "--site", yard.In("my.site.yaml"), "--tonight", yard.In("my.tonight.yaml"));
        Assert.True(check.Code == ExitCode.Done, check.Output);
    }

    [Fact]
    public async Task New_unit_with_the_mix_and_printer_it_names_is_fit_to_print()
    {
        using SmallYard yard = new();
        await Words.Run("new", "unit", yard.In("first.unit.yaml"));
        await Words.Run("new", "mix", yard.In("estuary.mix.yaml"));
        await Words.Run("new", "printer", yard.In("yard.printer.yaml"));

        Words.Answer check = await Words.Run("check", "--quiet", "--cells", "4", yard.In("first.unit.yaml"));
        Assert.True(check.Code == ExitCode.Done, check.Output);
        Assert.Contains("fit to print (0 errors", check.Output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task New_never_overwrites()
    {
        using SmallYard yard = new();
        Words.Answer answer = await Words.Run("new", "unit", yard.UnitFile);
        Assert.Equal(ExitCode.CannotCreate, answer.Code);
        Assert.Contains("exists already", answer.Error, StringComparison.Ordinal);
        Assert.Equal(SmallYard.Unit, await File.ReadAllTextAsync(yard.UnitFile));
    }

    [Fact]
    public async Task New_in_a_folder_that_is_not_there_ends_with_73()
    {
        using SmallYard yard = new();
        Words.Answer answer = await Words.Run("new", "unit", yard.In("no", "where.unit.yaml"));
        Assert.Equal(ExitCode.CannotCreate, answer.Code);
        Assert.Contains($"there is no folder '{yard.In("no")}'; make it first", answer.Error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("unit")]
    [InlineData("mix")]
    [InlineData("printer")]
    [InlineData("site")]
    [InlineData("order")]
    [InlineData("tonight")]
    public async Task Schema_prints_the_stored_schema(string kind)
    {
        Words.Answer answer = await Words.Run("schema", kind);
        Assert.Equal(await File.ReadAllTextAsync(Repository.Path("schemas", $"{kind}.schema.json")), answer.Output);
    }
}
