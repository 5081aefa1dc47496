using System.Security.Cryptography;
using System.Text;

namespace Dewstone.Jobs.Emission.Report;

/// <summary>The page's own styles and scripts, kept beside this file and built into the program.</summary>
internal static class ReportAssets
{
    /// <summary>Reads one.</summary>
    /// <param name="name">File name.</param>
    /// <returns>Its text.</returns>
    public static string Read(string name)
    {
        using Stream stream = typeof(ReportAssets).Assembly.GetManifestResourceStream(name)
            ?? throw new InvalidOperationException($"{name} is not built in.");
        using StreamReader reader = new(stream, Encoding.UTF8);
        return reader.ReadToEnd();
    }

    /// <summary>How a page names the only script or style it may run (Content Security Policy Level 3, W3C, section 2.3.1).</summary>
    /// <param name="text">The whole text between the tags.</param>
    /// <returns>A hash source.</returns>
    public static string Source(string text) => $"'sha256-{Convert.ToBase64String(SHA256.HashData(Encoding.UTF8.GetBytes(text)))}'";
}
