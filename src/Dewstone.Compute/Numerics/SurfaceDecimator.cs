using Dewstone.Model.Results;

namespace Dewstone.Compute.Numerics;

/// <summary>Thins a closed surface out to a number of triangles, so that it can be shown where the whole one is too heavy.</summary>
/// <remarks>
/// Edges are drawn together to the point nearest, in the mean by area, to the planes of all triangles that have gone into their two ends
/// (Garland and Heckbert, "Surface simplification using quadric error metrics", 1997; from memory). It goes by passes: each takes the
/// cheaper part of the edges, cheapest first, and draws a corner together once at most, so that every cost is the true one when it is used
/// and costs are found by threads. An edge is left alone when drawing it together would tie or tear the surface: it must have two
/// triangles, its ends no common neighbour but the two across them, and each of those a corner to spare. So the surface stays closed, and
/// pieces, tunnels and hollows stay as many as they are. No triangle is turned over as long as another edge will do.
/// </remarks>
public static class SurfaceDecimator
{
    /// <summary>Share of the edges that a pass looks at.</summary>
    private const double CheaperShare = 0.5;

    /// <summary>A pass that draws together fewer edges than this share of the triangles has found most of what its edges allow.</summary>
    private const double LeastProgress = 0.01;

    /// <summary>Thins out.</summary>
    /// <param name="mesh">Closed surface.</param>
    /// <param name="mostTriangles">Triangles wanted at most, 4 or more.</param>
    /// <param name="parallelism">Threads; no result depends on them.</param>
    /// <returns>
    /// The surface itself if it has no more triangles; else one with at most that many, or, where no edge can go without a tear, with as few
    /// as can be. Corners and triangles keep their order.
    /// </returns>
    /// <exception cref="ArgumentOutOfRangeException">Fewer than 4 triangles asked for.</exception>
    public static SurfaceMesh ToAtMost(SurfaceMesh mesh, int mostTriangles, Parallelism parallelism)
    {
        ArgumentNullException.ThrowIfNull(mesh);
        ArgumentOutOfRangeException.ThrowIfLessThan(mostTriangles, 4);
        if (mesh.Triangles.Length / 3 <= mostTriangles)
        {
            return mesh;
        }

        ShrinkingSurface surface = new(mesh);
        double share = CheaperShare;
        bool mayTurnOver = false;
        while (surface.TriangleCount > mostTriangles)
        {
            EdgeCosts costs = EdgeCosts.Of(surface, parallelism);
            int drawn = surface.DrawTogether(costs.Cheapest(share), mostTriangles, mayTurnOver);
            if (drawn > LeastProgress * surface.TriangleCount)
            {
                continue;
            }

            if (share < 1.0)
            {
                share = 1.0;
            }
            else if (drawn == 0 && mayTurnOver)
            {
                break;
            }
            else
            {
                mayTurnOver = drawn == 0;
            }
        }

        return surface.ToMesh();
    }
}
