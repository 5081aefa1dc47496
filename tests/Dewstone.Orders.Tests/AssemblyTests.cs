using System.Reflection;

namespace Dewstone.Orders.Tests;

public sealed class AssemblyTests
{
    [Fact]
    public void Assembly_built_uses_no_room_but_those_below_it()
    {
        Assembly assembly = Assembly.Load("Dewstone.Orders");

        Assert.Empty(assembly.GetReferencedAssemblies()
            .Select(reference => reference.Name)
            .Where(name => name!.StartsWith("Dewstone.", StringComparison.Ordinal))
            .Except(["Dewstone.Model", "Dewstone.Reading", "Dewstone.Compute", "Dewstone.Jobs"]));
    }
}
