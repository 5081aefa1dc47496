using Dewstone.Compute.Seabed;

namespace Dewstone.Compute.Tests.Seabed;

/// <summary>d'Angremond, van der Meer and de Jong, 1996; wide crests Briganti et al., 2003 (forms confirmed in public code, digits recomputed): H = 1 m, tan 0.5, T = 6 s.</summary>
public sealed class WaveTransmissionTests
{
    private static readonly double Xi = WaveTransmission.SurfSimilarity(0.5, 1.0, 6.0);

    [Theory]
    [InlineData(-0.5, 0.58541)]
    [InlineData(0.0, 0.38541)]
    [InlineData(0.5, 0.18541)]
    public void Crest_of_three_heights_equals_the_worked_one(double freeboard, double expected)
    {
        Assert.Equal(3.74857, Xi, 1e-4);
        Assert.Equal(expected, WaveTransmission.Share(freeboard, 3.0, 1.0, Xi), 1e-5);
    }

    /// <summary>Clipped at both ends: a public code that returns 1 from 0.80 on is wrong.</summary>
    [Fact]
    public void Share_is_clipped()
    {
        Assert.Equal(0.94178, WaveTransmission.Unclipped(-1.0, 1.0, 1.0, Xi), 1e-5);
        Assert.Equal(0.80, WaveTransmission.Share(-1.0, 1.0, 1.0, Xi));
        Assert.Equal(0.075, WaveTransmission.Share(3.0, 1.0, 1.0, Xi));
    }

    /// <summary>B / H = 10, Rc = -0.5: midway between 0.46535 and 0.26462.</summary>
    [Fact]
    public void Crest_of_ten_heights_lies_between_the_two_forms() => Assert.Equal(0.36499, WaveTransmission.Unclipped(-0.5, 10.0, 1.0, Xi), 2e-5);
}
