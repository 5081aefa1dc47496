using Dewstone.Compute.Numerics;
using Dewstone.Model.Results;
using Dewstone.Tests;

namespace Dewstone.Compute.Tests.Numerics;

public sealed class IsoSurfaceTests
{
    private static readonly Parallelism One = new(1);

    [Theory]
    [InlineData(5, 0.98733, 0.97592)]
    [InlineData(10, 0.99684, 0.99398)]
    [InlineData(20, 0.99922, 0.99851)]
    [InlineData(40, 0.99980, 0.99963)]
    public void At_ball_has_area_and_volume_within_the_known_bias(int radius, double areaRatio, double volumeRatio)
    {
        // Marching cubes on a distance field, own measurement with a general-purpose image library: the ratios given. The faces of a cube can
        // be cut into triangles in more than one way, hence the band of a tenth of the bias itself.
        int side = 2 * radius + 7;
        GridShape shape = new(side, side, side);
        float[] field = Solids.BallField(shape, side / 2.0, side / 2.0, side / 2.0, radius);

        SurfaceMesh mesh = IsoSurface.At(field, shape, CellSize.Unit, 0f, One);

        Assert.Equal(areaRatio, mesh.Area / (4.0 * Math.PI * radius * radius), 0.1 * (1.0 - areaRatio));
        Assert.Equal(volumeRatio, mesh.Volume / (4.0 / 3.0 * Math.PI * radius * radius * radius), 0.1 * (1.0 - volumeRatio));
    }

    /// <summary>A closed oriented surface without edges where more than two sheets meet: every edge is walked once each way. Noise meets all 256 cases of a cube.</summary>
    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    public void Every_edge_has_two_triangles_in_noise(int seed)
    {
        GridShape shape = new(24, 23, 22);
        Random draw = new(seed);
        float[] noise = [.. Enumerable.Range(0, shape.Nx * shape.Ny * shape.Nz).Select(_ => draw.Next(3) == 0 ? 1f : (float)(2.0 * draw.NextDouble()))];
        SurfaceMesh mesh = IsoSurface.At(noise, shape, new CellSize(0.01, 0.01), 1f, new Parallelism(2));
        HashSet<(int, int)> walked = [];
        HashSet<(float, float, float)> places = [];
        for (int i = 0; i < mesh.Triangles.Length; i++)
        {
            Assert.True(walked.Add((mesh.Triangles[i], mesh.Triangles[i % 3 == 2 ? i - 2 : i + 1])), "an edge is walked twice one way");
        }

        Assert.All(walked, edge => Assert.Contains((edge.Item2, edge.Item1), walked));
        for (int i = 0; i < mesh.Positions.Length; i += 3)
        {
            Assert.True(places.Add((mesh.Positions[i], mesh.Positions[i + 1], mesh.Positions[i + 2])), "two corners lie at one place");
        }
    }

    [Fact]
    public void At_ball_error_falls_with_the_square_of_the_resolution()
    {
        double[] errors = [.. new[] { 8, 16, 32 }.Select(radius =>
        {
            GridShape shape = new(2 * radius + 6, 2 * radius + 6, 2 * radius + 6);
            float[] field = Solids.BallField(shape, radius + 3.1, radius + 2.9, radius + 3.2, radius);
            return 1.0 - IsoSurface.At(field, shape, CellSize.Unit, 0f, One).Volume / (4.0 / 3.0 * Math.PI * Math.Pow(radius, 3));
        })];

        Assert.InRange(Math.Log2(errors[0] / errors[1]), 1.8, 2.2);
        Assert.InRange(Math.Log2(errors[1] / errors[2]), 1.8, 2.2);
    }

    [Fact]
    public void At_plane_in_flat_cells_stands_where_the_field_says()
    {
        // Field = height of the centre: the surface at 7.3 is flat; the block below it ends at the grid's edge.
        GridShape shape = new(6, 5, 8);
        CellSize size = new(2.0, 1.5);
        float[] field = new float[shape.Count];
        for (int i = 0; i < field.Length; i++)
        {
            field[i] = 7.3f - (i / shape.Plane + 0.5f) * 1.5f;
        }

        SurfaceMesh mesh = IsoSurface.At(field, shape, size, 0f, One);

        // The edges of the block are cut off by at most half a cell across: seen from inside, all corners lie on a plane.
        Assert.Equal(0f, mesh.Positions.Where((_, i) => i % 3 == 0).Min());
        Assert.Equal(12f, mesh.Positions.Where((_, i) => i % 3 == 0).Max());
        Assert.Equal(10f, mesh.Positions.Where((_, i) => i % 3 == 1).Max());
        Assert.Equal(0f, mesh.Positions.Where((_, i) => i % 3 == 2).Min());
        Assert.Equal(7.3f, mesh.Positions.Where((_, i) => i % 3 == 2).Max(), 1e-5f);
        Assert.InRange(mesh.Volume / (12.0 * 10.0 * 7.3), 0.95, 1.0);
    }

