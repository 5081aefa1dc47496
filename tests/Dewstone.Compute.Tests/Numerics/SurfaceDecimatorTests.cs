using Dewstone.Compute.Numerics;
using Dewstone.Model.Results;

namespace Dewstone.Compute.Tests.Numerics;

public sealed class SurfaceDecimatorTests
{
    private static readonly Parallelism Two = new(2);

    [Fact]
    public void Ball_thinned_out_is_closed_and_keeps_its_volume_and_place()
    {
        // V = 4/3 pi r^3; a ball of 20 cells in 1000 triangles, where regular ones of edge 3.4 would lie 0.15 cells within it.
        GridShape shape = new(47, 47, 47);
        SurfaceMesh whole = IsoSurface.At(Solids.BallField(shape, 23.5, 23.5, 23.5, 20.0), shape, CellSize.Unit, 0f, Two);

        SurfaceMesh thin = SurfaceDecimator.ToAtMost(whole, 1000, Two);

        Assert.True(whole.Triangles.Length / 3 > 10_000);
        Assert.InRange(thin.Triangles.Length / 3, 999, 1000);
        AssertManifold(thin);
        Assert.Equal(1.0, thin.Volume / (4.0 / 3.0 * Math.PI * 8000.0), 0.01);
        for (int i = 0; i < thin.Positions.Length; i += 3)
        {
            double x = thin.Positions[i] - 23.5, y = thin.Positions[i + 1] - 23.5, z = thin.Positions[i + 2] - 23.5;
            Assert.InRange(Math.Sqrt(x * x + y * y + z * z), 19.5, 20.5);
        }
    }

    [Fact]
    public void Torus_thinned_out_keeps_its_hole()
    {
        // V = 2 pi^2 R r^2 (common knowledge), of which a surface from the cells lacks 1.2 % at 7 cells; Euler number of the surface 0.
        GridShape shape = new(60, 60, 24);
        float[] field = new float[shape.Count];
        for (int i = 0; i < field.Length; i++)
        {
            double x = i % 60 + 0.5 - 30.0, y = i / 60 % 60 + 0.5 - 30.0, z = i / 3600 + 0.5 - 12.0, ring = Math.Sqrt(x * x + y * y) - 18.0;
            field[i] = (float)(7.0 - Math.Sqrt(ring * ring + z * z));
        }

        SurfaceMesh whole = IsoSurface.At(field, shape, CellSize.Unit, 0f, Two), thin = SurfaceDecimator.ToAtMost(whole, 800, Two);

        Assert.InRange(thin.Triangles.Length / 3, 799, 800);
        AssertManifold(thin);
        Assert.Equal(0, Euler(thin));
        Assert.Equal(1.0, whole.Volume / (2.0 * Math.PI * Math.PI * 18.0 * 49.0), 0.015);
        Assert.Equal(1.0, thin.Volume / whole.Volume, 0.01);
    }

    [Fact]
    public void Flat_faces_cost_nothing()
    {
        // A full grid is a block with bevelled edges. Of its 4700 triangles some 900 make the bevels; the others lie flat, and go first.
        float[] field = new float[20 * 20 * 20];
        Array.Fill(field, 1f);
        SurfaceMesh whole = IsoSurface.At(field, new GridShape(20, 20, 20), CellSize.Unit, 0.5f, Two);

        SurfaceMesh thin = SurfaceDecimator.ToAtMost(whole, 1500, Two);

        Assert.True(whole.Triangles.Length / 3 > 4600);
        Assert.InRange(thin.Triangles.Length / 3, 1499, 1500);
        AssertManifold(thin);
        Assert.Equal(1.0, thin.Volume / whole.Volume, 1e-4);
        Assert.Equal(1.0, thin.Area / whole.Area, 1e-3);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(2)]
    public void Random_solids_thinned_out_as_far_as_can_be_stay_closed_in_as_many_pieces(int solid)
    {
        (float[] field, GridShape shape) = solid switch { 0 => RandomSolids.Noise(), 1 => RandomSolids.Balls(), _ => RandomSolids.BlockWithoutBalls() };
        SurfaceMesh whole = IsoSurface.At(field, shape, CellSize.Unit, 0f, Two);

        SurfaceMesh thin = SurfaceDecimator.ToAtMost(whole, 4, Two);

        Assert.InRange(thin.Triangles.Length, 12, whole.Triangles.Length / 2);
        Assert.All(Edges(thin).Values, edge => Assert.Equal(edge.Up, edge.Down));
        Assert.Equal(Euler(whole), Euler(thin));
        Assert.Equal(Pieces(whole), Pieces(thin));
    }

    [Fact]
    public void Small_surface_is_left_as_it_is_and_less_than_a_tetrahedron_is_refused()
    {
        GridShape shape = new(9, 9, 9);
        SurfaceMesh ball = IsoSurface.At(Solids.BallField(shape, 4.5, 4.5, 4.5, 3.0), shape, CellSize.Unit, 0f, Two);

        Assert.Same(ball, SurfaceDecimator.ToAtMost(ball, ball.Triangles.Length / 3, Two));
        Assert.Throws<ArgumentOutOfRangeException>(() => SurfaceDecimator.ToAtMost(ball, 3, Two));
    }

    private static void AssertManifold(SurfaceMesh mesh)
    {
        Assert.All(Edges(mesh).Values, edge => Assert.Equal((1, 1), edge));
        Assert.Equal(Enumerable.Range(0, mesh.Positions.Length / 3), mesh.Triangles.Distinct().Order());
        Assert.Equal(1, Pieces(mesh));
    }

    private static int Euler(SurfaceMesh mesh) => mesh.Positions.Length / 3 - Edges(mesh).Values.Sum(edge => (edge.Up + edge.Down) / 2) + mesh.Triangles.Length / 3;

    private static Dictionary<(int Low, int High), (int Up, int Down)> Edges(SurfaceMesh mesh)
    {
        Dictionary<(int, int), (int Up, int Down)> edges = [];
        for (int i = 0; i < mesh.Triangles.Length; i++)
        {
            int from = mesh.Triangles[i], to = mesh.Triangles[i % 3 == 2 ? i - 2 : i + 1];
            Assert.NotEqual(from, to);
            (int, int) key = (Math.Min(from, to), Math.Max(from, to));
            (int up, int down) = edges.GetValueOrDefault(key);
            edges[key] = from < to ? (up + 1, down) : (up, down + 1);
        }

        return edges;
    }

    private static int Pieces(SurfaceMesh mesh)
    {
        int[] piece = [.. Enumerable.Range(0, mesh.Positions.Length / 3)];
        int Root(int corner)
        {
            while (piece[corner] != corner)
            {
                corner = piece[corner] = piece[piece[corner]];
            }

            return corner;
        }

        foreach ((int low, int high) in Edges(mesh).Keys)
        {
            piece[Root(high)] = Root(low);
        }

        return Enumerable.Range(0, piece.Length).Count(corner => piece[corner] == corner);
    }
}
