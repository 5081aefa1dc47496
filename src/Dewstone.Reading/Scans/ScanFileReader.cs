using System.Buffers.Binary;
using Dewstone.Model.Diagnostics;
using Dewstone.Model.Results;
using Dewstone.Reading.Files;

namespace Dewstone.Reading.Scans;

/// <summary>Reads scans in millimetres: STL, binary or text, and tables of points. Nothing in a file makes it throw.</summary>
/// <remarks>
/// A file is binary STL when its size is that which its number of triangles asks for (84 + 50 n bytes), text STL when it begins with "solid", and a table of
/// points else. STL from memory.
/// </remarks>
internal static class ScanFileReader
{
    /// <summary>Greatest size read, bytes.</summary>
    public const long MostBytes = 256L * 1024 * 1024;

    /// <summary>Greatest coordinate, millimetres.</summary>
    public const float MostMillimetres = 100_000f;

    private const int HeaderBytes = 84;
    private const int TriangleBytes = 50;
    private const int NormalBytes = 12;

    /// <summary>Reads a file.</summary>
    /// <param name="path">Path, relative to the current folder.</param>
    /// <param name="findings">Takes DW8101 or DW8350 to DW8352.</param>
    /// <returns>The scan; null with a finding.</returns>
    public static UnitScan? Read(string path, DiagnosticBag findings)
    {
        SourceLocation file = new(path, 0, 0);
        try
        {
            if (WholeFile.TryRead(path, MostBytes) is { } bytes)
            {
                return Parse(bytes, path, findings);
            }

            findings.Add(SurveyFileFindings.ScanTooLarge.At(
                $"`{path}` has more than the {MostBytes / 1024 / 1024} MiB that are read", "thin it out to a point about every 3 mm", location: file));
            return null;
        }
        catch (Exception broken) when (broken is IOException or UnauthorizedAccessException or ArgumentException)
        {
            findings.Add(FileFindings.NotReadable.At($"`{path}` cannot be read: {broken.Message.ReplaceLineEndings(" ").TrimEnd('.')}", "see that the file is there and that you may read it", location: file));
            return null;
        }
    }

    /// <summary>Reads the content of a file.</summary>
    /// <param name="bytes">Content.</param>
    /// <param name="path">Its name, for findings.</param>
    /// <param name="findings">Takes DW8350 and DW8352.</param>
    /// <returns>The scan; null with a finding.</returns>
    internal static UnitScan? Parse(ReadOnlySpan<byte> bytes, string path, DiagnosticBag findings)
    {
        long triangles = bytes.Length < HeaderBytes ? -1 : BinaryPrimitives.ReadUInt32LittleEndian(bytes[(HeaderBytes - 4)..]);
        if (triangles >= 0 && bytes.Length == HeaderBytes + TriangleBytes * triangles)
        {
            return triangles == 0 ? Refuse("it holds no triangle") : Binary(bytes[HeaderBytes..], (int)triangles, path, findings);
        }

        if (bytes.Contains((byte)0))
        {
            return Refuse(triangles < 0
                ? "it is no text and too short for a binary STL"
                : $"as a binary STL it names {triangles} triangles and has room for {(bytes.Length - HeaderBytes) / TriangleBytes}");
        }

        return new ScanTextReader(path, findings).Read(bytes);

        UnitScan? Refuse(string what)
        {
            findings.Add(SurveyFileFindings.ScanNotReadable.At($"`{path}`: {what}", "export it anew as STL or XYZ", location: new SourceLocation(path, 0, 0)));
            return null;
        }
    }

    private static UnitScan? Binary(ReadOnlySpan<byte> bytes, int triangles, string path, DiagnosticBag findings)
    {
        float[] positions = new float[9 * triangles];
        for (int t = 0; t < triangles; t++)
        {
            ReadOnlySpan<byte> corners = bytes[(t * TriangleBytes + NormalBytes)..];
            for (int i = 0; i < 9; i++)
            {
                float value = BinaryPrimitives.ReadSingleLittleEndian(corners[(4 * i)..]);
                if (!(Math.Abs(value) <= MostMillimetres))
                {
                    findings.Add(SurveyFileFindings.ScanNumber.At(
                        FormattableString.Invariant($"`{path}`: triangle {t + 1}, corner {i / 3 + 1} has {"xyz"[i % 3]} = {value}"), "export the scan anew, near the origin", location: new SourceLocation(path, 0, 0)));
                    return null;
                }

                positions[9 * t + i] = value / 1000f;
            }
        }

        return new UnitScan { Positions = positions, IsSurface = true };
    }
}
