using System.Numerics;
using Dewstone.Compute.Wetting;
using Dewstone.Model.Description;
using Dewstone.Model.Quantities;

namespace Dewstone.Compute.Tests.Wetting;

/// <summary>The potential of each law is the integral of its diffusivity.</summary>
public sealed class TransportLawTests
{
    private const double Porosity = 0.4;

    public static TheoryData<bool, int, double> Laws
    {
        get
        {
            TheoryData<bool, int, double> data = [];
            for (int exponent = 1; exponent <= 12; exponent++)
            {
                data.Add(true, exponent, 0.0);
                data.Add(true, exponent, 0.03);
                data.Add(false, exponent, 0.02);
            }

            return data;
        }
    }

    // Closed forms: Phi = D1 (porosity - residual)/(m + 1) s^(m+1), and D1 (porosity - residual)/b exp(-b) (exp(b s) - 1).
    // Single precision: 2e-6 relative to saturation for powers; the exponential's own polynomial 5e-5 of the value.
    [Theory]
    [MemberData(nameof(Laws))]
    public void Potential_is_the_closed_integral(bool isPower, int exponent, double residual)
    {
        MoisturePotential law = Potential(isPower, exponent, residual);
        float[] content = new float[64 * Vector<float>.Count];
        for (int i = 0; i < content.Length; i++)
        {
            content[i] = (float)(Porosity * i / (content.Length - 1));
        }

        float[] potential = new float[content.Length];
        law.Fill(content, potential);
        double range = Porosity - residual;
        for (int i = 0; i < content.Length; i++)
        {
            double s = Math.Max(0.0, (content[i] - residual) / range);
            double expected = isPower
                ? 2e-6 * range / (exponent + 1) * Math.Pow(s, exponent + 1)
                : 2e-6 * range / exponent * Math.Exp(-exponent) * (Math.Exp(exponent * s) - 1.0);
            double most = 2e-6 * range / (isPower ? exponent + 1 : exponent);
            double tolerance = 2e-6 * most + (isPower ? 0.0 : 5e-5 * expected);
            Assert.InRange(law.Scale * potential[i], expected - tolerance, expected + tolerance);
        }

        Assert.Equal(0f, potential[0]);
    }

    // The step's limit uses D itself: compare it with the slope of the potential.
    [Theory]
    [InlineData(true, 4)]
    [InlineData(false, 8)]
    public void Diffusivity_is_the_slope_of_the_potential(bool isPower, int exponent)
    {
        MoisturePotential law = Potential(isPower, exponent, 0.0);
        float[] content = new float[Vector<float>.Count];
        (content[0], content[1]) = (0.299f, 0.301f);
        float[] potential = new float[content.Length];
        law.Fill(content, potential);
        double slope = law.Scale * (potential[1] - potential[0]) / (content[1] - content[0]);
        Assert.InRange(law.Diffusivity(0.3) / slope, 0.999, 1.001);
    }

    [Theory]
    [InlineData(0, 0.0)]
    [InlineData(13, 0.0)]
    [InlineData(4, 0.4)]
    [InlineData(4, -0.1)]
    public void Law_out_of_range_is_refused(int exponent, double residual) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Potential(true, exponent, residual));

    private static MoisturePotential Potential(bool isPower, int exponent, double residual)
    {
        Diffusivity atSaturation = new(2e-6);
        WettingLaw law = isPower
            ? new PowerLaw { AtSaturation = atSaturation, Exponent = exponent, Residual = residual }
            : new ExponentialLaw { AtSaturation = atSaturation, Exponent = exponent, Residual = residual };
        return MoisturePotential.Of(law, Porosity);
    }
}
