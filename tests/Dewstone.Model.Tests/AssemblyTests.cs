using System.Reflection;

namespace Dewstone.Model.Tests;

public sealed class AssemblyTests
{
    [Fact]
    public void Assembly_built_uses_no_other_room()
    {
        Assembly assembly = Assembly.Load("Dewstone.Model");

        Assert.DoesNotContain(
            assembly.GetReferencedAssemblies(),
            reference => reference.Name!.StartsWith("Dewstone.", StringComparison.Ordinal));
    }
}
