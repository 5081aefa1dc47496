namespace Dewstone.Jobs.Emission.Pictures;

/// <summary>
/// Packs the inks of a GIF's picture: Lempel, Ziv and Welch's code with 8 bits an ink and words of 9 to 12 bits, in blocks of up to 255 bytes (GIF
/// specification, version 89a, section 22 and appendix F; from memory).
/// </summary>
internal sealed class GifCode
{
    private const int InkBits = 8, MostBits = 12, Clear = 1 << InkBits, End = Clear + 1, MostWords = 1 << MostBits;

    private const int Slots = 1 << 14, BlockBytes = 255;

    // Known words by prefix and ink, open addressing: a table at most a quarter full.
    private readonly int[] keys = new int[Slots];
    private readonly ushort[] words = new ushort[Slots];
    private readonly byte[] block = new byte[BlockBytes];
    private readonly Stream to;
    private int held;
    private uint bits;
    private int bitCount;
    private int width;
    private int next;

    private GifCode(Stream to) => this.to = to;

    /// <summary>Writes the image data of a picture.</summary>
    /// <param name="to">Takes it.</param>
    /// <param name="inks">Row by row from the top.</param>
    public static void Write(Stream to, ReadOnlySpan<byte> inks)
    {
        to.WriteByte(InkBits);
        new GifCode(to).Pack(inks);
        to.WriteByte(0);
    }

    private void Pack(ReadOnlySpan<byte> inks)
    {
        Begin(InkBits + 1);
        int word = inks[0];
        foreach (byte ink in inks[1..])
        {
            // No key is 0, since the prefix counts from 1.
            int key = (word + 1) << InkBits | ink, slot = (int)((uint)key * 0x9E3779B1u >> 18);
            while (keys[slot] != key && keys[slot] != 0)
            {
                slot = (slot + 1) % Slots;
            }

            if (keys[slot] == key)
            {
                word = words[slot];
                continue;
            }

            Put(word);
            if (next == MostWords)
            {
                Begin(width);
            }
            else
            {
                (keys[slot], words[slot]) = (key, (ushort)next);
                // The reader learns a word one code later, so codes grow with the first word that needs it.
                width += next == 1 << width ? 1 : 0;
                next++;
            }

            word = ink;
        }

        Put(word);
        width += next < MostWords && next == 1 << width ? 1 : 0;
        Put(End);
        Flush();
    }

    private void Begin(int now)
    {
        width = now;
        Put(Clear);
        Array.Clear(keys);
        width = InkBits + 1;
        next = End + 1;
    }

    private void Put(int code)
    {
        bits |= (uint)code << bitCount;
        bitCount += width;
        while (bitCount >= 8)
        {
            Byte((byte)bits);
            bits >>= 8;
            bitCount -= 8;
        }
    }

    private void Byte(byte one)
    {
        block[held++] = one;
        if (held == BlockBytes)
        {
            WriteBlock();
        }
    }

    private void Flush()
    {
        if (bitCount > 0)
        {
            Byte((byte)bits);
        }

        if (held > 0)
        {
            WriteBlock();
        }
    }

    private void WriteBlock()
    {
        to.WriteByte((byte)held);
        to.Write(block, 0, held);
        held = 0;
    }
}
