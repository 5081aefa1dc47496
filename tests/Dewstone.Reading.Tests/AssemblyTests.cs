using System.Reflection;

namespace Dewstone.Reading.Tests;

public sealed class AssemblyTests
{
    [Fact]
    public void Assembly_built_uses_no_room_but_the_model()
    {
        Assembly assembly = Assembly.Load("Dewstone.Reading");

        Assert.Empty(assembly.GetReferencedAssemblies()
            .Select(reference => reference.Name)
            .Where(name => name!.StartsWith("Dewstone.", StringComparison.Ordinal))
            .Except(["Dewstone.Model"]));
    }
}
