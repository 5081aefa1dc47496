using System.Buffers.Binary;
using System.Numerics;
using System.Runtime.InteropServices;
using System.Text;
using Dewstone.Model.Results;

namespace Dewstone.Jobs.Emission.Surfaces;

/// <summary>
/// Writes a surface as binary STL in millimetres: a header of 80 bytes, the number of triangles (uint32), then 50 bytes a triangle: normal and
/// three corners (float32 each), two bytes of 0; little-endian (from memory).
/// </summary>
internal static class StlFile
{
    /// <summary>Bytes before the first triangle.</summary>
    public const int HeaderBytes = 84;

    /// <summary>Bytes of a triangle.</summary>
    public const int TriangleBytes = 50;

    /// <summary>Writes.</summary>
    /// <param name="surface">The surface.</param>
    /// <param name="header">At most 80 ASCII characters; does not begin with "solid", by which readers know the text form.</param>
    /// <param name="parallelism">Threads; no byte depends on them.</param>
    /// <returns>The file's content.</returns>
    public static byte[] Write(UnitSurface surface, string header, Parallelism parallelism)
    {
        int[] triangles = surface.Triangles;
        int count = triangles.Length / 3;
        byte[] bytes = new byte[checked(HeaderBytes + TriangleBytes * count)];
        Encoding.ASCII.GetBytes(header, bytes.AsSpan(0, 80));
        BinaryPrimitives.WriteUInt32LittleEndian(bytes.AsSpan(80), (uint)count);
        Stretches.Run(count, parallelism, (first, end) =>
        {
            ReadOnlySpan<Vector3> corners = MemoryMarshal.Cast<float, Vector3>(surface.Positions);
            for (int t = first; t < end; t++)
            {
                Vector3 a = corners[triangles[3 * t]] * 1000f, b = corners[triangles[3 * t + 1]] * 1000f, c = corners[triangles[3 * t + 2]] * 1000f;
                Vector3 normal = Vector3.Cross(b - a, c - a);
                float length = normal.Length();
                Span<byte> to = bytes.AsSpan(HeaderBytes + TriangleBytes * t, TriangleBytes);
                Put(to, length > 0f ? normal / length : Vector3.Zero);
                Put(to[12..], a);
                Put(to[24..], b);
                Put(to[36..], c);
            }
        });
        return bytes;
    }

    private static void Put(Span<byte> to, Vector3 vector)
    {
        BinaryPrimitives.WriteSingleLittleEndian(to, vector.X);
        BinaryPrimitives.WriteSingleLittleEndian(to[4..], vector.Y);
        BinaryPrimitives.WriteSingleLittleEndian(to[8..], vector.Z);
    }
}
