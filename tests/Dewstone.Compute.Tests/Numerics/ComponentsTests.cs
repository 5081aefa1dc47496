using Dewstone.Compute.Numerics;
using Dewstone.Model.Results;

namespace Dewstone.Compute.Tests.Numerics;

public sealed class ComponentsTests
{
    private static readonly Parallelism One = new(1);

    [Theory]
    [InlineData(1, 1, 1)] // corner
    [InlineData(1, 1, 0)] // edge
    [InlineData(1, 0, 1)]
    [InlineData(0, 1, 1)]
    [InlineData(-1, 1, 1)]
    [InlineData(1, -1, 1)]
    public void Label_pair_touching_at_a_corner_or_edge_is_one_piece_with_26_and_two_with_6(int dx, int dy, int dz)
    {
        GridShape shape = new(5, 5, 5);
        byte[] cells = new byte[shape.Count];
        cells[shape.Index(2, 2, 2)] = 1;
        cells[shape.Index(2 + dx, 2 + dy, 2 + dz)] = 1;

        Assert.Single(Components.Label(cells, shape, Phase.Set, Connectivity.FacesEdgesCorners, One).Pieces);
        Assert.Equal(2, Components.Label(cells, shape, Phase.Set, Connectivity.Faces, One).Pieces.Count);
    }

    [Theory]
    [InlineData(Connectivity.Faces)]
    [InlineData(Connectivity.FacesEdgesCorners)]
    public void Label_random_solids_equals_flood_fill(Connectivity connectivity)
    {
        (float[] field, GridShape shape) = RandomSolids.Noise();
        foreach (float level in (float[])[-0.3f, 0.1f, 0.3f, 0.45f])
        {
            byte[] cells = [.. field.Select(value => value >= level ? (byte)1 : (byte)0)];
            foreach (Phase phase in (Phase[])[Phase.Set, Phase.Empty])
            {
                ComponentMap map = Components.Label(cells, shape, phase, connectivity, One);

                Assert.Equal(FloodFill(cells, shape, phase, connectivity), map.Labels);
            }
        }
    }

    [Fact]
    public void Label_pieces_carry_size_first_cell_and_box()
    {
        GridShape shape = new(6, 5, 4);
        byte[] cells = Solids.Make(shape, (x, y, z) => (x == 4 && y is >= 1 and <= 3 && z == 1) || (x is 0 or 1 && y == 4 && z >= 2));

        ComponentMap map = Components.Label(cells, shape, Phase.Set, Connectivity.Faces, One);

        Assert.Equal(
            [
                new Component(3, shape.Index(4, 1, 1), new CellBox(4, 1, 1, 4, 3, 1)),
                new Component(4, shape.Index(0, 4, 2), new CellBox(0, 4, 2, 1, 4, 3)),
            ],
            map.Pieces);
        Assert.False(map.Pieces[0].Box.TouchesEdge(shape));
        Assert.True(map.Pieces[1].Box.TouchesEdge(shape));
    }

    [Fact]
    public void Label_closed_cavity_is_a_piece_of_the_empty_cells_off_the_edge()
    {
        GridShape shape = new(7, 7, 7);
        byte[] cells = Solids.Make(shape, (x, y, z) => x is > 0 and < 6 && y is > 0 and < 6 && z is > 0 and < 6 && (x, y, z) != (3, 3, 3));

        ComponentMap map = Components.Label(cells, shape, Phase.Empty, Connectivity.FacesEdgesCorners, One);

        Assert.Equal([true, false], map.Pieces.Select(piece => piece.Box.TouchesEdge(shape)));
        Assert.Equal(1, map.Pieces[1].Cells);
    }

    /// <summary>Labels by growing each piece from its first cell: slow, plain and in the same order.</summary>
    private static int[] FloodFill(byte[] cells, GridShape shape, Phase phase, Connectivity connectivity)
    {
        int[] labels = new int[cells.Length];
        int pieces = 0;
        Stack<int> open = [];
        for (int first = 0; first < cells.Length; first++)
        {
            if (cells[first] != (byte)phase || labels[first] != 0)
            {
                continue;
            }

            labels[first] = ++pieces;
            open.Push(first);
            while (open.TryPop(out int cell))
            {
                int x = cell % shape.Nx, y = cell / shape.Nx % shape.Ny, z = cell / shape.Plane;
                for (int step = 0; step < 27; step++)
                {
                    int dx = step % 3 - 1, dy = step / 3 % 3 - 1, dz = step / 9 - 1;
                    bool touches = connectivity == Connectivity.FacesEdgesCorners || Math.Abs(dx) + Math.Abs(dy) + Math.Abs(dz) == 1;
                    bool inside = x + dx >= 0 && x + dx < shape.Nx && y + dy >= 0 && y + dy < shape.Ny && z + dz >= 0 && z + dz < shape.Nz;
                    if (touches && inside && shape.Index(x + dx, y + dy, z + dz) is int there
                        && cells[there] == (byte)phase && labels[there] == 0)
                    {
                        labels[there] = pieces;
                        open.Push(there);
                    }
                }
            }
        }

        return labels;
    }
}
