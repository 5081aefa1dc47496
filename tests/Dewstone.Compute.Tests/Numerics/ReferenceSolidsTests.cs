using Dewstone.Compute.Numerics;
using Dewstone.Model.Results;
using Dewstone.Tests;

namespace Dewstone.Compute.Tests.Numerics;

/// <summary>
/// Frozen results of general-purpose libraries (NumPy 1.24.2, SciPy 1.10.1, scikit-image 0.19.3) on three seeded random solids, made by
/// reference/random_solids.py. Columns: noise, balls, block without balls.
/// </summary>
public sealed class ReferenceSolidsTests
{
    private static readonly Parallelism Two = new(2);

    private static readonly (float[] Field, GridShape Shape)[] All =
        [RandomSolids.Noise(), RandomSolids.Balls(), RandomSolids.BlockWithoutBalls()];

    [Theory]
    [InlineData(0, 4386, 4504, 2, 3816)]
    [InlineData(1, 15734, 120241, 62, 277067)]
    [InlineData(2, 33172, 597323, 161, 142680)]
    public void Distances_sum_and_maximum_agree(int solid, int set, int sum, int largest, int sumOfEmpty)
    {
        (byte[] cells, GridShape shape) = Cells(solid);

        int[] squared = DistanceTransform.Squared(cells, shape, Phase.Empty, OutsideCells.Ignored, Two);

        Assert.Equal(set, Solids.CountSet(cells));
        Assert.Equal((sum, largest), (squared.Sum(), squared.Max()));
        Assert.Equal(sumOfEmpty, DistanceTransform.Squared(cells, shape, Phase.Set, OutsideCells.Ignored, Two).Sum());
    }

    [Theory]
    [InlineData(0, new[] { 4268, 118, 0, 0, 0, 0, 0, 0, 0 })]
    [InlineData(1, new[] { 3992, 1944, 860, 930, 1401, 684, 0, 820, 867 })]
    [InlineData(2, new[] { 5067, 2771, 1116, 1496, 2362, 1111, 0, 1170, 1776 })]
    public void Distances_histogram_agrees(int solid, int[] counts)
    {
        (byte[] cells, GridShape shape) = Cells(solid);

        int[] squared = DistanceTransform.Squared(cells, shape, Phase.Empty, OutsideCells.Ignored, Two);

        Assert.Equal(counts, Enumerable.Range(1, 9).Select(value => squared.Count(found => found == value)));
    }

    [Theory]
    [InlineData(0, 4509.492875329876)]
    [InlineData(1, 40172.82896585978)]
    [InlineData(2, 126386.49288941774)]
    public void Distances_in_cells_a_quarter_taller_than_wide_agree(int solid, double sum)
    {
        (byte[] cells, GridShape shape) = Cells(solid);

        float[] squared = DistanceTransform.Squared(cells, shape, new CellSize(1.0, 1.25), Phase.Empty, OutsideCells.Ignored, Two);

        // Squares of multiples of 1.25 below 2^10 are exact in single precision; only the roots differ in their last bit.
        Assert.Equal(sum, squared.Sum(value => Math.Sqrt(value)), 1e-8 * sum);
    }

    [Theory]
    [InlineData(0, Phase.Set, Connectivity.Faces, 61, 4311, 18584834)]
    [InlineData(0, Phase.Set, Connectivity.FacesEdgesCorners, 1, 4386, 19236996)]
    [InlineData(0, Phase.Empty, Connectivity.Faces, 141, 3544, 12560696)]
    [InlineData(0, Phase.Empty, Connectivity.FacesEdgesCorners, 1, 3774, 14243076)]
    [InlineData(1, Phase.Set, Connectivity.Faces, 1, 15734, 247558756)]
    [InlineData(1, Phase.Empty, Connectivity.Faces, 2, 20105, 404211026)]
    [InlineData(1, Phase.Empty, Connectivity.FacesEdgesCorners, 1, 20106, 404251236)]
    [InlineData(2, Phase.Set, Connectivity.Faces, 3, 33153, 1099121734)]
    [InlineData(2, Phase.Set, Connectivity.FacesEdgesCorners, 1, 33172, 1100381584)]
    [InlineData(2, Phase.Empty, Connectivity.Faces, 6, 12016, 161731700)]
    [InlineData(2, Phase.Empty, Connectivity.FacesEdgesCorners, 6, 12016, 161731700)]
    public void Components_number_and_sizes_agree(
        int solid, Phase phase, Connectivity connectivity, int pieces, int largest, long sumOfSquares)
    {
        (byte[] cells, GridShape shape) = Cells(solid);

        IReadOnlyList<Component> found = Components.Label(cells, shape, phase, connectivity, Two).Pieces;

        Assert.Equal((pieces, largest), (found.Count, found.Max(piece => piece.Cells)));
        Assert.Equal(sumOfSquares, found.Sum(piece => (long)piece.Cells * piece.Cells));
    }

    [Theory]
    [InlineData(0, -529, -395)]
    [InlineData(1, -5, -8)]
    [InlineData(2, -12, -12)]
    public void Euler_numbers_agree(int solid, int faces, int all)
    {
        (byte[] cells, GridShape shape) = Cells(solid);

        Assert.Equal(faces, EulerNumber.Of(cells, shape, Connectivity.Faces));
        Assert.Equal(all, EulerNumber.Of(cells, shape, Connectivity.FacesEdgesCorners));
    }

