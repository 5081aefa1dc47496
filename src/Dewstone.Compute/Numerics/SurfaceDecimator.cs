using Dewstone.Model.Results;

namespace Dewstone.Compute.Numerics;

/// <summary>Thins a closed surface out to a number of triangles, so that it can be shown where the whole one is too heavy.</summary>
/// <remarks>
/// Edges are drawn together to the point nearest, in the mean by area, to the planes of all triangles that have gone into their two ends
/// (Garland and Heckbert, "Surface simplification using quadric error metrics", 1997; from memory). It goes by passes: each takes the
/// cheapest edges and draws a corner together once at most, so that every cost is the true one when it is used and costs are found by
/// threads. An edge is left alone when drawing it together would tie or tear the surface: it must have two triangles, its ends no common
/// neighbour but the two across it, and each of those a corner to spare. So the surface stays closed, and pieces, tunnels and hollows stay
/// as many as they are. No triangle is turned over as long as another edge will do.
/// </remarks>
public static class SurfaceDecimator
{
    /// <summary>A pass takes one edge in so many; fewer near the end, where it takes so many times those still to go.</summary>
    private const int OneEdgeIn = 5;

    private const int EdgesPerOneToGo = 4;

    private const int LeastEdges = 1000;

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
        bool all = false, mayTurnOver = false;
        while (surface.TriangleCount > mostTriangles)
        {
            // A closed surface has 3 edges to 2 triangles, and loses 2 triangles with an edge.
            long edges = 3L * surface.TriangleCount / 2, toGo = (surface.TriangleCount - mostTriangles + 1) / 2;
            long taken = all ? edges : Math.Max(LeastEdges, Math.Min(edges / OneEdgeIn, EdgesPerOneToGo * toGo));
            int drawn = surface.DrawTogether(EdgeCosts.Of(surface, parallelism).Cheapest(taken), mostTriangles, mayTurnOver);
            if (drawn == 0 && mayTurnOver)
            {
                break;
            }

            // Few came of many: the cheap edges are used up.
            mayTurnOver = all && drawn == 0;
            all = drawn < taken / 50;
        }

        return surface.ToMesh();
    }
}
