using Dewstone.Model.Description;
using Dewstone.Model.Diagnostics;
using Dewstone.Model.Measurements;

namespace Dewstone.Compute.Calibration;

/// <summary>Turns tables of measurements into figures that a fit can compare.</summary>
/// <remarks>
/// A column's readings are not independent of each other: it counts once, by its sorptivity, the slope of uptake against the root of time with an intercept for
/// the first moment (C1585 form). A ball gives diameter, water (wet less dry mass) and dry mass.
/// Water that the cement has bound by the time a ball is dried counts as dry mass: dry it within the hour, or the water is told too low by about that share.
/// </remarks>
internal static class MixObservations
{
    private const double LeastCorrelation = 0.98;
    private const int FewestTimes = 3;

    /// <summary>Usual scatter of a kind, one standard deviation as a share: taken where the data are too few to tell. Common practice, no source.</summary>
    public static double UsualScatter(MeasuredKind kind) => kind switch
    {
        MeasuredKind.Sorptivity => 0.03,
        MeasuredKind.BallDiameter or MeasuredKind.PairLength => 0.015,
        MeasuredKind.BallWater or MeasuredKind.PairWaist => 0.03,
        MeasuredKind.BallDryMass => 0.02,
        _ => 0.01,
    };

    /// <summary>The figures of tables.</summary>
    /// <param name="data">The tables.</param>
    /// <param name="mix">Gives the density of the liquid.</param>
    /// <param name="findings">Takes DW3057.</param>
    public static IReadOnlyList<MixObservation> Of(IReadOnlyList<MixReadings> data, DryMix mix, List<Diagnostic> findings) =>
        [.. data.SelectMany(table => Columns(table, mix, findings).Concat(table.Balls.SelectMany(ball => Of(ball, table.File)))
            .Concat(table.Pairs.SelectMany(pair => Of(pair, table.File))).Concat(table.Densities.Select(density => Of(density, table.File))))];

    private static List<MixObservation> Columns(MixReadings table, DryMix mix, List<Diagnostic> findings)
    {
        List<MixObservation> columns = [];
        foreach (IGrouping<string, AbsorptionReading> column in table.Absorption.GroupBy(reading => reading.Specimen))
        {
            int first = column.First().Line;
            double[] roots = [.. column.Select(reading => Math.Sqrt(reading.Seconds))];

            // Grams over square centimetres and kg/m3: 1e4 mm.
            double[] uptakes = [.. column.Select(reading => 1e4 * reading.UptakeGrams / reading.AreaSquareCentimetres / mix.Liquid.Density.KilogramsPerCubicMetre)];
            LineFit? line = roots.Distinct().Count() >= FewestTimes ? LineFit.Of(roots, uptakes) : null;
            if (line is null || line.Slope <= 0.0 || line.RSquared < LeastCorrelation * LeastCorrelation)
            {
                findings.Add(CalibrationFindings.NotRootTime.At(
                    line is null ? $"column `{column.Key}` has readings at fewer than {FewestTimes} times"
                        : $"column `{column.Key}`: uptake and root of time have a correlation of {Math.Sqrt(Math.Max(0.0, line.RSquared)):0.000}, below {LeastCorrelation}",
                    line is { Slope: > 0.0 } ? "it is used; repeat the test on an evenly packed column" : "it was left out; repeat the test with more readings",
                    location: new SourceLocation(table.File, first, 1)));
            }

            if (line is { Slope: > 0.0 })
            {
                columns.Add(new MixObservation
                {
                    Kind = MeasuredKind.Sorptivity,
                    File = table.File,
                    Line = first,
                    At = 0.0,
                    Measured = line.Slope,
                    Model = (forward, figures) => forward.Sorptivity(figures),
                });
            }
        }

        return columns;
    }

    private static IEnumerable<MixObservation> Of(BallReading ball, string file)
    {
        MixObservation diameter = new()
        {
            Kind = MeasuredKind.BallDiameter,
            File = file,
            Line = ball.Line,
            At = ball.DoseMillilitres,
            Trial = $"{ball.DoseMillilitres} {ball.BedCelsius}",
            Measured = ball.DiameterMillimetres,
            Model = (forward, figures) => forward.Ball(figures, ball.DoseMillilitres, ball.BedCelsius).Diameter,
        };
        yield return diameter;
        yield return diameter with
        {
            Kind = MeasuredKind.BallWater,
            Measured = ball.WetGrams - ball.DryGrams,
            Model = (forward, figures) => forward.Ball(figures, ball.DoseMillilitres, ball.BedCelsius).Water,
        };
        yield return diameter with
        {
            Kind = MeasuredKind.BallDryMass,
            Measured = ball.DryGrams,
            Model = (forward, figures) => forward.Ball(figures, ball.DoseMillilitres, ball.BedCelsius).DryMass,
        };
    }

    private static IEnumerable<MixObservation> Of(PairReading pair, string file)
    {
        MixObservation length = new()
        {
            Kind = MeasuredKind.PairLength,
            File = file,
            Line = pair.Line,
            At = pair.SpacingMillimetres,
            Trial = $"{pair.DoseMillilitres} {pair.SpacingMillimetres} {pair.BedCelsius}",
            Measured = pair.LengthMillimetres,
            Model = (forward, figures) => forward.Pair(figures, pair.DoseMillilitres, pair.SpacingMillimetres, pair.BedCelsius).Length,
        };
        yield return length;
        yield return length with
        {
            Kind = MeasuredKind.PairWaist,
            Measured = pair.WaistMillimetres,
            Model = (forward, figures) => forward.Pair(figures, pair.DoseMillilitres, pair.SpacingMillimetres, pair.BedCelsius).Waist,
        };
    }

    private static MixObservation Of(DensityReading density, string file) => new()
    {
        Kind = MeasuredKind.LooseDensity,
        File = file,
        Line = density.Line,
        At = 0.0,
        Measured = 1000.0 * density.MassGrams / density.ContainerMillilitres,
        Model = (_, figures) => figures.LooseDensity,
    };
}
