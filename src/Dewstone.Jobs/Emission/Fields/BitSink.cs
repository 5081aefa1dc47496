using System.Buffers.Binary;

namespace Dewstone.Jobs.Emission.Fields;

/// <summary>Collects bits, first bit lowest, as deflate wants them (RFC 1951, section 3.1.1).</summary>
/// <param name="bytes">Receives the bits; eight bytes longer than what will be written.</param>
internal ref struct BitSink(Span<byte> bytes)
{
    private readonly Span<byte> bytes = bytes;
    private ulong pending;
    private int count;

    /// <summary>Whole bytes written.</summary>
    public int Length { get; private set; }

    /// <summary>Adds bits.</summary>
    /// <param name="bits">The bits; none above <paramref name="size"/>.</param>
    /// <param name="size">How many, up to 32.</param>
    public void Add(uint bits, int size)
    {
        pending |= (ulong)bits << count;
        count += size;
        if (count >= 32)
        {
            BinaryPrimitives.WriteUInt32LittleEndian(bytes[Length..], (uint)pending);
            Length += 4;
            pending >>= 32;
            count -= 32;
        }
    }

    /// <summary>Fills the last byte with zero bits.</summary>
    public void Align()
    {
        while (count > 0)
        {
            bytes[Length++] = (byte)pending;
            pending >>= 8;
            count -= 8;
        }

        pending = 0;
        count = 0;
    }
}
