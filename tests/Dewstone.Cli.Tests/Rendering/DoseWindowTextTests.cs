using System.Text;
using Dewstone.Cli.Rendering;
using Dewstone.Model.Results;

namespace Dewstone.Cli.Tests.Rendering;

public sealed class DoseWindowTextTests
{
    private static readonly DoseWindow Narrow = new()
    {
        ClosingMillilitres = 28.0,
        GreatestMillilitres = 32.0,
        Ceiling = DoseCeiling.WaterCement,
        WaterCementLimit = 0.6,
        WaterCementPerMillilitre = 0.6 / 32.0,
        Repeatability = 0.02,
        Drift = 0.05,
        WorstRepeatability = 0.02,
        Needles = 576,
        NeedlesTooLoose = 576,
    };

    public static TheoryData<string, DoseWindow> Verdicts => new()
    {
        { "TOO NARROW for 576 of 576 needles. Without drift the worst holds 1.2 mL,", Narrow },
        { "TOO NARROW for 576 of 576 needles. Allow a higher water/cement", Narrow with { Repeatability = 0.045, WorstRepeatability = 0.045 } },
        { "OK: all 576 needles hold the window.", Narrow with { Drift = 0.0, NeedlesTooLoose = 0 } },
        { "worst needle   3.5  either way: repeat 3 %", Narrow with { WorstRepeatability = 0.03 } },
        { "Unknown whether the needles hold it", Narrow with { Repeatability = 0.0, WorstRepeatability = 0.0, Drift = 0.0, NeedlesTooLoose = 0 } },
        { "No window", Narrow with { GreatestMillilitres = 27.0 } },
        { "most          32.0  water/cement 0.60, the most a needle gives", Narrow with { Ceiling = DoseCeiling.Needle } },
        { "most          32.0  water/cement 0.60, the pores of a dense voxel are full", Narrow with { Ceiling = DoseCeiling.Pores } },
    };

    [Theory]
    [MemberData(nameof(Verdicts))]
    public void Verdict_is_said_plainly_within_80_columns(string wanted, DoseWindow window)
    {
        StringBuilder text = new();
        DoseWindowText.Add(text, window);
        Assert.Contains(wanted, text.ToString(), StringComparison.Ordinal);
        Assert.All(text.ToString().Split('\n'), line => Assert.True(line.Length <= 80, line));
    }
}
