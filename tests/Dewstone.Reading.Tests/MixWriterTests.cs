using Dewstone.Model.Description;
using Dewstone.Model.Quantities;

namespace Dewstone.Reading.Tests;

public sealed class MixWriterTests
{
    [Fact]
    public void Mix_that_was_written_is_read_back()
    {
        DryMix sample = DescriptionReader.ReadMix(SampleFiles.Mix).Value!;
        DryMix other = sample with
        {
            Name = "Mix \"B\" \\ 2: new",
            Origin = new MixOrigin(MixOriginKind.Calibration, "balls.csv sha256 0123abcd"),
            Wetting = new ExponentialLaw { AtSaturation = new Diffusivity(1.23457e-5), Exponent = 8 },
            Strength = new StrengthLaw { Rule = StrengthRule.Measured, Compacted = true, Measured = [new MeasuredStrength(new Duration(604800.0), new Temperature(20.0), new Pressure(12.4e6))] },
            ReuseLimit = null,
            Uncertainty = new MixUncertainty(0.123456, 0.07, 0.0065) { Correlation = new MixCorrelation(0.25, -0.9, 0.001) },
        };
        DryMix[] ruled = [.. Enum.GetValues<StrengthRule>().Except([StrengthRule.Measured]).Select(rule => sample with { Strength = new StrengthLaw { Rule = rule, CementClass = "R" } })];
        foreach (DryMix mix in new[] { sample, other }.Concat(ruled))
        {
            FileReading<DryMix> back = DescriptionReader.MixText(MixWriter.Write(mix, ["made by a test"]), "a");
            Assert.Empty(back.Diagnostics);
            Assert.Equal(RecordText.Lines(mix), RecordText.Lines(back.Value!));
        }
    }

    [Fact]
    public void Correlations_that_cannot_be_are_found_at_their_place()
    {
        string text = MixWriter.Write(DescriptionReader.ReadMix(SampleFiles.Mix).Value! with
        {
            Uncertainty = new MixUncertainty(0.1, 0.1, 0.1) { Correlation = new MixCorrelation(0.9, 0.9, -0.9) },
        }, []);
        Assert.Equal("DW8325", Assert.Single(DescriptionReader.MixText(text, "a").Diagnostics).Code);
    }
}
