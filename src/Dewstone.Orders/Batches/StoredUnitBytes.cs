using System.Buffers.Binary;
using System.IO.Compression;
using System.Security.Cryptography;
using System.Text;
using System.Text.Json;
using Dewstone.Jobs.Emission.Json;
using Dewstone.Model.Description;

namespace Dewstone.Orders.Batches;

/// <summary>
/// An entry of the store as bytes: a mark, its own key, the SHA-256 of what follows, and deflated: the length of a JSON head, the head, the doses
/// (32 bits each, lowest byte first), the hardened cells (a bit each).
/// </summary>
internal static class StoredUnitBytes
{
    /// <summary>Version of the form; another one is another key.</summary>
    public const int Version = 1;

    private const int HashBytes = 32;

    // An entry unpacks to no more than this, whoever wrote it: the cells of a whole bin at 16 a voxel side, a bit each, take 37 MB.
    private const int MostBytes = 1 << 26;
    private static readonly byte[] Mark = Encoding.ASCII.GetBytes($"dewstone unit {Version}\n");

    /// <summary>The bytes of an entry.</summary>
    public static byte[] Write(string key, StoredUnit unit)
    {
        using MemoryStream body = new();
        using (ZLibStream packed = new(body, CompressionLevel.Optimal, leaveOpen: true))
        {
            byte[] head = CanonicalJson.Compact(json => StoredUnitHead.Write(json, unit));
            Span<byte> word = stackalloc byte[sizeof(int)];
            BinaryPrimitives.WriteInt32LittleEndian(word, head.Length);
            packed.Write(word);
            packed.Write(head);
            if (unit.Solved is { } solved)
            {
                byte[] doses = new byte[solved.CentiMillilitres.Length * sizeof(int)];
                for (int i = 0; i < solved.CentiMillilitres.Length; i++)
                {
                    BinaryPrimitives.WriteInt32LittleEndian(doses.AsSpan(i * sizeof(int)), solved.CentiMillilitres[i]);
                }

                packed.Write(doses);
                packed.Write(solved.Hardened.Packed.Span);
            }
        }

        byte[] content = body.ToArray();
        return [.. Mark, .. Convert.FromHexString(key), .. SHA256.HashData(content), .. content];
    }

    /// <summary>The key an entry was written under.</summary>
    /// <returns>The key; null when the bytes are none of ours or are damaged.</returns>
    public static string? KeyOf(ReadOnlySpan<byte> bytes)
    {
        int head = Mark.Length + 2 * HashBytes;
        return bytes.Length > head && bytes.StartsWith(Mark) && SHA256.HashData(bytes[head..]).AsSpan().SequenceEqual(bytes.Slice(Mark.Length + HashBytes, HashBytes))
            ? Convert.ToHexStringLower(bytes.Slice(Mark.Length, HashBytes)) : null;
    }

    /// <summary>Reads an entry.</summary>
    /// <param name="bytes">Its bytes.</param>
    /// <param name="key">The key it is due under.</param>
    /// <param name="unit">The unit as this run describes it.</param>
    /// <returns>What it holds, its findings not yet placed; null when it is damaged or another one.</returns>
    /// <exception cref="InvalidDataException">It unpacks to more than an entry can hold.</exception>
    public static StoredUnit? Read(byte[] bytes, string key, ReefUnit unit)
    {
        if (KeyOf(bytes) != key)
        {
            return null;
        }

        using MemoryStream packed = new(bytes, Mark.Length + 2 * HashBytes, bytes.Length - Mark.Length - 2 * HashBytes);
        using ZLibStream stream = new(packed, CompressionMode.Decompress);
        using MemoryStream body = new();
        byte[] part = new byte[1 << 16];
        for (int got = stream.Read(part); got > 0; got = stream.Read(part))
        {
            body.Write(part, 0, body.Length + got <= MostBytes ? got : throw new InvalidDataException("it unpacks to more than an entry can hold"));
        }

        ReadOnlyMemory<byte> content = body.ToArray();
        int length = BinaryPrimitives.ReadInt32LittleEndian(content.Span);
        using JsonDocument head = JsonDocument.Parse(content.Slice(sizeof(int), length));
        return StoredUnitHead.Read(head.RootElement, content[(sizeof(int) + length)..], unit);
    }
}
