using System.Buffers.Text;
using System.Text;
using Dewstone.Model.Diagnostics;
using Dewstone.Model.Results;
using Dewstone.Reading.Yaml;

namespace Dewstone.Reading.Scans;

/// <summary>Reads scans written as text: STL facets, or a point a line with what follows its first three numbers left out.</summary>
/// <param name="path">File, for findings.</param>
/// <param name="findings">Takes the first fault, DW8350 or DW8352.</param>
internal sealed class ScanTextReader(string path, DiagnosticBag findings)
{
    private readonly List<float> positions = [];
    private int line;

    /// <summary>Reads a text.</summary>
    /// <param name="bytes">Content of the file.</param>
    /// <returns>The scan; null with a finding.</returns>
    public UnitScan? Read(ReadOnlySpan<byte> bytes)
    {
        bool isSurface = bytes.TrimStart(" \t\r\n"u8).StartsWith("solid"u8);
        int corners = 0;
        bool isEnded = false;
        while (bytes.Length > 0)
        {
            int end = bytes.IndexOf((byte)'\n');
            ReadOnlySpan<byte> text = end < 0 ? bytes : bytes[..end];
            bytes = end < 0 ? [] : bytes[(end + 1)..];
            line++;
            if (!(isSurface ? Facet(text, ref corners, ref isEnded) : Point(text)))
            {
                return null;
            }
        }

        if (isSurface && (!isEnded || corners != 0))
        {
            Refuse(SurveyFileFindings.ScanNotReadable, "the text ends before its endsolid", "export it anew", 1);
            return null;
        }

        if (positions.Count == 0)
        {
            Refuse(SurveyFileFindings.ScanNotReadable, "it holds no point", "export it anew as STL or XYZ", 1);
            return null;
        }

        return new UnitScan { Positions = [.. positions], IsSurface = isSurface };
    }

    private bool Facet(ReadOnlySpan<byte> text, ref int corners, ref bool isEnded)
    {
        ReadOnlySpan<byte> words = text.Trim(" \t\r"u8);
        if (words.StartsWith("vertex"u8))
        {
            corners++;
            return corners <= 3
                ? Numbers(text, text.IndexOf("vertex"u8) + "vertex"u8.Length)
                : Refuse(SurveyFileFindings.ScanNotReadable, "a facet has more than three corners", "export it anew", 1);
        }

        if (words.StartsWith("endfacet"u8))
        {
            bool isWhole = corners == 3;
            corners = 0;
            return isWhole || Refuse(SurveyFileFindings.ScanNotReadable, "a facet has fewer than three corners", "export it anew", 1);
        }

        isEnded = words.StartsWith("endsolid"u8) || (isEnded && words.Length == 0);
        return isEnded || words.Length == 0 || words.StartsWith("facet"u8) || words.StartsWith("outer"u8) || words.StartsWith("endloop"u8) || words.StartsWith("solid"u8)
            || Refuse(SurveyFileFindings.ScanNotReadable, $"`{Shown(words)}` is no line of an STL text", "export it anew", 1);
    }

    private bool Point(ReadOnlySpan<byte> text)
    {
        ReadOnlySpan<byte> words = text.Trim(" \t\r"u8);
        bool isTitle = line == 1 && words.Length > 0 && (char.IsAsciiLetter((char)words[0]) || words[0] == (byte)'"');
        return words.Length == 0 || words[0] == (byte)'#' || isTitle || Numbers(text, 0);
    }

    // Commas part numbers only where nothing else does, or before a space: 1,5 2,5 3,5 is three numbers with a decimal comma, not six.
    private bool Numbers(ReadOnlySpan<byte> text, int at)
    {
        bool byCommas = !text[at..].Trim(" \t\r"u8).ContainsAny(" \t;"u8);
        for (int i = 0; i < 3; i++)
        {
            while (at < text.Length && (text[at] is (byte)' ' or (byte)'\t' or (byte)';' || (byCommas && text[at] == (byte)',')))
            {
                at++;
            }

            int end = at;
            while (end < text.Length && text[end] is not ((byte)' ' or (byte)'\t' or (byte)';' or (byte)'\r') && !(text[end] == (byte)',' && (byCommas || IsBlank(text, end + 1))))
            {
                end++;
            }

            ReadOnlySpan<byte> word = text[at..end];
            if (word.Length == 0)
            {
                return Refuse(SurveyFileFindings.ScanNotReadable, $"there are {i} numbers where three are due", "write x y z in millimetres", at + 1);
            }

            if (!Utf8Parser.TryParse(word, out float value, out int used) || used != word.Length || !(Math.Abs(value) <= ScanFileReader.MostMillimetres))
            {
                return Refuse(SurveyFileFindings.ScanNumber, $"`{Shown(word)}` is no usable coordinate", "write x y z in millimetres, near the origin", at + 1);
            }

            positions.Add(value / 1000f);
            at = end < text.Length && text[end] == (byte)',' ? end + 1 : end;
        }

        return true;
    }

    private static bool IsBlank(ReadOnlySpan<byte> text, int at) => at < text.Length && (text[at] is (byte)' ' or (byte)'\t');

    private bool Refuse(FindingKind kind, string message, string remedy, int column)
    {
        findings.Add(kind.At(message, remedy, location: new SourceLocation(path, line, column)));
        return false;
    }

    private static string Shown(ReadOnlySpan<byte> word) => Quoting.Short(Encoding.UTF8.GetString(word[..Math.Min(word.Length, 200)]));
}
