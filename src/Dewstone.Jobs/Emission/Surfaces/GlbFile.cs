using System.Buffers.Binary;
using System.Numerics;
using System.Runtime.InteropServices;
using SixLabors.ImageSharp.PixelFormats;

namespace Dewstone.Jobs.Emission.Surfaces;

/// <summary>
/// Writes the predicted surface as binary glTF 2.0: metres, y up (unit x, z, minus y), the deviation as vertex colour and, in mm, as
/// <c>_DEVIATION_MM</c>, the water/cement behind the surface as <c>_WATER_CEMENT</c>. Corners are written once; the triangles come in runs
/// that number their corners in 16 bits. Laid out by the glTF 2.0 specification, section 4.4 (from memory), straight into the file's bytes.
/// </summary>
internal static class GlbFile
{
    /// <summary>Attribute of the deviation, mm.</summary>
    public const string Deviation = "_DEVIATION_MM";

    /// <summary>Attribute of the water/cement.</summary>
    public const string WaterCement = "_WATER_CEMENT";

    private const int HeaderBytes = 12, ChunkHeaderBytes = 8;

    private static readonly GlbAttribute[] All =
    [
        new("POSITION", "VEC3", GlbText.Float, 12),
        new("NORMAL", "VEC3", GlbText.Float, 12),
        new("COLOR_0", "VEC4", GlbText.Byte, 4),
        new(Deviation, "SCALAR", GlbText.Float, 4),
        new(WaterCement, "SCALAR", GlbText.Float, 4),
    ];

    /// <summary>Writes.</summary>
    /// <param name="predicted">The surface; without triangles the scene is empty, since glTF knows no mesh without.</param>
    /// <param name="generator">Program and version.</param>
    /// <returns>The file's content.</returns>
    public static ReadOnlyMemory<byte> Write(PredictedSurface predicted, string generator)
    {
        int corners = predicted.Surface.Corners;
        int[] triangles = predicted.Surface.Triangles;
        IReadOnlyList<GlbRun> runs = GlbRun.Of(triangles);
        ReadOnlySpan<Vector3> positions = MemoryMarshal.Cast<float, Vector3>(predicted.Surface.Positions);
        GlbAttribute[] attributes = predicted.WaterCement.Length == 0 ? All[..^1] : All;
        (float[] Low, float[] High)[] bounds = new (float[], float[])[runs.Count];
        for (int run = 0; run < bounds.Length; run++)
        {
            bounds[run] = Bounds(positions.Slice(runs[run].FirstCorner, runs[run].Corners));
        }

        byte[] text = GlbText.Of(generator, corners, attributes, runs, bounds);
        int textBytes = Words(text.Length), binaryBytes = runs.Count == 0 ? 0 : attributes.Sum(attribute => attribute.Bytes * corners) + runs.Sum(run => Words(run.NumberBytes));
        byte[] file = new byte[HeaderBytes + ChunkHeaderBytes + textBytes + (runs.Count == 0 ? 0 : ChunkHeaderBytes + binaryBytes)];
        "glTF"u8.CopyTo(file);
        BinaryPrimitives.WriteInt32LittleEndian(file.AsSpan(4), 2);
        BinaryPrimitives.WriteInt32LittleEndian(file.AsSpan(8), file.Length);
        Span<byte> room = Chunk(file.AsSpan(HeaderBytes), textBytes, "JSON"u8);
        room[..textBytes].Fill((byte)' ');
        text.CopyTo(room);
        if (runs.Count == 0)
        {
            return file;
        }

        room = Chunk(room[textBytes..], binaryBytes, "BIN\0"u8);
        room = Upright(positions, room);
        room = Upright(predicted.Normals, room);
        room = Colours(predicted.DeviationMillimetres, room);
        room = Put(MemoryMarshal.AsBytes(predicted.DeviationMillimetres.AsSpan()), room);
        room = Put(MemoryMarshal.AsBytes(predicted.WaterCement.AsSpan()), room);
        foreach (GlbRun run in runs)
        {
            Numbers(triangles.AsSpan(3 * run.FirstTriangle, 3 * run.Triangles), run, room);
            room = room[Words(run.NumberBytes)..];
        }

        return file;
    }

    private static int Words(int bytes) => (bytes + 3) / 4 * 4;

    private static Span<byte> Chunk(Span<byte> to, int bytes, ReadOnlySpan<byte> type)
    {
        BinaryPrimitives.WriteInt32LittleEndian(to, bytes);
        type.CopyTo(to[4..]);
        return to[ChunkHeaderBytes..];
    }

    // Each writes at the beginning of the room and tells what is left of it.
    private static Span<byte> Put(ReadOnlySpan<byte> bytes, Span<byte> room)
    {
        bytes.CopyTo(room);
        return room[bytes.Length..];
    }

    private static Span<byte> Upright(ReadOnlySpan<Vector3> unit, Span<byte> room)
    {
        Span<Vector3> turned = MemoryMarshal.Cast<byte, Vector3>(room)[..unit.Length];
        for (int i = 0; i < turned.Length; i++)
        {
            turned[i] = new Vector3(unit[i].X, unit[i].Z, -unit[i].Y);
        }

        return room[(12 * unit.Length)..];
    }

    private static Span<byte> Colours(float[] millimetres, Span<byte> room)
    {
        Span<Rgba32> colours = MemoryMarshal.Cast<byte, Rgba32>(room)[..millimetres.Length];
        for (int i = 0; i < colours.Length; i++)
        {
            colours[i] = DeviationTones.LinearOf(millimetres[i]);
        }

        return room[(4 * millimetres.Length)..];
    }

    // Of corners of the unit frame, as they lie once upright.
    private static (float[] Low, float[] High) Bounds(ReadOnlySpan<Vector3> corners)
    {
        Vector3 low = corners[0], high = corners[0];
        foreach (Vector3 corner in corners)
        {
            low = Vector3.Min(low, corner);
            high = Vector3.Max(high, corner);
        }

        return ([low.X, low.Z, -high.Y], [high.X, high.Z, -low.Y]);
    }

    private static void Numbers(ReadOnlySpan<int> triangles, GlbRun run, Span<byte> to)
    {
        if (!run.IsShort)
        {
            Span<int> wide = MemoryMarshal.Cast<byte, int>(to);
            for (int i = 0; i < triangles.Length; i++)
            {
                wide[i] = triangles[i] - run.FirstCorner;
            }

            return;
        }

        Span<ushort> narrow = MemoryMarshal.Cast<byte, ushort>(to);
        for (int i = 0; i < triangles.Length; i++)
        {
            narrow[i] = (ushort)(triangles[i] - run.FirstCorner);
        }
    }
}
