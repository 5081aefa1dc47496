using System.Security.Cryptography;
using System.Text;
using Dewstone.Model.Diagnostics;

namespace Dewstone.Reading.Files;

/// <summary>Reads whole text files, within the root, up to a size, as strict UTF-8.</summary>
internal static class FileLoader
{
    /// <summary>Largest description or table, bytes. A needles file of 2000 x 2000 is larger than any head there will be.</summary>
    public const int MostBytes = 4 * 1024 * 1024;

    private static readonly UTF8Encoding StrictUtf8 = new(false, true);

    /// <summary>Reads a file.</summary>
    /// <param name="request">Which, and for whom.</param>
    /// <param name="findings">Takes a finding when it cannot be read.</param>
    /// <returns>The text; null with a finding.</returns>
    public static SourceText? Load(FileRequest request, DiagnosticBag findings)
    {
        try
        {
            if (!IsAllowed(request, findings))
            {
                return null;
            }

            if (Directory.Exists(request.FullPath))
            {
                return Refuse(request, findings, FileFindings.NotReadable, $"`{request.Shown}` is a folder", "name a file in it");
            }

            if (!File.Exists(request.FullPath))
            {
                return Refuse(request, findings, FileFindings.NotFound, $"there is no file `{request.Shown}`", NotFoundRemedy(request));
            }

            return WholeFile.TryRead(request.FullPath, MostBytes) is { } bytes
                ? Decode(request, bytes, findings)
                : Refuse(request, findings, FileFindings.TooLarge, $"`{request.Shown}` is larger than {MostBytes / 1024 / 1024} MiB",
                    "name the right file; a description is a few kilobytes");
        }
        catch (Exception broken) when (broken is IOException or UnauthorizedAccessException)
        {
            return Refuse(request, findings, FileFindings.NotReadable, $"`{request.Shown}` cannot be read: {Reason(broken)}",
                "see that the file is there and that you may read it");
        }
    }

    private static bool IsAllowed(FileRequest request, DiagnosticBag findings)
    {
        if (request.Root is null)
        {
            return true;
        }

        if (LinkResolver.Resolve(request.FullPath) is not { } real)
        {
            Refuse(request, findings, FileFindings.NotReadable, $"`{request.Shown}` is a link that leads in a circle",
                "name the file itself");
            return false;
        }

        if (!LinkResolver.LiesUnder(real, request.Root))
        {
            string way =
                LinkResolver.LiesUnder(Path.GetFullPath(request.FullPath), request.Root) ? "leads through a link to a file" : "lies";
            Refuse(request, findings, FileFindings.OutsideRoot, $"`{request.Shown}` {way} outside the root folder",
                "move it under the root, or name a higher folder with --root");
            return false;
        }

        return true;
    }

    private static SourceText? Decode(FileRequest request, byte[] bytes, DiagnosticBag findings)
    {
        ReadOnlySpan<byte> content = bytes;
        content = content.StartsWith(Encoding.UTF8.Preamble) ? content[Encoding.UTF8.Preamble.Length..] : content;
        try
        {
            return new SourceText(request.FullPath, request.Shown, StrictUtf8.GetString(content),
                Convert.ToHexStringLower(SHA256.HashData(bytes)));
        }
        catch (DecoderFallbackException broken)
        {
            // The index counts from the beginning of the span that was decoded.
            ReadOnlySpan<byte> before = content[..Math.Clamp(broken.Index, 0, content.Length)];
            int line = before.Count((byte)'\n') + 1;
            int lineStart = before.LastIndexOf((byte)'\n') + 1;
            int column = Encoding.UTF8.GetCharCount(before[lineStart..]) + 1;
            findings.Add(FileFindings.NotUtf8.At("the file is not UTF-8 text: it breaks off here", "save it as UTF-8", request.NamedBy,
                new SourceLocation(request.Shown, line, column)));
            return null;
        }
    }

    private static string NotFoundRemedy(FileRequest request)
    {
        string folder = Path.GetDirectoryName(request.FullPath)!;
        if (!Directory.Exists(folder))
        {
            return "there is no such folder either; check the path" +
                (request.NamedAt is null ? "" : ", which is relative to the file that names it");
        }

        string name = Path.GetFileName(request.FullPath);
        string ending = name.Contains('.') ? name[name.IndexOf('.')..] : "";
        IEnumerable<string> beside =
            Directory.EnumerateFiles(folder, "*" + ending).Take(200).Select(file => Path.GetFileName(file)).Order(StringComparer.Ordinal);
        return Binding.Spelling.Nearest(name, beside) is { } near
            ? $"did you mean `{near}` in the same folder?"
            : "check the name" + (request.NamedAt is null ? "" : "; the path is relative to the file that names it");
    }

    private static string Reason(Exception broken) =>
        broken is UnauthorizedAccessException ? "its rights forbid it" : broken.Message.ReplaceLineEndings(" ").TrimEnd('.');

    private static SourceText? Refuse(FileRequest request, DiagnosticBag findings, FindingKind kind, string message, string remedy)
    {
        findings.Add(kind.At(message, remedy, request.NamedBy, request.NamedAt ?? new SourceLocation(request.Shown, 0, 0)));
        return null;
    }
}
