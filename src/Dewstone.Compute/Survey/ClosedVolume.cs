using Dewstone.Model.Results;

namespace Dewstone.Compute.Survey;

/// <summary>Volume within a scan that is a closed surface.</summary>
/// <remarks>Closed: every edge is walked as often one way as the other, corners being one where their coordinates are equal. Volume by the divergence theorem, the sum of a . (b x c) / 6.</remarks>
public static class ClosedVolume
{
    /// <summary>Triangles up to which it is looked into.</summary>
    public const int MostTriangles = 3_000_000;

    /// <summary>Measures.</summary>
    /// <param name="scan">The scan.</param>
    /// <returns>Cubic metres; null when it is no surface, not closed, or too large to be looked into.</returns>
    public static double? Of(UnitScan scan)
    {
        ArgumentNullException.ThrowIfNull(scan);
        if (!scan.IsSurface || scan.Count / 3 > MostTriangles)
        {
            return null;
        }

        Dictionary<(float, float, float), int> corners = [];
        Dictionary<(int, int), int> walked = [];
        float[] p = scan.Positions;
        double sixfold = 0.0;
        Span<int> own = stackalloc int[3];
        for (int t = 0; t < p.Length; t += 9)
        {
            for (int c = 0; c < 3; c++)
            {
                (float, float, float) place = (p[t + 3 * c], p[t + 3 * c + 1], p[t + 3 * c + 2]);
                if (!corners.TryGetValue(place, out own[c]))
                {
                    corners[place] = own[c] = corners.Count;
                }
            }

            for (int c = 0; c < 3; c++)
            {
                (int a, int b) = (own[c], own[(c + 1) % 3]);
                if (a != b)
                {
                    (int, int) edge = a < b ? (a, b) : (b, a);
                    walked[edge] = walked.GetValueOrDefault(edge) + (a < b ? 1 : -1);
                }
            }

            // From the first corner of all, so that a scan far from the origin loses no digits.
            double ax = p[t] - p[0], ay = p[t + 1] - p[1], az = p[t + 2] - p[2], bx = p[t + 3] - p[0], by = p[t + 4] - p[1], bz = p[t + 5] - p[2];
            double cx = p[t + 6] - p[0], cy = p[t + 7] - p[1], cz = p[t + 8] - p[2];
            sixfold += ax * (by * cz - bz * cy) + ay * (bz * cx - bx * cz) + az * (bx * cy - by * cx);
        }

        return walked.Values.All(balance => balance == 0) ? sixfold / 6.0 : null;
    }
}