    /// <summary>
    /// Cells of local thickness 2 r are those that an opening by a ball of radius r keeps (Hildebrand and Rüegsegger 1997, equation 1), here the library's.
    /// Its balls stand on cell centres; ours may stand anywhere in a cell, so one of radius r + sqrt(3)/2 holds one of r on a centre: the library's
    /// count lies between ours for the two, but for 0.5 % where a ball of one cell on a centre is too coarse to fill a rim.
    /// </summary>
    [Theory]
    [InlineData(0, 1.0, 0)]
    [InlineData(1, 1.0, 15528)]
    [InlineData(1, 2.2, 14986)]
    [InlineData(1, 4.0, 10485)]
    [InlineData(2, 1.0, 31740)]
    [InlineData(2, 2.2, 28359)]
    [InlineData(2, 4.0, 19857)]
    public void Cells_at_least_so_thick_are_those_an_opening_keeps(int solid, double radius, int opened)
    {
        (byte[] cells, GridShape shape) = Cells(solid);
        int[] squared = DistanceTransform.Squared(cells, shape, Phase.Empty, OutsideCells.Empty, Two);
        float[] distances = Array.ConvertAll(squared, d => d == 0 ? 0.5f : 0.5f - MathF.Sqrt(d));
        float[] thickness = LocalThickness.Of(distances, shape, CellSize.Unit, Two);
        int Thicker(double than) => thickness.Count(t => t > 2.0 * than);

        Assert.True(opened <= Thicker(radius), $"{opened} {Thicker(radius)}");
        Assert.True(Thicker(radius + Math.Sqrt(3.0) / 2.0) <= 1.005 * opened, $"{opened} {Thicker(radius + Math.Sqrt(3.0) / 2.0)}");
    }

    [Theory]
    [InlineData(0, Phase.Empty, Connectivity.Faces, 1)]
    [InlineData(0, Phase.Set, Connectivity.FacesEdgesCorners, 1)]
    [InlineData(1, Phase.Empty, Connectivity.Faces, 18)]
    [InlineData(1, Phase.Empty, Connectivity.FacesEdgesCorners, 18)]
    [InlineData(1, Phase.Set, Connectivity.Faces, 14)]
    [InlineData(1, Phase.Set, Connectivity.FacesEdgesCorners, 16)]
    [InlineData(2, Phase.Empty, Connectivity.Faces, null)]
    [InlineData(2, Phase.Empty, Connectivity.FacesEdgesCorners, null)]
    [InlineData(2, Phase.Set, Connectivity.Faces, 19)]
    [InlineData(2, Phase.Set, Connectivity.FacesEdgesCorners, 21)]
    public void Widest_way_along_x_agrees_with_every_threshold_tried(int solid, Phase phase, Connectivity steps, int? squaredDistance)
    {
        (byte[] cells, GridShape shape) = Cells(solid);
        byte[] regions = Solids.Make(shape, (x, _, _) => x == 0);
        for (int i = shape.Nx - 1; i < regions.Length; i += shape.Nx)
        {
            regions[i] = PercolatingWidth.To;
        }

        Passage? passage = PercolatingWidth.Between(Solids.Clearances(cells, shape, CellSize.Unit, phase), shape, regions, steps);

        double? expected = squaredDistance is { } squared ? 2.0 * (MathF.Sqrt(squared) - 0.5f) : null;
        Assert.Equal(expected, passage?.Width);
    }

    [Theory]
    [InlineData(0, 9366, 0.05, 6925.822265625, 2700.8396652914444)]
    [InlineData(1, 8368, 0.002, 6025.38232421875, 14254.838591264821)]
    [InlineData(2, 13188, 0.002, 10401.5859375, 28198.076452264057)]
    public void Surfaces_agree(int solid, int corners, double tolerance, double area, double volume)
    {
        // The library (method "lorensen") leaves surfaces open at the edge of the grid, so the outermost cells are made empty. Its corners are
        // the same ones, exactly. The same loop of corners can be laid with triangles in several ways: the library's two methods differ from
        // each other by 0.03 and 0.08 % in area on the smooth solids and 2.9 % on the noise (14 % in volume there); ours differs from
        // "lorensen" by 0.10, 0.05 and 2.4 %.
        (float[] field, GridShape shape) = All[solid];
        float[] inner = [.. field.Select((value, i) => IsOnEdge(i, shape) ? -1f : value)];

        SurfaceMesh mesh = IsoSurface.At(inner, shape, CellSize.Unit, 0f, Two);

        Assert.Equal(corners, mesh.Positions.Length / 3);
        Assert.Equal(area, mesh.Area, tolerance * area);
        Assert.Equal(volume, mesh.Volume, tolerance * volume);
    }

    private static bool IsOnEdge(int i, GridShape shape) =>
        i % shape.Nx == 0 || i % shape.Nx == shape.Nx - 1 || i / shape.Nx % shape.Ny == 0 || i / shape.Nx % shape.Ny == shape.Ny - 1
        || i / shape.Plane == 0 || i / shape.Plane == shape.Nz - 1;

    private static (byte[] Cells, GridShape Shape) Cells(int solid) => (RandomSolids.Cells(All[solid].Field), All[solid].Shape);
}
