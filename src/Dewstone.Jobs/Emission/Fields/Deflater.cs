using System.Buffers.Binary;
using System.Runtime.Intrinsics;

namespace Dewstone.Jobs.Emission.Fields;

/// <summary>
/// Packs a block of cells as a zlib stream (RFC 1950) of one deflate block (RFC 1951): repeats at two fixed distances only, the previous cell
/// and the previous row of cells, then a prefix code of its own. A library would pack a little better, but libraries choose their code by
/// the processor and promise no equal bytes; here the bytes depend on the data alone.
/// </summary>
internal sealed class Deflater
{
    /// <summary>Longest block, bytes: no repeat may reach further back in deflate.</summary>
    public const int LongestBlock = 32768;

    private const int LiteralSymbols = 286;
    private const int DistanceSymbols = 30;
    private const int EndOfBlock = 256;
    private const int ShortestRepeat = 3;
    private const int LongestRepeat = 258;

    // Codes and extra bits of repeat lengths and distances: RFC 1951, section 3.2.5.
    private static readonly byte[] LengthExtra = [0, 0, 0, 0, 0, 0, 0, 0, 1, 1, 1, 1, 2, 2, 2, 2, 3, 3, 3, 3, 4, 4, 4, 4, 5, 5, 5, 5, 0];
    private static readonly ushort[] LengthBase =
        [3, 4, 5, 6, 7, 8, 9, 10, 11, 13, 15, 17, 19, 23, 27, 31, 35, 43, 51, 59, 67, 83, 99, 115, 131, 163, 195, 227, 258];
    private static readonly byte[] LengthSymbol = BuildLengthSymbols();

    // A token is a literal byte, or a repeat as (length << 1 | (1 for the row, 0 for the cell)) + FirstRepeat.
    private const int FirstRepeat = 256;

    private readonly int[] tokens = new int[LongestBlock];
    private readonly byte[] output = new byte[LongestBlock + 1024];

    /// <summary>Packs a block.</summary>
    /// <param name="block">The bytes, 1 to <see cref="LongestBlock"/>.</param>
    /// <param name="cell">Bytes a cell: the first distance at which repeats are sought.</param>
    /// <param name="row">Bytes a row of cells: the second.</param>
    /// <returns>The zlib stream.</returns>
    public byte[] Pack(ReadOnlySpan<byte> block, int cell, int row)
    {
        if (block.Length is 0 or > LongestBlock)
        {
            throw new ArgumentException($"A block has 1 to {LongestBlock} bytes, not {block.Length}.", nameof(block));
        }

        int count = Tokenise(block, cell, row);
        Plan plan = new(cell, row);
        plan.Count(tokens.AsSpan(0, count));
        output[0] = 0x78;
        output[1] = 0x01;
        int length = 2;
        length += plan.Bytes < block.Length + 5 ? plan.Write(tokens.AsSpan(0, count), output.AsSpan(2)) : Store(block, output.AsSpan(2));
        BinaryPrimitives.WriteUInt32BigEndian(output.AsSpan(length), Adler32(block));
        return output.AsSpan(0, length + 4).ToArray();
    }

    /// <summary>Check sum of zlib (RFC 1950, section 8.2).</summary>
    internal static uint Adler32(ReadOnlySpan<byte> bytes)
    {
        const uint Prime = 65521;

        // Longest run in which the second sum stays below 2^32.
        const int Run = 5552;
        uint a = 1, b = 0;
        while (bytes.Length > 0)
        {
            int length = Math.Min(bytes.Length, Run), at = 0;
            for (; at <= length - 16; at += 16)
            {
                // The first of sixteen counts sixteen times in the second sum, the last once.
                (Vector128<ushort> low, Vector128<ushort> high) = Vector128.Widen(Vector128.Create(bytes.Slice(at, 16)));
                b += 16 * a + Vector128.Sum(low * Vector128.Create((ushort)16, 15, 14, 13, 12, 11, 10, 9) + high * Vector128.Create((ushort)8, 7, 6, 5, 4, 3, 2, 1));
                a += Vector128.Sum(low + high);
            }

            for (; at < length; at++)
            {
                a += bytes[at];
                b += a;
            }

            a %= Prime;
            b %= Prime;
            bytes = bytes[length..];
        }

        return (b << 16) | a;
    }

    private static byte[] BuildLengthSymbols()
    {
        byte[] symbols = new byte[LongestRepeat + 1];
        for (int length = ShortestRepeat; length <= LongestRepeat; length++)
        {
            int symbol = LengthBase.Length - 1;
            while (LengthBase[symbol] > length)
            {
                symbol--;
            }

            symbols[length] = (byte)symbol;
        }

        return symbols;
    }

    private static int Store(ReadOnlySpan<byte> block, Span<byte> into)
    {
        into[0] = 1;
        BinaryPrimitives.WriteUInt16LittleEndian(into[1..], (ushort)block.Length);
        BinaryPrimitives.WriteUInt16LittleEndian(into[3..], (ushort)~block.Length);
        block.CopyTo(into[5..]);
        return block.Length + 5;
    }

    private int Tokenise(ReadOnlySpan<byte> block, int cell, int row)
    {
        int count = 0, at = 0;
        while (at < block.Length)
        {
            int nearLength = Repeat(block, at, cell);
            int farLength = nearLength == LongestRepeat ? 0 : Repeat(block, at, row);
            bool far = farLength > nearLength;
            int length = far ? farLength : nearLength;
            if (length < ShortestRepeat)
            {
                tokens[count++] = block[at++];
                continue;
            }

            tokens[count++] = FirstRepeat + ((length << 1) | (far ? 1 : 0));
            at += length;
        }

        return count;
    }

