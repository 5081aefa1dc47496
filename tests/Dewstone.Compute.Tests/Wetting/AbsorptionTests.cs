using Dewstone.Compute.Wetting;
using Dewstone.Model.Description;
using Dewstone.Model.Quantities;

namespace Dewstone.Compute.Tests.Wetting;

/// <summary>
/// Water drawn from a saturated face into a dry row of cells (no gravity). Philip (1957), "The theory of infiltration", Soil Science 83-85:
/// content depends on x / sqrt(t) alone and the water taken up is S sqrt(t).
/// </summary>
public sealed class AbsorptionTests
{
    private const double Porosity = 0.4;

    // S^2/[D0 (porosity)^2] with D = D0 exp(b s): shooting on Philip's Boltzmann equation (own numerics, 16,000 points). The estimate
    // S^2 = integral of (1 + s) D ds = D0 [e^b (2/b - 1/b^2) - (1/b - 1/b^2)] (Parlange 1975, "On solving the flow equation in unsaturated
    // soils by optimization", Soil Sci. Soc. Am. J. 39, 415-418; Lockington, Parlange, Dux 1999, "Sorptivity and the estimation of water
    // penetration into unsaturated concrete", Mater. Struct. 32, 342-347) lies above it by 0.45, 0.28 and 0.19 %. 0.5 %, over 60 wetted cells.
    [Theory]
    [InlineData(6, 122.5826)]
    [InlineData(7, 290.0069)]
    [InlineData(8, 697.2154)]
    public void Sorptivity_of_the_exponential_law_is_that_of_the_Boltzmann_equation(int exponent, double expected)
    {
        Row row = new(new ExponentialLaw { AtSaturation = new Diffusivity(1e-5), Exponent = exponent }, 160);
        row.AdvanceUntilWet(30);
        (double early, double earlyRoot) = (row.TakenUpMetres, Math.Sqrt(row.Seconds));
        row.AdvanceUntilWet(120);
        double sorptivity = (row.TakenUpMetres - early) / (Math.Sqrt(row.Seconds) - earlyRoot);
        double measured = sorptivity * sorptivity / (1e-5 * Math.Exp(-exponent) * Porosity * Porosity);

        Assert.InRange(measured / expected, 0.995, 1.005);
        double b = exponent;
        double estimate = Math.Exp(b) * (2.0 / b - 1.0 / (b * b)) - (1.0 / b - 1.0 / (b * b));
        Assert.InRange(measured / estimate, 0.99, 1.0);
    }

    // Four times the time, twice the depth, to 0.1 %. Depth of half saturation, between cells.
    [Fact]
    public void Water_goes_twice_as_deep_in_four_times_the_time()
    {
        Row row = new(new ExponentialLaw { AtSaturation = new Diffusivity(1e-5), Exponent = 6 }, 320);
        row.AdvanceUntilWet(140);
        (double depth, double seconds) = (row.DepthOf(0.5), row.Seconds);
        row.AdvanceTo(4.0 * seconds);
        Assert.InRange(row.DepthOf(0.5) / depth, 1.998, 2.002);
    }

    // Boltzmann's similarity: the profiles at t and 4 t are one when depth is doubled. Within 1 % of the content's range at every depth.
    [Theory]
    [InlineData(false, 4)]
    [InlineData(true, 1)]
    public void Profiles_at_t_and_4_t_collapse_on_depth_over_root_time(bool isPower, int exponent)
    {
        (Row row, double[] depths) = TwiceAsDeep(isPower, exponent);
        double worst = 0.0;
        for (int i = 0; i < depths.Length; i++)
        {
            worst = Math.Max(worst, Math.Abs(row.SaturationAt(2.0 * depths[i]) - Levels[i]));
        }

        Assert.InRange(worst, 0.0, 0.01);
    }

    // The same where the front is a cliff one cell wide and contents cannot be compared there: the depths of each content, to 0.5 %.
    [Theory]
    [InlineData(false, 8)]
    [InlineData(true, 4)]
    [InlineData(true, 6)]
    public void Depths_at_t_and_4_t_are_as_one_to_two(bool isPower, int exponent)
    {
        (Row row, double[] depths) = TwiceAsDeep(isPower, exponent);
        for (int i = 0; i < depths.Length; i++)
        {
            Assert.InRange((row.DepthOf(Levels[i]) - 2.0 * depths[i]) / (2.0 * depths[0]), -0.005, 0.005);
        }
    }

    // The row at 4 t, and the depth of each level at t.
    private static (Row Row, double[] Depths) TwiceAsDeep(bool isPower, int exponent)
    {
        Diffusivity atSaturation = new(1e-5);
        WettingLaw law = isPower
            ? new PowerLaw { AtSaturation = atSaturation, Exponent = exponent }
            : new ExponentialLaw { AtSaturation = atSaturation, Exponent = exponent };
        Row row = new(law, 560);
        row.AdvanceUntilWet(240);
        double[] depths = [.. Levels.Select(row.DepthOf)];
        row.AdvanceTo(4.0 * row.Seconds);
        return (row, depths);
    }

    private static double[] Levels { get; } = [.. Enumerable.Range(1, 19).Select(i => i / 20.0)];

    /// <summary>A row of cells whose first is kept saturated; depth counts from its middle.</summary>
    private sealed class Row
    {
        private const double Cell = 0.001;
        private readonly TransportStepper field;
        private readonly double step;

        public Row(WettingLaw law, int cells)
        {
            field = new TransportStepper(cells, 1, 1, Cell, Cell, MoisturePotential.Of(law, Porosity), 1);
            // One row has no sideways flux, so the step may be three times that of a body.
            step = TransportStepper.StepShare * Cell * Cell / (2.0 * law.AtSaturation.SquareMetresPerSecond);
            Saturate();
        }

        public double Seconds { get; private set; }

        public double TakenUpMetres { get; private set; }

        public void AdvanceUntilWet(int cells)
        {
            while (field.Content[cells] < 0.01 * Porosity)
            {
                Advance(step);
            }
        }

        public void AdvanceTo(double seconds)
        {
            while (Seconds < seconds)
            {
                Advance(Math.Min(step, seconds - Seconds));
            }
        }

        public double SaturationAt(double depth)
        {
            int i = (int)(depth / Cell);
            double part = depth / Cell - i;
            return ((1.0 - part) * field.Content[i] + part * field.Content[i + 1]) / Porosity;
        }

        public double DepthOf(double saturation)
        {
            int i = 0;
            while (field.Content[i + 1] > saturation * Porosity)
            {
                i++;
            }

            return Cell * (i + (field.Content[i] - saturation * Porosity) / (field.Content[i] - (double)field.Content[i + 1]));
        }

        private void Advance(double seconds)
        {
            field.Step(seconds);
            Saturate();
            Seconds += seconds;
        }

        private void Saturate()
        {
            TakenUpMetres += Cell * (Porosity - field.Content[0]);
            field.Content[0] = (float)Porosity;
            field.Touch(0, 0, (float)Porosity);
        }
    }
}
