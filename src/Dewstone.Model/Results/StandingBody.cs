namespace Dewstone.Model.Results;

/// <summary>The predicted solid as the sea meets it: how much, how high, how wide from each side, and what it stands on. Unit frame, metres, z from where it stands.</summary>
public sealed record StandingBody
{
    /// <summary>Directions from which the silhouette is held: every 5 degrees over half a turn.</summary>
    public const int Directions = 36;

    /// <summary>Solid, loose pieces left out, m3.</summary>
    public required double CubicMetres { get; init; }

    /// <summary>Share of all that hardened which hangs together, 0 to 1.</summary>
    public required double MainShare { get; init; }

    /// <summary>Top above where it stands, m.</summary>
    public required double HeightMetres { get; init; }

    /// <summary>Centre of the solid: x, y and height, m.</summary>
    public required (double X, double Y, double Z) Centre { get; init; }

    /// <summary>Area seen from above, m2.</summary>
    public required double PlanSquareMetres { get; init; }

    /// <summary>Middle of the area seen from above, m.</summary>
    public required (double X, double Y) PlanCentre { get; init; }

    /// <summary>Area that stands on the seabed, m2.</summary>
    public required double ContactSquareMetres { get; init; }

    /// <summary>Corners of the smallest convex outline around that area, counter-clockwise, m.</summary>
    public required IReadOnlyList<(double X, double Y)> Footprint { get; init; }

    /// <summary>Area seen along each direction, m2; entry i for the bearing of i x 5 degrees, clockwise from +y, and its opposite.</summary>
    public required double[] SilhouetteSquareMetres { get; init; }

    /// <summary>Height of the middle of that area, m.</summary>
    public required double[] SilhouetteHeightMetres { get; init; }

    /// <summary>Width of the outline of what it stands on, across its narrowest direction, m.</summary>
    public required double FootWidthMetres { get; init; }

    /// <summary>Area of the outline of what it stands on, m2.</summary>
    public required double FootprintSquareMetres { get; init; }

    /// <summary>Area and its middle's height seen from a bearing, straight between the directions held.</summary>
    /// <param name="bearingDegrees">Clockwise from +y of the unit, degrees.</param>
    /// <returns>m2 and m.</returns>
    public (double SquareMetres, double HeightMetres) Seen(double bearingDegrees)
    {
        const double Step = 180.0 / Directions;
        double at = bearingDegrees / Step;
        double floor = Math.Floor(at), share = at - floor;
        int low = (int)(((long)floor % Directions + Directions) % Directions), high = (low + 1) % Directions;
        return (
            SilhouetteSquareMetres[low] + share * (SilhouetteSquareMetres[high] - SilhouetteSquareMetres[low]),
            SilhouetteHeightMetres[low] + share * (SilhouetteHeightMetres[high] - SilhouetteHeightMetres[low]));
    }
}
