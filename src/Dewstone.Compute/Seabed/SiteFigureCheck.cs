using Dewstone.Model.Description;
using Dewstone.Model.Diagnostics;

namespace Dewstone.Compute.Seabed;

/// <summary>Finds figures of a site that no sea has, or that the formulas are not made for: they get a finding, and the unit no figure.</summary>
internal static class SiteFigureCheck
{
    private const double MostSalinity = 42.0;
    private const double WarmestOfEquation = 40.0;

    /// <summary>Checks.</summary>
    /// <param name="site">The site.</param>
    /// <returns>Findings DW6007; none when all is sound.</returns>
    public static IReadOnlyList<Diagnostic> Check(Site site)
    {
        List<Diagnostic> findings = [];
        double deepest = site.Water.Depth.Metres + Math.Max(site.Water.Low.Metres, site.Water.High.Metres);
        if (deepest <= SeabedSolver.DryMetres)
        {
            Add("water.depth", $"no water at either level: {deepest:0.##} m at the higher one", "give the depth at the datum and the levels against it");
            return findings;
        }

        if (site.Water.Salinity > MostSalinity || site.Water.Temperature.Celsius > WarmestOfEquation)
        {
            Add(
                "water.salinity", $"the equation of state of sea water ends at salinity {MostSalinity:0} and {WarmestOfEquation:0} degC",
                "give the salinity and temperature of the water there");
        }

        double period = site.Wave.PeakPeriod.Seconds, steepest = 0.142 * AiryWave.DeepLength(period);
        if (site.Wave.SignificantHeight.Metres > steepest)
        {
            Add(
                "wave.significant_height", $"waves of {period:0.#} s break above {steepest:0.##} m in any depth; {site.Wave.SignificantHeight.Metres:0.##} m is asked",
                "give height and period of one and the same storm");
        }

        if (site.Seabed.Friction <= 0.0)
        {
            Add("seabed.friction", "without friction nothing stands on the seabed", "give the friction coefficient, mostly 0.3 to 0.6");
        }

        if (site.Seabed is { Soil: SoilKind.Sand, FrictionAngle.Degrees: < 15.0 })
        {
            Add("seabed.friction_angle", $"sand has no friction angle of {site.Seabed.FrictionAngle.Value.Degrees:0.#} deg", "give that of the sand, mostly 28 to 40 deg");
        }

        if (site.Forces.Drag <= 0.0 || site.Forces.Inertia < 1.0)
        {
            Add("forces", "a body in moving water has drag above 0 and inertia of at least 1", "give the coefficients of the shape, or leave them out");
        }

        return findings;

        void Add(string key, string message, string remedy) =>
            findings.Add(SeaFindings.AbsurdFigure.At(message, remedy, new KeyPath(DescriptionKind.Site, key)));
    }
}
