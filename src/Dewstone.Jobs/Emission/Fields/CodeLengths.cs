namespace Dewstone.Jobs.Emission.Fields;

/// <summary>The lengths of both prefix codes as a deflate block begins with them: runs shortened, then coded themselves (RFC 1951, section 3.2.7).</summary>
internal readonly struct CodeLengths
{
    private const int Symbols = 19;
    private const int RepeatPrevious = 16;
    private const int ShortZeros = 17;
    private const int LongZeros = 18;
    private static readonly byte[] Order = [16, 17, 18, 0, 8, 7, 9, 6, 10, 5, 11, 4, 12, 3, 13, 2, 14, 1, 15];

    private readonly int literals;
    private readonly int distances;
    private readonly int sent;
    private readonly List<(byte Symbol, byte Extra)> runs;
    private readonly byte[] lengths;

    private CodeLengths(ReadOnlySpan<byte> literalLengths, ReadOnlySpan<byte> distanceLengths)
    {
        literals = Math.Max(257, Used(literalLengths));
        distances = Math.Max(1, Used(distanceLengths));
        byte[] all = [.. literalLengths[..literals], .. distanceLengths[..distances]];
        runs = Runs(all);
        int[] counts = new int[Symbols];
        foreach ((byte symbol, _) in runs)
        {
            counts[symbol]++;
        }

        // A complete code needs two symbols.
        for (int symbol = 0; counts.Count(count => count > 0) < 2; symbol++)
        {
            counts[symbol] = Math.Max(counts[symbol], 1);
        }

        lengths = new byte[Symbols];
        PrefixCode.Lengths(counts, 7, lengths);
        sent = Symbols;
        while (sent > 4 && lengths[Order[sent - 1]] == 0)
        {
            sent--;
        }

        Bits = 14 + 3 * sent;
        foreach ((byte symbol, _) in runs)
        {
            Bits += lengths[symbol] + ExtraSize(symbol);
        }
    }

    /// <summary>Size, bits.</summary>
    public int Bits { get; }

    /// <summary>The header for two codes.</summary>
    /// <param name="literalLengths">Lengths of literals and repeat lengths.</param>
    /// <param name="distanceLengths">Lengths of distances.</param>
    public static CodeLengths Of(ReadOnlySpan<byte> literalLengths, ReadOnlySpan<byte> distanceLengths) => new(literalLengths, distanceLengths);

    /// <summary>Writes the header after the three bits of the block's kind.</summary>
    public void Write(ref BitSink sink)
    {
        Span<ushort> codes = stackalloc ushort[Symbols];
        PrefixCode.Codes(lengths, codes);
        sink.Add((uint)(literals - 257), 5);
        sink.Add((uint)(distances - 1), 5);
        sink.Add((uint)(sent - 4), 4);
        foreach (byte symbol in Order.AsSpan(0, sent))
        {
            sink.Add(lengths[symbol], 3);
        }

        foreach ((byte symbol, byte extra) in runs)
        {
            sink.Add(codes[symbol], lengths[symbol]);
            sink.Add(extra, ExtraSize(symbol));
        }
    }

    private static int Used(ReadOnlySpan<byte> lengths) => lengths.LastIndexOfAnyExcept((byte)0) + 1;

    private static int ExtraSize(byte symbol) => symbol switch { RepeatPrevious => 2, ShortZeros => 3, LongZeros => 7, _ => 0 };

    private static List<(byte Symbol, byte Extra)> Runs(ReadOnlySpan<byte> all)
    {
        List<(byte Symbol, byte Extra)> found = [];
        int at = 0;
        while (at < all.Length)
        {
            byte value = all[at];
            int run = all[at..].IndexOfAnyExcept(value);
            run = run < 0 ? all.Length - at : run;
            at += run;
            if (value != 0)
            {
                found.Add((value, 0));
                run--;
            }

            while (run >= 3)
            {
                int part = Math.Min(run, value != 0 ? 6 : 138);
                found.Add(value != 0 ? ((byte)RepeatPrevious, (byte)(part - 3))
                    : part <= 10 ? ((byte)ShortZeros, (byte)(part - 3))
                    : ((byte)LongZeros, (byte)(part - 11)));
                run -= part;
            }

            for (; run > 0; run--)
            {
                found.Add((value, 0));
            }
        }

        return found;
    }
}
