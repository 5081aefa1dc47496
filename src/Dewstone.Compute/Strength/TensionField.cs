using Dewstone.Compute.Numerics;
using Dewstone.Model.Quantities;

namespace Dewstone.Compute.Strength;

/// <summary>Tension in a body under one load case, each brick by the corner of its octants that comes nearest to cracking.</summary>
/// <param name="bricks">The body.</param>
internal sealed class TensionField(BodyBricks bricks)
{
    private readonly float[] tension = new float[bricks.Shape.Count], cracking = new float[bricks.Shape.Count];
    private readonly byte[] corner = new byte[bricks.Shape.Count];

    /// <summary>Tension over cracking stress at 28 days of each brick, 1; 0 where it is not judged.</summary>
    public float[] Use { get; } = new float[bricks.Shape.Count];

    /// <summary>The brick that comes nearest to cracking.</summary>
    public int Worst => Array.IndexOf(Use, Use.Max());

    /// <summary>Tension of a brick, Pa.</summary>
    /// <param name="brick">Flat index.</param>
    /// <returns>Mean over the ball.</returns>
    public double Tension(int brick) => tension[brick];

    /// <summary>Cracking stress at 28 days of a brick, Pa.</summary>
    /// <param name="brick">Flat index.</param>
    /// <returns>That of the mean strength in the ball.</returns>
    public double Cracking(int brick) => cracking[brick];

    /// <summary>Middle of the ball.</summary>
    /// <param name="brick">Flat index.</param>
    /// <returns>Metres, unit frame.</returns>
    public Point3 Where(int brick)
    {
        GridShape shape = bricks.Shape;
        (int x, int y, int z) = At(brick);
        return bricks.Corner + new Point3(0.5 * x * bricks.Edges.X, 0.5 * y * bricks.Edges.Y, 0.5 * z * bricks.Edges.Z);

        (int, int, int) At(int i) => (
            2 * (i % shape.Nx) + corner[i] % 3, 2 * (i / shape.Nx % shape.Ny) + corner[i] / 3 % 3, 2 * (i / shape.Plane) + corner[i] / 9);
    }

    /// <summary>Judges the 27 corners of a brick's octants.</summary>
    /// <param name="brick">Flat index.</param>
    /// <param name="ball">Octants around a corner, with their weights.</param>
    /// <param name="principal">Largest principal tension of each octant, Pa.</param>
    /// <param name="octants">Octants along each axis.</param>
    public void Judge(int brick, (int X, int Y, int Z, float Weight)[] ball, float[] principal, GridShape octants)
    {
        GridShape shape = bricks.Shape;
        int x = 2 * (brick % shape.Nx), y = 2 * (brick / shape.Nx % shape.Ny), z = 2 * (brick / shape.Plane);
        for (int at = 0; at < 27; at++)
        {
            double all = 0.0, stress = 0.0, strength = 0.0;
            foreach ((int dx, int dy, int dz, float near) in ball)
            {
                int ox = x + at % 3 + dx, oy = y + at / 3 % 3 + dy, oz = z + at / 9 + dz;
                if ((uint)ox < (uint)octants.Nx && (uint)oy < (uint)octants.Ny && (uint)oz < (uint)octants.Nz
                    && shape.Index(ox >> 1, oy >> 1, oz >> 1) is var other && bricks.Filled[other] >= Support.LeastFilled)
                {
                    double weight = near * bricks.Filled[other];
                    (all, stress, strength) = (all + weight, stress + weight * principal[octants.Index(ox, oy, oz)], strength + weight * bricks.Pascals[other]);
                }
            }

            double cracks = CrackingStress.Pascals(strength / all), use = stress / all / cracks;
            if (use > Use[brick])
            {
                (Use[brick], tension[brick], cracking[brick], corner[brick]) = ((float)use, (float)(stress / all), (float)cracks, (byte)at);
            }
        }
    }
}
