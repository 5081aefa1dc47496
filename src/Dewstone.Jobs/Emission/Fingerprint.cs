using System.Buffers.Binary;
using System.Security.Cryptography;

namespace Dewstone.Jobs.Emission;

/// <summary>
/// A short hash that people can read out and compare: the first 60 bits of a SHA-256 (FIPS 180-4) in the base 32 alphabet of Crockford
/// ("Base 32", crockford.com), 12 characters without I, L, O and U.
/// </summary>
/// <param name="Bits">The 60 bits, most significant first.</param>
public readonly record struct Fingerprint(ulong Bits)
{
    private const string Alphabet = "0123456789ABCDEFGHJKMNPQRSTVWXYZ";
    private const int Characters = 12;

    /// <summary>The fingerprint of some bytes.</summary>
    /// <param name="bytes">What is hashed.</param>
    /// <returns>First 60 bits of their SHA-256.</returns>
    public static Fingerprint Of(ReadOnlySpan<byte> bytes) => new(BinaryPrimitives.ReadUInt64BigEndian(SHA256.HashData(bytes)) >> 4);

    /// <summary>The 12 characters as files hold them.</summary>
    /// <returns>Upper case, no hyphens.</returns>
    public override string ToString() =>
        string.Create(Characters, Bits, (text, bits) =>
        {
            for (int i = 0; i < Characters; i++)
            {
                text[i] = Alphabet[(int)(bits >> (5 * (Characters - 1 - i))) & 31];
            }
        });

    /// <summary>The 12 characters as sheets and labels show them, in groups of four.</summary>
    /// <returns>For instance <c>0123-4567-89AB</c>.</returns>
    public string Grouped()
    {
        string text = ToString();
        return $"{text[..4]}-{text[4..8]}-{text[8..]}";
    }

    /// <summary>Reads a fingerprint as people write it: any case, hyphens and spaces ignored, O read as 0, I and L as 1.</summary>
    /// <param name="text">What was written.</param>
    /// <param name="fingerprint">The fingerprint.</param>
    /// <returns>False when it is none.</returns>
    public static bool TryParse(ReadOnlySpan<char> text, out Fingerprint fingerprint)
    {
        ulong bits = 0;
        int count = 0;
        fingerprint = default;
        foreach (char written in text)
        {
            if (written is '-' or ' ')
            {
                continue;
            }

            int value = Alphabet.IndexOf(Meant(char.ToUpperInvariant(written)), StringComparison.Ordinal);
            if (value < 0 || ++count > Characters)
            {
                return false;
            }

            bits = (bits << 5) | (uint)value;
        }

        fingerprint = new Fingerprint(bits);
        return count == Characters;
    }

    private static char Meant(char written) => written switch { 'O' => '0', 'I' or 'L' => '1', _ => written };
}
