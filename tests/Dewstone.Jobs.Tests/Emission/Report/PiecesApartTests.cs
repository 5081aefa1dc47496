using Dewstone.Compute.Numerics;
using Dewstone.Jobs.Emission.Report;
using Dewstone.Jobs.Emission.Surfaces;
using Dewstone.Model.Quantities;
using Dewstone.Model.Results;

namespace Dewstone.Jobs.Tests.Emission.Report;

public sealed class PiecesApartTests
{
    // A ball of 60 mm radius about (100, 100, 100) mm and one of 15 mm about (200, 100, 100) mm, cells of 5 mm.
    private static readonly UnitSurface TwoBalls = Balls();

    [Fact]
    public void Skin_of_the_small_ball_alone_is_marked()
    {
        SolidPiece small = new(1.4e-5, 0.03, new Point3(0.2, 0.1, 0.1), new Size3(0.03, 0.03, 0.03));
        bool[] apart = PiecesApart.Of(TwoBalls, [small]);

        Assert.Equal(TwoBalls.Corners, apart.Length);
        for (int corner = 0; corner < apart.Length; corner++)
        {
            Assert.Equal(TwoBalls.Positions[3 * corner] > 0.18f, apart[corner]);
        }

        Assert.Contains(true, apart);
    }

    [Fact]
    public void Without_pieces_nothing_is_marked() => Assert.Empty(PiecesApart.Of(TwoBalls, []));

    [Fact]
    public void Piece_that_the_surface_has_lost_marks_nothing() =>
        Assert.DoesNotContain(true, PiecesApart.Of(TwoBalls, [new SolidPiece(1e-6, 0.002, new Point3(0.1, 0.2, 0.2), new Size3(0.01, 0.01, 0.01))]));

    private static UnitSurface Balls()
    {
        GridShape shape = new(50, 40, 40);
        float[] level = new float[shape.Count];
        for (int i = 0; i < level.Length; i++)
        {
            double x = 0.005 * (i % 50 + 0.5), y = 0.005 * (i / 50 % 40 + 0.5) - 0.1, z = 0.005 * (i / 2000 + 0.5) - 0.1;
            level[i] = (float)Math.Max(0.06 - Math.Sqrt((x - 0.1) * (x - 0.1) + y * y + z * z), 0.015 - Math.Sqrt((x - 0.2) * (x - 0.2) + y * y + z * z));
        }

        SurfaceMesh mesh = IsoSurface.At(level, shape, new CellSize(0.005, 0.005), 0f, new Parallelism(1));
        return new UnitSurface(mesh.Positions, mesh.Triangles);
    }
}
