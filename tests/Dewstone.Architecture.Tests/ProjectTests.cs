using System.Xml.Linq;

namespace Dewstone.Architecture.Tests;

public sealed class ProjectTests
{
    [Fact]
    public void Source_folder_holds_the_projects_of_the_table_and_no_others() =>
        Assert.Equal(
            HouseTable.Projects.Keys.Order(StringComparer.Ordinal),
            Directory.EnumerateDirectories(Path.Combine(Repository.Root, "src"))
                .Select(folder => Path.GetFileName(folder)).Order(StringComparer.Ordinal));

    [Fact]
    public void Each_project_names_exactly_the_projects_of_the_table()
    {
        foreach ((string project, string[] allowed) in HouseTable.Projects)
        {
            Assert.Equal(
                allowed.Order(StringComparer.Ordinal),
                Named(project, "ProjectReference").Select(path => Path.GetFileNameWithoutExtension(path)).Order(StringComparer.Ordinal));
        }
    }

    [Fact]
    public void Each_project_names_exactly_the_libraries_of_the_table()
    {
        foreach ((string project, string[] allowed) in HouseTable.Packages)
        {
            Assert.Equal(allowed.Order(StringComparer.Ordinal), Named(project, "PackageReference").Order(StringComparer.Ordinal));
        }
    }

    [Fact]
    public void Solution_holds_every_project_of_src_and_tests()
    {
        string src = Path.Combine(Repository.Root, "src");
        IEnumerable<string> listed = XDocument.Load(Path.Combine(src, "Dewstone.slnx")).Descendants("Project")
            .Select(project => Path.GetFullPath(Path.Combine(src, (string)project.Attribute("Path")!)));
        IEnumerable<string> present = new[] { "src", "tests" }
            .SelectMany(top => Directory.EnumerateFiles(Path.Combine(Repository.Root, top), "*.csproj", SearchOption.AllDirectories));
        Assert.Equal(present.Order(StringComparer.Ordinal), listed.Order(StringComparer.Ordinal));
    }

    private static IEnumerable<string> Named(string project, string element) =>
        XDocument.Load(Path.Combine(Repository.Room(project), project + ".csproj")).Descendants(element)
            .Select(reference => (string)reference.Attribute("Include")!);
}
