using Dewstone.Compute.Numerics;
using Dewstone.Tests;

namespace Dewstone.Compute.Tests.Numerics;

public sealed class EulerNumberTests
{
    [Fact]
    public void Euler_one_cell_is_1()
    {
        Check([1], new GridShape(1, 1, 1), 1, 1);
    }

    [Theory]
    [InlineData(1, 1, 1)]
    [InlineData(1, 1, 0)]
    [InlineData(0, 1, 1)]
    [InlineData(1, 0, 1)]
    public void Euler_pair_touching_at_a_corner_or_edge_is_1_with_26_and_2_with_6(int dx, int dy, int dz)
    {
        GridShape shape = new(2, 2, 2);
        Check(Solids.Make(shape, (x, y, z) => (x, y, z) == (0, 0, 0) || (x, y, z) == (dx, dy, dz)), shape, 2, 1);
    }

    [Fact]
    public void Euler_ring_is_0_and_hollow_cube_is_2()
    {
        GridShape flat = new(3, 3, 1);
        Check(Solids.Make(flat, (x, y, _) => (x, y) != (1, 1)), flat, 0, 0);
        GridShape cube = new(3, 3, 3);
        Check(Solids.Make(cube, (x, y, z) => (x, y, z) != (1, 1, 1)), cube, 2, 2);
    }

    [Theory]
    [InlineData(1, 0)]
    [InlineData(2, -2)]
    [InlineData(3, -4)]
    public void Euler_block_with_tunnels_that_meet_is_2_less_their_openings(int tunnels, int expected)
    {
        GridShape shape = new(5, 5, 5);
        Check(
            Solids.Make(shape, (x, y, z) =>
                !(y == 2 && z == 2) && !(tunnels > 1 && x == 2 && z == 2) && !(tunnels > 2 && x == 2 && y == 2)),
            shape,
            expected,
            expected);
    }

    [Fact]
    public void Euler_block_with_a_closed_cavity_is_2()
    {
        GridShape shape = new(5, 5, 5);
        Check(Solids.Make(shape, (x, y, z) => (x, y, z) != (2, 2, 2)), shape, 2, 2);
    }

    [Theory]
    [InlineData(1, 20, -4)]
    [InlineData(2, 400, -80)]
    [InlineData(3, 8000, -1408)]
    [InlineData(4, 160000, -26432)]
    public void Euler_menger_sponge_has_its_known_number(int level, int cellsSet, int expected)
    {
        // Frozen from scikit-image 0.19.3, measure.euler_number with connectivity 1 and 3, on the sponge made by repeated np.kron.
        (byte[] cells, GridShape shape) = Solids.Menger(level);

        Assert.Equal(cellsSet, Solids.CountSet(cells));
        Check(cells, shape, expected, expected);
    }

    private static void Check(byte[] cells, GridShape shape, long faces, long all)
    {
        Assert.Equal(faces, EulerNumber.Of(cells, shape, Connectivity.Faces));
        Assert.Equal(all, EulerNumber.Of(cells, shape, Connectivity.FacesEdgesCorners));
    }
}
