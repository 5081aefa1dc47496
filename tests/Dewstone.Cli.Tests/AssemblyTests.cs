using System.Reflection;

namespace Dewstone.Cli.Tests;

public sealed class AssemblyTests
{
    [Fact]
    public void Assembly_built_uses_no_room_but_those_below_it()
    {
        Assembly assembly = Assembly.Load("dewstone");

        Assert.Empty(assembly.GetReferencedAssemblies()
            .Select(reference => reference.Name)
            .Where(name => name!.StartsWith("Dewstone.", StringComparison.Ordinal))
            .Except(["Dewstone.Model", "Dewstone.Reading", "Dewstone.Compute", "Dewstone.Jobs", "Dewstone.Orders"]));
    }

    [Fact]
    public void Version_is_three_numbers_without_a_commit()
    {
        string version = Assembly.Load("dewstone").GetCustomAttribute<AssemblyInformationalVersionAttribute>()!.InformationalVersion;

        Assert.Matches(@"^\d+\.\d+\.\d+$", version);
    }
}
