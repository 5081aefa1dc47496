using System.Buffers.Binary;
using System.IO.Compression;
using System.Runtime.InteropServices;
using Dewstone.Jobs.Emission.Pictures.Drawing;
using SixLabors.ImageSharp.PixelFormats;

namespace Dewstone.Jobs.Emission.Pictures;

/// <summary>
/// Writes a sheet as PNG: truecolour, 8 bits, rows unfiltered, since flat areas and straight lines pack best and fastest so. By the PNG
/// specification, third edition (W3C), sections 5 and 11; from memory.
/// </summary>
internal static class PngFile
{
    private const byte TrueColour = 2;

    private static readonly uint[] Remainders = [.. Enumerable.Range(0, 256).Select(first => Remainder((uint)first))];

    /// <summary>Writes.</summary>
    /// <param name="canvas">The sheet.</param>
    /// <returns>The file's content.</returns>
    public static byte[] Write(Canvas canvas)
    {
        using MemoryStream file = new();
        file.Write([0x89, (byte)'P', (byte)'N', (byte)'G', 0x0D, 0x0A, 0x1A, 0x0A]);
        byte[] header = new byte[13];
        BinaryPrimitives.WriteInt32BigEndian(header, canvas.Width);
        BinaryPrimitives.WriteInt32BigEndian(header.AsSpan(4), canvas.Height);
        (header[8], header[9]) = (8, TrueColour);
        Chunk(file, "IHDR"u8, header);
        Chunk(file, "IDAT"u8, Packed(canvas));
        Chunk(file, "IEND"u8, []);
        return file.ToArray();
    }

    private static ReadOnlySpan<byte> Packed(Canvas canvas)
    {
        MemoryStream packed = new();
        using (ZLibStream stream = new(packed, new ZLibCompressionOptions { CompressionLevel = 1 }, leaveOpen: true))
        {
            byte[] row = new byte[1 + 3 * canvas.Width];
            for (int y = 0; y < canvas.Height; y++)
            {
                MemoryMarshal.AsBytes<Rgb24>(canvas.Pixels.AsSpan(y * canvas.Width, canvas.Width)).CopyTo(row.AsSpan(1));
                stream.Write(row);
            }
        }

        return packed.GetBuffer().AsSpan(0, (int)packed.Length);
    }

    private static void Chunk(MemoryStream file, ReadOnlySpan<byte> type, ReadOnlySpan<byte> content)
    {
        Span<byte> number = stackalloc byte[4];
        BinaryPrimitives.WriteInt32BigEndian(number, content.Length);
        file.Write(number);
        file.Write(type);
        file.Write(content);
        BinaryPrimitives.WriteUInt32BigEndian(number, ~Check(Check(uint.MaxValue, type), content));
        file.Write(number);
    }

    // The cyclic redundancy check of the specification's annex D.
    private static uint Check(uint sum, ReadOnlySpan<byte> bytes)
    {
        foreach (byte one in bytes)
        {
            sum = Remainders[(byte)(sum ^ one)] ^ (sum >> 8);
        }

        return sum;
    }

    private static uint Remainder(uint first)
    {
        for (int bit = 0; bit < 8; bit++)
        {
            first = (first & 1) == 0 ? first >> 1 : 0xEDB88320u ^ (first >> 1);
        }

        return first;
    }
}
