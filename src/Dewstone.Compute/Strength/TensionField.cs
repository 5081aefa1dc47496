using Dewstone.Compute.Numerics;
using Dewstone.Model.Quantities;
using Dewstone.Model.Results;

namespace Dewstone.Compute.Strength;

/// <summary>Tension in a body under one load case at the corners of the octants of its bricks: a map, and where to look closer.</summary>
internal sealed class TensionField
{
    private readonly BodyBricks bricks;
    private readonly GridShape nodes;
    /// <summary>Corners that come at least this near to the worst one are looked at closer, 1.</summary>
    private const double Close = 0.75;

    /// <summary>Most corners looked at closer.</summary>
    private const int Most = 12;

    private readonly double ballMetres;
    private readonly float[] use;

    /// <summary>Judges.</summary>
    /// <param name="bricks">The body.</param>
    /// <param name="principal">Largest principal tension of each octant, Pa.</param>
    /// <param name="ballMetres">Diameter of the ball the mean is taken over, metres.</param>
    /// <param name="parallelism">Threads; no result depends on them.</param>
    public TensionField(BodyBricks bricks, float[] principal, double ballMetres, Parallelism parallelism)
    {
        (this.bricks, this.ballMetres) = (bricks, ballMetres);
        nodes = new GridShape(bricks.Octants.Nx + 1, bricks.Octants.Ny + 1, bricks.Octants.Nz + 1);
        use = new float[nodes.Count];
        (int X, int Y, int Z, float Weight)[] ball = Ball(bricks.Edges, ballMetres);
        Chunks.Run(nodes.Nz, 1, parallelism, (z, _) =>
        {
            for (int node = z * nodes.Plane; node < (z + 1) * nodes.Plane; node++)
            {
                if (IsSolid(node % nodes.Nx, node / nodes.Nx % nodes.Ny, z))
                {
                    Judge(node, ball, principal);
                }
            }
        });
    }

    /// <summary>The corners that come nearest to cracking, each half a ball or more from the others.</summary>
    /// <returns>Places, metres, unit frame; the worst first, none when there is no tension.</returns>
    public IReadOnlyList<Point3> Worst()
    {
        float most = use.Max();
        int[] near = [.. Enumerable.Range(0, use.Length).Where(node => use[node] > 0f && use[node] >= Close * most)];
        List<Point3> places = [];
        foreach (Point3 where in near.OrderByDescending(node => use[node]).ThenBy(node => node).Select(Where))
        {
            if (places.Count < Most && places.All(other => (other - where).Norm >= 0.5 * ballMetres))
            {
                places.Add(where);
            }
        }

        return places;
    }

    /// <summary>Tension over cracking stress at 28 days, the most at the corners of each brick's octants.</summary>
    /// <returns>1; index order of the bricks.</returns>
    public float[] ByBrick()
    {
        GridShape shape = bricks.Shape;
        float[] most = new float[shape.Count];
        for (int brick = 0; brick < most.Length; brick++)
        {
            for (int at = 0; at < 27; at++)
            {
                most[brick] = Math.Max(most[brick], use[nodes.Index(
                    2 * (brick % shape.Nx) + at % 3, 2 * (brick / shape.Nx % shape.Ny) + at / 3 % 3, 2 * (brick / shape.Plane) + at / 9)]);
            }
        }

        return most;
    }

    private Point3 Where(int corner) => bricks.Corner + new Point3(
        0.5 * (corner % nodes.Nx) * bricks.Edges.X, 0.5 * (corner / nodes.Nx % nodes.Ny) * bricks.Edges.Y, 0.5 * (corner / nodes.Plane) * bricks.Edges.Z);

    private void Judge(int node, (int X, int Y, int Z, float Weight)[] ball, float[] principal)
    {
        GridShape octants = bricks.Octants;
        int x = node % nodes.Nx, y = node / nodes.Nx % nodes.Ny, z = node / nodes.Plane;
        double whole = 0.0, all = 0.0, stress = 0.0, strength = 0.0;
        foreach ((int dx, int dy, int dz, float near) in ball)
        {
            int ox = x + dx, oy = y + dy, oz = z + dz;
            whole += near;
            if ((uint)ox < (uint)octants.Nx && (uint)oy < (uint)octants.Ny && (uint)oz < (uint)octants.Nz)
            {
                int octant = octants.Index(ox, oy, oz), brick = bricks.Shape.Index(ox >> 1, oy >> 1, oz >> 1);
                double weight = bricks.Filled[brick] < TensionBall.LeastOfBrick ? 0.0 : near * bricks.FilledOctants[octant];
                (all, stress, strength) =
                    (all + weight, stress + weight * principal[octant], strength + weight * bricks.Pascals[brick]);
            }
        }

        use[node] = all < TensionBall.LeastOfBall * whole ? 0f : (float)(stress / all / CrackingStress.Pascals(strength / all));
    }

    // A corner of octants lies in the solid, or on an edge of it, when a quarter of what surrounds it is hardened.
    private bool IsSolid(int x, int y, int z)
    {
        GridShape octants = bricks.Octants;
        float sum = 0f;
        for (int corner = 0; corner < 8; corner++)
        {
            int ox = x - (corner & 1), oy = y - ((corner >> 1) & 1), oz = z - (corner >> 2);
            sum += (uint)ox < (uint)octants.Nx && (uint)oy < (uint)octants.Ny && (uint)oz < (uint)octants.Nz ? bricks.FilledOctants[octants.Index(ox, oy, oz)] : 0f;
        }

        return sum >= 8f * Support.LeastFilled;
    }

    // Octants around a corner whose middles lie in the ball, or, in part, nearly so.
    private static (int X, int Y, int Z, float Weight)[] Ball(Size3 edges, double diameter)
    {
        List<(int, int, int, float)> ball = [];
        double radius = 0.5 * diameter, soft = (edges.X + edges.Y + edges.Z) / 6.0;
        (int rx, int ry, int rz) = (Reach(edges.X), Reach(edges.Y), Reach(edges.Z));
        for (int z = -rz; z < rz; z++)
        {
            for (int y = -ry; y < ry; y++)
            {
                for (int x = -rx; x < rx; x++)
                {
                    double distance = new Point3((x + 0.5) * edges.X, (y + 0.5) * edges.Y, (z + 0.5) * edges.Z).Norm * 0.5;
                    double weight = Math.Clamp((radius + 0.5 * soft - distance) / soft, 0.0, 1.0);
                    if (weight > 0.0)
                    {
                        ball.Add((x, y, z, (float)weight));
                    }
                }
            }
        }

        return [.. ball];

        int Reach(double edge) => (int)Math.Ceiling((radius + soft) / (0.5 * edge));
    }
}
