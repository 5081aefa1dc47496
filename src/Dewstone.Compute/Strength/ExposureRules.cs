using Dewstone.Model.Results;

namespace Dewstone.Compute.Strength;

/// <summary>Limits for concrete in sea water. All of those named XS and the ACI rows guard steel; a unit without steel is not bound by them.</summary>
/// <remarks>Sources: EN 206-1:2000, table F.1 (recommended limiting values); ACI 318 limits after Portland Cement Association, table 9-1.</remarks>
public static class ExposureRules
{
    /// <summary>The rows.</summary>
    public static IReadOnlyList<ExposureRule> All { get; } =
    [
        new("EN 206 XS1", "airborne salt", 0.50, 37e6, 300.0, true),
        new("EN 206 XS2", "permanently under sea water", 0.45, 45e6, 320.0, true),
        new("EN 206 XS3", "tide, splash and spray", 0.45, 45e6, 340.0, true),
        new("EN 206 XF3", "wet with frost, no salt", 0.50, 37e6, 320.0, false),
        new("EN 206 XA2", "chemically moderate, as sea water on the cement", 0.50, 37e6, 320.0, false),
        new("EN 206 XA3", "chemically strong", 0.45, 45e6, 360.0, false),
        new("ACI 318 sea water", "reinforced concrete in sea water", 0.40, 35e6, null, true),
        new("ACI 318 low permeability", "concrete that is to keep water out", 0.50, 28e6, null, false),
    ];

    /// <summary>Holds a concrete against a row.</summary>
    /// <param name="rule">The row.</param>
    /// <param name="waterCement">Water/cement, 1.</param>
    /// <param name="pascals">Strength at 28 days, Pa.</param>
    /// <param name="cementKilograms">Cement, kg/m3.</param>
    /// <returns>Whether every limit is kept.</returns>
    public static bool Met(ExposureRule rule, double waterCement, double pascals, double cementKilograms)
    {
        ArgumentNullException.ThrowIfNull(rule);
        return waterCement <= rule.MostWaterCement && pascals >= rule.LeastPascals && (rule.LeastCement is not { } least || cementKilograms >= least);
    }
}