    [Fact]
    public void At_full_grid_is_the_grid_with_bevelled_edges()
    {
        // Each of the 12 edges loses a prism of half a cell by half a cell, h^2 / 8 of section; where three meet, a corner of the cell is
        // left: with n cells a side V = n^3 - 12 (n - 1) / 8 - 8 c, where a corner cell loses c = 7/8 - ... of its eighth, counted directly:
        // its eighth-cube of (1/2)^3 keeps the tetrahedron of (1/2)^3 / 6.
        const int n = 6;
        float[] field = new float[n * n * n];
        Array.Fill(field, 1f);

        SurfaceMesh mesh = IsoSurface.At(field, new GridShape(n, n, n), CellSize.Unit, 0.5f, One);

        Assert.Equal(n * n * n - 12.0 * (n - 1) / 8.0 - 8.0 * (0.125 - 0.125 / 6.0), mesh.Volume, 1e-9);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(2)]
    public void At_random_solids_is_closed_and_oriented(int solid)
    {
        (float[] field, GridShape shape) = Solid(solid);

        SurfaceMesh mesh = IsoSurface.At(field, shape, CellSize.Unit, 0f, One);

        Dictionary<(int, int), int> balance = [];
        for (int i = 0; i < mesh.Triangles.Length; i += 3)
        {
            for (int k = 0; k < 3; k++)
            {
                int from = mesh.Triangles[i + k], to = mesh.Triangles[i + (k + 1) % 3];
                Assert.NotEqual(from, to);
                (int, int) edge = from < to ? (from, to) : (to, from);
                balance[edge] = balance.GetValueOrDefault(edge) + (from < to ? 1 : -1);
            }
        }

        Assert.All(balance.Values, value => Assert.Equal(0, value));
        Assert.Equal(Enumerable.Range(0, mesh.Positions.Length / 3), mesh.Triangles.Distinct().Order());
        Assert.True(mesh.Volume > 0.0);
        Assert.All(mesh.Positions, value => Assert.True(float.IsFinite(value)));
    }

    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(2)]
    public void At_random_solids_has_the_euler_number_of_its_cells(int solid)
    {
        // Set cells that touch across a diagonal are kept apart, so the surface bounds the 6-connected solid: chi(surface) = 2 chi(solid).
        // One case differs: two lone empty corners across a cube, which for the 6-connected solid touch and pierce it, are kept apart too.
        (float[] field, GridShape shape) = Solid(solid);

        SurfaceMesh mesh = IsoSurface.At(field, shape, CellSize.Unit, 0f, One);

        // Each edge of a closed surface belongs to two triangles; where four share one, it counts as two edges.
        int faces = mesh.Triangles.Length / 3;
        int chi = mesh.Positions.Length / 3 - 3 * faces / 2 + faces;
        byte[] cells = RandomSolids.Cells(field);
        Assert.Equal(2 * (EulerNumber.Of(cells, shape, Connectivity.Faces) + CubesEmptyAtTwoEnds(cells, shape)), chi);
    }

    private static int CubesEmptyAtTwoEnds(byte[] cells, GridShape shape)
    {
        int cubes = 0;
        for (int z = 0; z + 1 < shape.Nz; z++)
        {
            for (int y = 0; y + 1 < shape.Ny; y++)
            {
                for (int x = 0; x + 1 < shape.Nx; x++)
                {
                    int corners = Enumerable.Range(0, 8).Sum(c => cells[shape.Index(x + (c & 1), y + ((c >> 1) & 1), z + (c >> 2))] << c);
                    cubes += corners is 0b0111_1110 or 0b1011_1101 or 0b1101_1011 or 0b1110_0111 ? 1 : 0;
                }
            }
        }

        return cubes;
    }

    [Fact]
    public void At_field_below_the_level_is_empty()
    {
        SurfaceMesh mesh = IsoSurface.At(new float[60], new GridShape(5, 4, 3), CellSize.Unit, 0.5f, One);

        Assert.Empty(mesh.Triangles);
        Assert.Equal(0.0, mesh.Volume);
    }

    private static (float[] Field, GridShape Shape) Solid(int solid) => solid switch
    {
        0 => RandomSolids.Noise(),
        1 => RandomSolids.Balls(),
        _ => RandomSolids.BlockWithoutBalls(),
    };
}
