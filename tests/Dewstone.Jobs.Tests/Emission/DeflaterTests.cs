using System.IO.Compression;
using Dewstone.Jobs.Emission.Fields;

namespace Dewstone.Jobs.Tests.Emission;

public sealed class DeflaterTests
{
    [Fact]
    public void Adler32_of_the_published_example()
    {
        // The check value usually given for the text "Wikipedia" in descriptions of RFC 1950's sum: 0x11E60398; derived by hand as well:
        // a = 1 + 919 = 920 = 0x398, b = 4582 = 0x11E6.
        Assert.Equal(0x11E60398u, Deflater.Adler32("Wikipedia"u8));
    }

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    [InlineData(7)]
    [InlineData(4096)]
    [InlineData(32768)]
    public void Blocks_of_every_nature_come_back(int length)
    {
        foreach ((string nature, byte[] block) in Natures(length))
        {
            byte[] packed = new Deflater().Pack(block, cell: 2, row: 160);

            Assert.True(block.AsSpan().SequenceEqual(Unpacked(packed)), $"{nature}, {length} bytes");
            Assert.True(packed.Length <= length + 11, $"{nature}: {packed.Length} bytes from {length}");
        }
    }

    [Fact]
    public void Dry_bed_packs_to_next_to_nothing()
    {
        byte[] packed = new Deflater().Pack(new byte[32768], 2, 352);

        Assert.InRange(packed.Length, 20, 100);
    }

    [Fact]
    public void Steeply_falling_counts_stay_within_the_longest_code()
    {
        // Fibonacci counts make the deepest tree there is: 22 symbols of 28,656 bytes want codes of 21 bits, deflate allows 15.
        List<byte> block = [];
        for (int symbol = 0, count = 1, next = 1; block.Count + count <= 32768; symbol++)
        {
            block.AddRange(Enumerable.Repeat((byte)symbol, count));
            (count, next) = (next, count + next);
        }

        byte[] shuffled = [.. block.Select((value, i) => (value, Key: (i * 7919L) % 32749)).OrderBy(item => item.Key).Select(item => item.value)];
        Assert.Equal(shuffled, Unpacked(new Deflater().Pack(shuffled, 40000, 40001)));
    }

    [Fact]
    public void Reused_packer_gives_the_same_bytes()
    {
        Deflater deflater = new();
        byte[] block = Natures(5000).Single(item => item.Nature == "ramp").Block;
        byte[] first = deflater.Pack(block, 2, 160);
        deflater.Pack(Natures(32768)[0].Block, 1, 80);

        Assert.Equal(first, deflater.Pack(block, 2, 160));
    }

    private static List<(string Nature, byte[] Block)> Natures(int length)
    {
        ulong state = 0x9E3779B97F4A7C15;
        byte Next()
        {
            state ^= state << 13;
            state ^= state >> 7;
            state ^= state << 17;
            return (byte)(state >> 32);
        }

        return
        [
            ("noise", [.. Enumerable.Range(0, length).Select(_ => Next())]),
            ("zeros", new byte[length]),
            ("ones", [.. Enumerable.Repeat((byte)1, length)]),
            ("ramp", [.. Enumerable.Range(0, length).Select(i => (byte)((i & 1) == 0 ? i / 2 * 13 : i / 500))]),
            ("rows", [.. Enumerable.Range(0, length).Select(i => (byte)(i % 160 * 37 / 16 + (Next() < 3 ? 1 : 0)))]),
            ("sparse", [.. Enumerable.Range(0, length).Select(_ => Next() < 8 ? Next() : (byte)0)]),
        ];
    }

    private static byte[] Unpacked(byte[] packed)
    {
        using ZLibStream zlib = new(new MemoryStream(packed), CompressionMode.Decompress);
        using MemoryStream plain = new();
        zlib.CopyTo(plain);
        return plain.ToArray();
    }
}
