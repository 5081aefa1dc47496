using Dewstone.Model.Quantities;

namespace Dewstone.Compute.Survey;

/// <summary>A closed surface without the walls of enclosed pockets, which no scanner sees.</summary>
/// <remarks>Triangles that share corners form a sheet; a sheet that encloses a volume below 0 looks inward and is left out.</remarks>
public sealed record OuterSurface
{
    private OuterSurface(float[] positions, int[] triangles, double volume) => (Positions, Triangles, CubicMetres) = (positions, triangles, volume);

    /// <summary>Corners in use, x y z one after another, metres.</summary>
    public float[] Positions { get; }

    /// <summary>Three corner numbers a triangle.</summary>
    public int[] Triangles { get; }

    /// <summary>Volume within, the pockets included, m3.</summary>
    public double CubicMetres { get; }

    /// <summary>Its area, m2.</summary>
    public double SquareMetres
    {
        get
        {
            double sum = 0.0;
            for (int t = 0; t < Triangles.Length; t += 3)
            {
                (Point3 a, Point3 b, Point3 c) = (Corner(Triangles[t]), Corner(Triangles[t + 1]), Corner(Triangles[t + 2]));
                sum += Point3.Cross(b - a, c - a).Norm / 2.0;
            }

            return sum;
        }
    }

    /// <summary>Takes the outer sheets of a surface.</summary>
    /// <param name="positions">Corners, metres.</param>
    /// <param name="triangles">Three corner numbers a triangle, counter-clockwise seen from outside; closed.</param>
    /// <returns>The outer sheets; corners keep their order.</returns>
    public static OuterSurface Of(float[] positions, int[] triangles)
    {
        ArgumentNullException.ThrowIfNull(positions);
        ArgumentNullException.ThrowIfNull(triangles);
        int[] parent = [.. Enumerable.Range(0, positions.Length / 3)];
        for (int t = 0; t < triangles.Length; t += 3)
        {
            Join(parent, triangles[t], triangles[t + 1]);
            Join(parent, triangles[t], triangles[t + 2]);
        }

        double[] volumes = new double[parent.Length];
        for (int t = 0; t < triangles.Length; t += 3)
        {
            volumes[Root(parent, triangles[t])] += Signed(positions, triangles[t], triangles[t + 1], triangles[t + 2]);
        }

        int[] numbers = new int[parent.Length];
        List<float> corners = [];
        List<int> kept = [];
        double sum = 0.0;
        for (int corner = 0; corner < parent.Length; corner++)
        {
            double volume = volumes[Root(parent, corner)];
            numbers[corner] = volume > 0.0 ? corners.Count / 3 : -1;
            if (volume > 0.0)
            {
                corners.AddRange(positions.AsSpan(3 * corner, 3));
                sum += parent[corner] == corner ? volume : 0.0;
            }
        }

        foreach (int corner in triangles)
        {
            if (numbers[corner] >= 0)
            {
                kept.Add(numbers[corner]);
            }
        }

        return new OuterSurface([.. corners], [.. kept], sum);
    }

    private Point3 Corner(int corner) => new(Positions[3 * corner], Positions[3 * corner + 1], Positions[3 * corner + 2]);

    private static int Root(int[] parent, int corner)
    {
        while (parent[corner] != corner)
        {
            corner = parent[corner] = parent[parent[corner]];
        }

        return corner;
    }

    // The lower number leads, so that the order of joining does not matter.
    private static void Join(int[] parent, int a, int b)
    {
        (a, b) = (Root(parent, a), Root(parent, b));
        parent[Math.Max(a, b)] = Math.Min(a, b);
    }

    private static double Signed(float[] p, int i, int j, int k)
    {
        double ax = p[3 * i], ay = p[3 * i + 1], az = p[3 * i + 2], bx = p[3 * j], by = p[3 * j + 1], bz = p[3 * j + 2], cx = p[3 * k], cy = p[3 * k + 1], cz = p[3 * k + 2];
        return (ax * (by * cz - bz * cy) + ay * (bz * cx - bx * cz) + az * (bx * cy - by * cx)) / 6.0;
    }
}
