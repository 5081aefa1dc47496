using System.Reflection;

namespace Dewstone.Cli;

/// <summary>The version of this program.</summary>
internal static class ToolVersion
{
    /// <summary>For example <c>0.1.0</c>.</summary>
    public static string Text { get; } =
        typeof(ToolVersion).Assembly.GetCustomAttribute<AssemblyInformationalVersionAttribute>()?.InformationalVersion ?? "0.0.0";
}
