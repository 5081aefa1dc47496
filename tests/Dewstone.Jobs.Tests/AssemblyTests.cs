using System.Reflection;

namespace Dewstone.Jobs.Tests;

public sealed class AssemblyTests
{
    [Fact]
    public void Assembly_built_uses_no_room_but_those_below_it()
    {
        Assembly assembly = Assembly.Load("Dewstone.Jobs");

        Assert.Empty(assembly.GetReferencedAssemblies()
            .Select(reference => reference.Name)
            .Where(name => name!.StartsWith("Dewstone.", StringComparison.Ordinal))
            .Except(["Dewstone.Model", "Dewstone.Reading", "Dewstone.Compute"]));
    }
}
