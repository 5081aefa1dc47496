namespace Dewstone.Architecture.Tests;

public sealed class FolderTests
{
    [Fact]
    public void Compute_folders_use_only_what_their_table_allows() =>
        Assert.Empty(FolderRule.Breaches("Dewstone.Compute", HouseTable.Compute, SourceFile.Of("Dewstone.Compute")));

    [Fact]
    public void Jobs_folders_use_only_what_their_table_allows() =>
        Assert.Empty(FolderRule.Breaches("Dewstone.Jobs", HouseTable.Jobs, SourceFile.Of("Dewstone.Jobs")));

    [Fact]
    public void Orders_folders_use_only_what_their_table_allows() =>
        Assert.Empty(FolderRule.Breaches("Dewstone.Orders", HouseTable.Orders, SourceFile.Of("Dewstone.Orders")));

    [Theory]
    [InlineData("using Dewstone.Compute.Dosing;\nnamespace Dewstone.Compute.Wetting;", "Wetting may not use Dosing")]
    [InlineData("using static Dewstone.Compute.Geometry.Body;\nnamespace Dewstone.Compute.Wetting;", "Wetting may not use Geometry")]
    [InlineData("namespace Dewstone.Compute.Wetting;\nclass A { Dewstone.Compute.Studies.B b; }", "Wetting may not use Studies")]
    [InlineData("namespace Dewstone.Compute.Dosing;", "namespace Dewstone.Compute.Dosing does not stand in Dewstone.Compute.Wetting")]
    public void Rule_forbidden_line_is_a_breach(string text, string breach) =>
        Assert.Equal([$"x.cs: {breach}"], BreachesOfWetting(text));

    [Theory]
    [InlineData("using Dewstone.Compute.Numerics;\nusing Dewstone.Compute.Sequencing;\nnamespace Dewstone.Compute.Wetting;")]
    [InlineData("using Dewstone.Model.Results;\nnamespace Dewstone.Compute.Wetting.Kernels;")]
    [InlineData("namespace Dewstone.Compute.Wetting;\n/// <see cref=\"Dewstone.Compute.Dosing.Plan\"/>\nclass A;")]
    public void Rule_allowed_line_is_no_breach(string text) => Assert.Empty(BreachesOfWetting(text));

    [Theory]
    [InlineData("Stray.cs", "")]
    [InlineData("Helpers/Stray.cs", "Helpers")]
    public void Rule_folder_outside_the_table_is_a_breach(string path, string folder) =>
        Assert.Equal(
            [$"x.cs: folder '{folder}' is not in the table of Dewstone.Compute"],
            FolderRule.Breaches("Dewstone.Compute", HouseTable.Compute, [SourceFile.Parse("x.cs", path, "")]));

    [Fact]
    public void Tables_have_no_circle()
    {
        Assert.True(IsOrdered(HouseTable.Compute));
        Assert.True(IsOrdered(HouseTable.Jobs));
        Assert.True(IsOrdered(HouseTable.Orders));
        Assert.True(IsOrdered(HouseTable.Projects));
    }

    private static IReadOnlyList<string> BreachesOfWetting(string text) =>
        FolderRule.Breaches("Dewstone.Compute", HouseTable.Compute, [SourceFile.Parse("x.cs", "Wetting/X.cs", text)]);

    /// <summary>Whether rooms can be taken away one by one, each using only those already gone.</summary>
    private static bool IsOrdered(IReadOnlyDictionary<string, string[]> table)
    {
        HashSet<string> gone = [];
        while (table.FirstOrDefault(room => !gone.Contains(room.Key) && room.Value.All(gone.Contains)).Key is { } next)
        {
            gone.Add(next);
        }

        return gone.Count == table.Count;
    }
}
