using System.Text;

namespace Dewstone.Orders.Gathering;

/// <summary>The overview's own styles, kept beside this file and built into the program.</summary>
internal static class OverviewAssets
{
    /// <summary>Reads one.</summary>
    /// <param name="name">File name.</param>
    /// <returns>Its text.</returns>
    public static string Read(string name)
    {
        using Stream stream = typeof(OverviewAssets).Assembly.GetManifestResourceStream(name) ?? throw new InvalidOperationException($"{name} is not built in.");
        using StreamReader reader = new(stream, Encoding.UTF8);
        return reader.ReadToEnd();
    }
}
