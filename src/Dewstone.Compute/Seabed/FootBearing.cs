using Dewstone.Model.Description;
using Dewstone.Model.Results;

namespace Dewstone.Compute.Seabed;

/// <summary>Holds the pressure under a unit against what its seabed bears.</summary>
/// <remarks>
/// The load is the whole weight under water, without lift; the sea's greatest moment moves it from the middle by e, and only the width B - 2 e bears (Meyerhof, 1953, "The bearing
/// capacity of foundations under eccentric and inclined loads"; from memory). The slant of the load is not in it. Sinkage: until the soil beside the foot helps enough,
/// on clay 6.17 su + gam' D, on sand q + Nq gam' D (from memory). Judged by the method the site names, else by the least.
/// </remarks>
public static class FootBearing
{
    /// <summary>Nc of undrained clay under a square, with shape, 1.</summary>
    private const double SquareClay = 1.2 * BearingCapacity.UndrainedFactor;

    /// <summary>Judges.</summary>
    /// <param name="seabed">The soil.</param>
    /// <param name="body">What stands on it.</param>
    /// <param name="newtons">Weight under water, N.</param>
    /// <param name="rows">Forces of the sea.</param>
    /// <returns>The report; null when the soil lacks a figure or the body has no foot.</returns>
    public static BearingReport? Of(SeabedSoil seabed, StandingBody body, double newtons, IReadOnlyList<StabilityRow> rows)
    {
        ArgumentNullException.ThrowIfNull(seabed);
        ArgumentNullException.ThrowIfNull(body);
        if (!(newtons > 0.0 && body.FootprintSquareMetres > 0.0 && body.ContactSquareMetres > 0.0))
        {
            return null;
        }

        double moment = rows.Max(row => Math.Abs(row.DragNewtons) * row.DragHeightMetres + Math.Abs(row.InertiaNewtons) * body.Centre.Z);
        double width = Math.Min(body.FootWidthMetres, Math.Sqrt(body.ContactSquareMetres));
        double length = body.ContactSquareMetres / width, eccentricity = moment / newtons;
        double effective = Math.Max(0.0, width - 2.0 * eccentricity);
        List<NamedAmount> capacities = Capacities(seabed, effective, Math.Max(length, effective));
        if (capacities.Count == 0)
        {
            return null;
        }

        NamedAmount judged = capacities.Find(capacity => capacity.Name == seabed.Method.ToString()) ?? capacities.MinBy(capacity => capacity.Amount)!;
        double pressure = newtons / body.ContactSquareMetres;
        return new BearingReport
        {
            PressurePascals = pressure,
            EccentricityMetres = eccentricity,
            EffectiveWidthMetres = effective,
            CapacityPascals = capacities,
            Method = judged.Name,
            Factor = Math.Min(StabilityReport.MostFactor, judged.Amount * effective / width / pressure),
            SettlementMetres = seabed.Stiffness is { } stiffness ? ElasticSettlement.Of(pressure, width, stiffness.Pascals) : null,
            SinkageMetres = Sinkage(seabed, width, Math.Max(length, width), pressure),
        };
    }

    private static List<NamedAmount> Capacities(SeabedSoil seabed, double width, double length)
    {
        double weight = seabed.EffectiveWeight.NewtonsPerCubicMetre;
        return seabed switch
        {
            { Soil: SoilKind.Clay, UndrainedStrength: { } strength } => [new NamedAmount("undrained", BearingCapacity.Undrained(strength.Pascals, width, length))],
            { Soil: SoilKind.Sand, FrictionAngle: { } angle } =>
            [
                new NamedAmount("Terzaghi", BearingCapacity.Terzaghi(angle.Radians, weight, width, length)),
                new NamedAmount("Vesic", BearingCapacity.Vesic(angle.Radians, weight, width, length)),
                new NamedAmount("Meyerhof", BearingCapacity.Meyerhof(angle.Radians, weight, width, length)),
            ],
            _ => [],
        };
    }

    /// <summary>How deep a foot sinks in still water.</summary>
    /// <param name="seabed">The soil, with its strength.</param>
    /// <param name="width">B, m.</param>
    /// <param name="length">L, m.</param>
    /// <param name="pressure">Under the foot, Pa.</param>
    /// <returns>m.</returns>
    internal static double Sinkage(SeabedSoil seabed, double width, double length, double pressure)
    {
        double weight = seabed.EffectiveWeight.NewtonsPerCubicMetre;
        return seabed.Soil == SoilKind.Clay
            ? Math.Max(0.0, (pressure - SquareClay * seabed.UndrainedStrength!.Value.Pascals) / weight)
            : Math.Max(0.0, pressure - Capacities(seabed, width, length).Min(capacity => capacity.Amount))
                / (weight * BearingCapacity.Nq(seabed.FrictionAngle!.Value.Radians));
    }
}
