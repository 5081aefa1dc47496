using System.Runtime.CompilerServices;

namespace Dewstone;

/// <summary>
/// Makes a missing stored snapshot fail under continuous integration. By default it would be written and the test would pass.
/// </summary>
internal static class StrictSnapshots
{
    [ModuleInitializer]
    internal static void Switch()
    {
        if (Environment.GetEnvironmentVariable("CI") == "true")
        {
            Environment.SetEnvironmentVariable("SNAPSHOOTER_STRICT_MODE", "true");
        }
    }
}