    private static int Repeat(ReadOnlySpan<byte> block, int at, int distance)
    {
        int from = at - distance, left = block.Length - at;
        if (from < 0 || left < ShortestRepeat)
        {
            return 0;
        }

        // Three bytes at once where four can be read.
        bool begins = left > ShortestRepeat
            ? (BinaryPrimitives.ReadUInt32LittleEndian(block[from..]) ^ BinaryPrimitives.ReadUInt32LittleEndian(block[at..])) << 8 == 0
            : block[from] == block[at] && block[from + 1] == block[at + 1] && block[from + 2] == block[at + 2];
        if (!begins)
        {
            return 0;
        }

        int longest = Math.Min(LongestRepeat, left);
        return block.Slice(at, longest).CommonPrefixLength(block.Slice(from, longest));
    }

    /// <summary>The prefix codes of one block and what they cost.</summary>
    private ref struct Plan
    {
        private readonly int cellSymbol, rowSymbol, cellExtra, rowExtra, cellExtraSize, rowExtraSize;
        private readonly int[] literalCounts = new int[LiteralSymbols];
        private readonly int[] distanceCounts = new int[DistanceSymbols];
        private readonly byte[] literalLengths = new byte[LiteralSymbols];
        private readonly byte[] distanceLengths = new byte[DistanceSymbols];
        private CodeLengths header;

        public Plan(int cell, int row)
        {
            (cellSymbol, cellExtra, cellExtraSize) = Distance(cell);
            (rowSymbol, rowExtra, rowExtraSize) = Distance(row);
        }

        /// <summary>Size of the deflate block, bytes.</summary>
        public long Bytes { get; private set; }

        public void Count(ReadOnlySpan<int> tokens)
        {
            literalCounts[EndOfBlock] = 1;
            long extra = 0;
            foreach (int token in tokens)
            {
                if (token < FirstRepeat)
                {
                    literalCounts[token]++;
                    continue;
                }

                int symbol = LengthSymbol[(token - FirstRepeat) >> 1];
                bool far = (token & 1) != 0;
                literalCounts[257 + symbol]++;
                distanceCounts[far ? rowSymbol : cellSymbol]++;
                extra += LengthExtra[symbol] + (far ? rowExtraSize : cellExtraSize);
            }

            // Two symbols at least, so that either code is complete: some readers refuse less.
            EnsureTwo(literalCounts);
            EnsureTwo(distanceCounts);
            PrefixCode.Lengths(literalCounts, 15, literalLengths);
            PrefixCode.Lengths(distanceCounts, 15, distanceLengths);
            header = CodeLengths.Of(literalLengths, distanceLengths);
            long bits = 3 + header.Bits + extra;
            for (int i = 0; i < LiteralSymbols; i++)
            {
                bits += (long)literalCounts[i] * literalLengths[i];
            }

            for (int i = 0; i < DistanceSymbols; i++)
            {
                bits += (long)distanceCounts[i] * distanceLengths[i];
            }

            Bytes = (bits + 7) / 8;
        }

        public readonly int Write(ReadOnlySpan<int> tokens, Span<byte> into)
        {
            Span<ushort> literal = stackalloc ushort[LiteralSymbols];
            Span<ushort> distance = stackalloc ushort[DistanceSymbols];
            PrefixCode.Codes(literalLengths, literal);
            PrefixCode.Codes(distanceLengths, distance);
            BitSink sink = new(into);
            sink.Add(0b101, 3);
            header.Write(ref sink);
            foreach (int token in tokens)
            {
                if (token < FirstRepeat)
                {
                    sink.Add(literal[token], literalLengths[token]);
                    continue;
                }

                int length = (token - FirstRepeat) >> 1;
                int symbol = LengthSymbol[length];
                sink.Add(literal[257 + symbol], literalLengths[257 + symbol]);
                sink.Add((uint)(length - LengthBase[symbol]), LengthExtra[symbol]);
                bool far = (token & 1) != 0;
                int reach = far ? rowSymbol : cellSymbol;
                sink.Add(distance[reach], distanceLengths[reach]);
                sink.Add((uint)(far ? rowExtra : cellExtra), far ? rowExtraSize : cellExtraSize);
            }

            sink.Add(literal[EndOfBlock], literalLengths[EndOfBlock]);
            sink.Align();
            return sink.Length;
        }

        /// <summary>Symbol, extra bits and their number of a distance (RFC 1951, section 3.2.5).</summary>
        private static (int Symbol, int Extra, int ExtraSize) Distance(int distance)
        {
            int offset = distance - 1;
            if (offset < 4)
            {
                return (offset, 0, 0);
            }

            int size = 31 - int.LeadingZeroCount(offset) - 1;
            return (2 * size + (offset >> size), offset & ((1 << size) - 1), size);
        }

        private static void EnsureTwo(int[] counts)
        {
            int missing = 2 - Math.Min(2, counts.Count(count => count > 0));
            for (int symbol = 0; missing > 0; symbol++)
            {
                if (counts[symbol] == 0)
                {
                    counts[symbol] = 1;
                    missing--;
                }
            }
        }
    }
}
