using System.Text.RegularExpressions;

namespace Dewstone.Architecture.Tests;

/// <summary>A source file of one room, with what it says about its own place and about other rooms.</summary>
/// <param name="Path">Path below the repository, with forward slashes.</param>
/// <param name="Folder">First folder below the project, empty for a file at the project's top.</param>
/// <param name="Namespaces">Namespaces it declares.</param>
/// <param name="Mentions">Every <c>Dewstone.X.Y</c> it names in a using line or in code; comments are left out.</param>
internal sealed partial record SourceFile(string Path, string Folder, IReadOnlyList<string> Namespaces, IReadOnlyList<string> Mentions)
{
    /// <summary>All source files of a project of <c>src/</c>, in a fixed order.</summary>
    public static IReadOnlyList<SourceFile> Of(string project)
    {
        string room = Repository.Room(project);
        return [.. Directory.EnumerateFiles(room, "*.cs", SearchOption.AllDirectories)
            .Order(StringComparer.Ordinal)
            .Select(file => Parse(
                System.IO.Path.GetRelativePath(Repository.Root, file).Replace('\\', '/'),
                System.IO.Path.GetRelativePath(room, file).Replace('\\', '/'),
                File.ReadAllText(file)))];
    }

    /// <summary>Reads one file's text.</summary>
    /// <param name="path">Path to report.</param>
    /// <param name="pathInRoom">Path below the project, with forward slashes.</param>
    /// <param name="text">The source text.</param>
    public static SourceFile Parse(string path, string pathInRoom, string text)
    {
        string code = Comment().Replace(text, "");
        int slash = pathInRoom.IndexOf('/');
        return new SourceFile(
            path,
            slash < 0 ? "" : pathInRoom[..slash],
            [.. Namespace().Matches(code).Select(match => match.Groups["name"].Value)],
            [.. Mention().Matches(Namespace().Replace(code, "")).Select(match => match.Value).Distinct().Order(StringComparer.Ordinal)]);
    }

    [GeneratedRegex(@"//[^\n]*|/\*.*?\*/", RegexOptions.Singleline | RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Comment();

    [GeneratedRegex(@"^\s*namespace\s+(?<name>[\w.]+)", RegexOptions.Multiline | RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Namespace();

    [GeneratedRegex(@"\bDewstone\.\w+(\.\w+)?", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Mention();
}
