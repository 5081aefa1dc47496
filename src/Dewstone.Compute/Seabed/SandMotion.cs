using Dewstone.Compute.Numerics;
using Dewstone.Model.Description;
using Dewstone.Model.Results;

namespace Dewstone.Compute.Seabed;

/// <summary>Holds the stress of a site's sea on its bed against what moves its sand.</summary>
internal static class SandMotion
{
    /// <summary>Judges at the level where the stress is greatest.</summary>
    /// <param name="site">The site.</param>
    /// <param name="body">The unit.</param>
    /// <param name="density">Of the water, kg/m3.</param>
    /// <param name="levels">The design wave at each level.</param>
    /// <returns>The report; null on clay or without a grain size.</returns>
    public static ScourReport? Of(Site site, StandingBody body, double density, IReadOnlyList<SeaLevel> levels)
    {
        if (site.Seabed is not { Soil: SoilKind.Sand, Grain: { } grain })
        {
            return null;
        }

        double current = site.Current?.Speed.MetresPerSecond ?? 0.0;
        double angle = ((site.Current?.Direction.Degrees ?? 0.0) - site.Wave.Direction.Degrees) * Math.PI / 180.0;
        double stress = 0.0, keuleganCarpenter = 0.0;
        foreach (SeaLevel level in levels)
        {
            AiryWave wave = new(level.HeightMetres, site.Wave.PeakPeriod.Seconds, level.DepthMetres);
            double speed = wave.SpeedAt(0.0);
            stress = Math.Max(stress, Scour.GreatestPascals(
                Scour.WavePascals(speed, wave.ExcursionMetres, grain.Metres, density),
                Scour.CurrentPascals(current, level.DepthMetres, grain.Metres, density), angle));
            keuleganCarpenter = Math.Max(keuleganCarpenter, speed * wave.PeriodSeconds / body.FootWidthMetres);
        }

        double viscosity = SeaWater.KinematicViscosity(site.Water.Salinity, site.Water.Temperature.Celsius);
        return new ScourReport(
            Scour.ThresholdPascals(grain.Metres, density, viscosity), stress, keuleganCarpenter,
            body.FootWidthMetres * Scour.DepthOverWidth(keuleganCarpenter));
    }
}
