using System.Buffers.Binary;
using System.Text;

namespace Dewstone.Cli.Tests.Fuzzing;

/// <summary>Changes the bytes of a file: broken transfers, other encodings, other kinds of file.</summary>
internal static class ByteMutation
{
    private static readonly Func<Dice, byte[], byte[]>[] All =
    [
        Flipped, Flipped, Overwritten, Inserted, Deleted, Repeated, Cut, Number, Number, Recoded, Recoded, BadUtf8, LineEnds, Marked, Nothing, Noise, Zeros,
    ];

    /// <summary>One change.</summary>
    public static byte[] Apply(Dice dice, byte[] bytes) => dice.Of(All)(dice, bytes);

    private static byte[] Flipped(Dice dice, byte[] bytes)
    {
        byte[] changed = [.. bytes];
        for (int flips = dice.Of([1, 1, 3, 20]); flips > 0 && changed.Length > 0; flips--)
        {
            changed[dice.Below(changed.Length)] ^= (byte)(1 << dice.Below(8));
        }

        return changed;
    }

    private static byte[] Overwritten(Dice dice, byte[] bytes)
    {
        byte[] changed = [.. bytes];
        for (int at = dice.Below(bytes.Length + 1), end = Math.Min(bytes.Length, at + dice.Below(9)); at < end; at++)
        {
            changed[at] = (byte)dice.Below(256);
        }

        return changed;
    }

    private static byte[] Inserted(Dice dice, byte[] bytes)
    {
        int at = dice.Below(bytes.Length + 1);
        return [.. bytes[..at], .. Noise(dice, new byte[dice.Below(30)]), .. bytes[at..]];
    }

    private static byte[] Deleted(Dice dice, byte[] bytes)
    {
        int at = dice.Below(bytes.Length + 1);
        return [.. bytes[..at], .. bytes[Math.Min(bytes.Length, at + dice.Of([1, 4, 50, 500]))..]];
    }

    private static byte[] Repeated(Dice dice, byte[] bytes)
    {
        int at = dice.Below(bytes.Length + 1);
        return [.. bytes, .. bytes[at..]];
    }

    private static byte[] Cut(Dice dice, byte[] bytes) => bytes[..dice.Below(bytes.Length + 1)];

    // A number of a binary file: a count, an offset, a coordinate.
    private static byte[] Number(Dice dice, byte[] bytes)
    {
        if (bytes.Length < 8)
        {
            return bytes;
        }

        byte[] changed = [.. bytes];
        int at = dice.OnceIn(2) ? dice.Below(Math.Min(100, bytes.Length - 7)) : dice.Below(bytes.Length - 7);
        BinaryPrimitives.WriteUInt32LittleEndian(changed.AsSpan(at), dice.Of([0u, 1u, 0x7fffffffu, 0x80000000u, 0xffffffffu, 0x7fc00000u, 0x7f800000u, 1u << 20]));
        return changed;
    }

    private static byte[] Recoded(Dice dice, byte[] bytes)
    {
        string text = Encoding.Latin1.GetString(bytes);
        Encoding encoding = dice.Of<Encoding>([Encoding.Unicode, Encoding.BigEndianUnicode, Encoding.UTF32, Encoding.Latin1]);
        return dice.OnceIn(2) ? [.. encoding.Preamble, .. encoding.GetBytes(text)] : encoding.GetBytes(text + "\u00e9");
    }

    private static byte[] BadUtf8(Dice dice, byte[] bytes)
    {
        int at = dice.Below(bytes.Length + 1);
        return [.. bytes[..at], .. dice.Of<byte[]>([[0xC0, 0x80], [0xED, 0xA0, 0x80], [0xFF], [0xE2, 0x82], [0xF4, 0x90, 0x80, 0x80], [0x80], [0xC2, 0x9B]]), .. bytes[at..]];
    }

    private static byte[] LineEnds(Dice dice, byte[] bytes) => Encoding.Latin1.GetBytes(Encoding.Latin1.GetString(bytes).Replace("\n", dice.Of(["\r\n", "\r", "\n\r", "\u0085", "\0"]), StringComparison.Ordinal));

    private static byte[] Marked(Dice dice, byte[] bytes)
    {
        int at = dice.OnceIn(2) ? 0 : dice.Below(bytes.Length + 1);
        return [.. bytes[..at], .. Encoding.UTF8.Preamble, .. bytes[at..]];
    }

    private static byte[] Nothing(Dice dice, byte[] bytes) => dice.Of<byte[]>([[], "\n"u8.ToArray(), "   "u8.ToArray(), [0], [0xEF, 0xBB, 0xBF], [0x1F, 0x8B, 8, 0]]);

    private static byte[] Noise(Dice dice, byte[] bytes)
    {
        byte[] noise = new byte[Math.Min(bytes.Length, 4000)];
        for (int i = 0; i < noise.Length; i++)
        {
            noise[i] = (byte)dice.Below(256);
        }

        return noise;
    }

    private static byte[] Zeros(Dice dice, byte[] bytes) => new byte[dice.Of([1, 100, 4096, 300_000])];
}
