using Dewstone.Compute.Calibration;
using Dewstone.Compute.Numerics;
using Dewstone.Model.Description;
using Dewstone.Model.Measurements;
using Dewstone.Model.Quantities;

namespace Dewstone.Compute.Tests.Calibration;

/// <summary>The yard's tests on a mix that is known, with seeded normal errors: absorption 3 %, diameters 1.5 % each way, masses 1 %, densities 1 %, or so often that.</summary>
internal sealed class SimulatedTests
{
    public static readonly DryMix Truth = new()
    {
        Name = "Simulated mix",
        Origin = new MixOrigin(MixOriginKind.Assumed, ""),
        Currency = "EUR",
        Solids =
        [
            new Constituent { Name = "cement", Share = 0.25, GrainDensity = new Density(3150.0), IsBinder = true },
            new Constituent { Name = "sand", Share = 0.75, GrainDensity = new Density(2650.0) },
        ],
        LooseDensity = new Density(1655.0),
        Liquid = new Liquid { Density = new Density(1000.0) },
        Wetting = new PowerLaw { AtSaturation = new Diffusivity(4.4e-6), Exponent = 4 },
        Hardening = new Hardening { WaterCement = 0.25, Window = new Duration(600.0) },
    };

    /// <summary>What the yard believed before: the reference figures.</summary>
    public static readonly DryMix Assumed = Truth with
    {
        LooseDensity = new Density(1700.0),
        Wetting = new PowerLaw { AtSaturation = new Diffusivity(3.2e-6), Exponent = 4 },
        Hardening = Truth.Hardening with { WaterCement = 0.22 },
        Uncertainty = new MixUncertainty(0.2, 0.05, 0.02),
    };

    private readonly MixForward forward;
    private readonly MixFigures figures;
    private readonly SeededDraws draws;
    private readonly double errors;
    private ulong drawn;

    public SimulatedTests(int repeat, LawTables? tables = null, DryMix? mix = null, double errors = 1.0)
    {
        this.errors = errors;
        DryMix made = mix ?? Truth;
        forward = new MixForward(made, tables ?? new LawTables(SaturationLaw.Of(made.Wetting, made.Wetting.Exponent)));
        figures = new MixFigures(made.Wetting.AtSaturation.SquareMetresPerSecond, made.Hardening.WaterCement, made.LooseDensity.KilogramsPerCubicMetre);
        draws = new SeededDraws(20270611, repeat);
    }

    public MixReadings Absorption(int columns) => new()
    {
        File = "absorption.csv",
        Absorption = [.. from column in Enumerable.Range(0, columns)
                         let rate = forward.Sorptivity(figures) * Off(0.03)
                         from minute in new[] { 1, 2, 4, 8, 15, 30 }
                         select new AbsorptionReading($"C{column + 1}", 60.0 * minute, 5.0 * rate * Math.Sqrt(60.0 * minute) * Off(0.005), 50.0, 2 + column * 6)],
    };

    public MixReadings Balls(IEnumerable<double> doses) => new() { File = "balls.csv", Balls = [.. doses.Select(Ball)] };

    public MixReadings Pairs(IEnumerable<double> spacings, double dose) => new()
    {
        File = "pairs.csv",
        Pairs = [.. spacings.Select((spacing, i) =>
        {
            (double length, double waist) = forward.Pair(figures, dose, spacing, 20.0);
            return new PairReading(dose, spacing, length * Off(0.01), waist * Off(0.02), 20.0, i + 2);
        })],
    };

    public MixReadings Densities(int containers) => new()
    {
        File = "density.csv",
        Densities = [.. Enumerable.Range(0, containers).Select(i => new DensityReading(2000.0, 2.0 * figures.LooseDensity * Off(0.01), i + 2))],
    };

    private BallReading Ball(double dose, int index)
    {
        (double diameter, double water, double dry) = forward.Ball(figures, dose, 20.0);
        double weighed = dry * Off(0.01);
        return new BallReading(dose, [diameter * Off(0.015), diameter * Off(0.015), diameter * Off(0.015)], weighed + water * Off(0.02), weighed, 20.0, index + 2);
    }

    private double Off(double share) => 1.0 + errors * share * NormalQuantile.At(draws.Fraction(drawn++));
}
