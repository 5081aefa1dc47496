using Dewstone.Jobs.Emission;

namespace Dewstone.Jobs.Tests.Emission;

public sealed class FingerprintTests
{
    [Fact]
    public void Of_abc_is_the_first_60_bits_of_its_published_hash()
    {
        // FIPS 180-4 example: SHA-256("abc") = ba7816bf 8f01cfea ...; 60 bits in groups of five:
        // 10111 01001 11100 00001 01101 01111 11100 01111 00000 00111 00111 11110 = 23 9 28 1 13 15 28 15 0 7 7 30.
        Assert.Equal("Q9W1DFWF077Y", Fingerprint.Of("abc"u8).ToString());
        Assert.Equal("Q9W1-DFWF-077Y", Fingerprint.Of("abc"u8).Grouped());
    }

    [Fact]
    public void Alphabet_is_that_of_Crockford()
    {
        // Values 0 to 31 in the order of the published table.
        string text = string.Concat(Enumerable.Range(0, 32).Select(value => new Fingerprint((ulong)value).ToString()[^1]));

        Assert.Equal("0123456789ABCDEFGHJKMNPQRSTVWXYZ", text);
    }

    [Theory]
    [InlineData("Q9W1DFWF077Y")]
    [InlineData("q9w1-dfwf-o77y")]
    [InlineData(" Q9WI DFWF 077Y ")]
    [InlineData("Q9WLDFWF077Y")]
    public void Written_by_people_it_reads_the_same(string written)
    {
        Assert.True(Fingerprint.TryParse(written, out Fingerprint read));
        Assert.Equal(Fingerprint.Of("abc"u8), read);
    }

    [Theory]
    [InlineData("")]
    [InlineData("Q9W1DFWF077")]
    [InlineData("Q9W1DFWF077YY")]
    [InlineData("Q9W1DFWF077U")]
    [InlineData("Q9W1DFWF07-é")]
    public void Anything_else_is_refused(string written) => Assert.False(Fingerprint.TryParse(written, out _));
}
