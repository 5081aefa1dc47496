using Dewstone.Compute.Geometry;
using Dewstone.Compute.Numerics;
using Dewstone.Model.Lattices;
using Dewstone.Model.Quantities;
using Dewstone.Model.Results;

namespace Dewstone.Compute.Tests.Geometry;

public sealed class SurfaceDistancesTests
{
    private static readonly Parallelism Two = new(2);

    /// <summary>The last place has the top face half a millimetre below the grid's: within its outermost cells, and inside of their centres.</summary>
    [Theory]
    [InlineData(0, 0.0143)]
    [InlineData(1, 0.0143)]
    [InlineData(3, 0.0143)]
    [InlineData(2, 0.0395)]
    public void Rounded_box_surface_lies_on_the_shape_and_encloses_its_volume(int quarterTurns, double bottom)
    {
        // Rounded box of 100 x 80 x 60 mm, r = 20 mm: with a = 60, b = 40, c = 20 mm
        // V = abc + 2r(ab + bc + ca) + pi r^2 (a + b + c) + 4/3 pi r^3 (Steiner formula for a box; from memory).
        const double r = 0.02, a = 0.06, b = 0.04, c = 0.02;
        double volume = a * b * c + 2.0 * r * (a * b + b * c + c * a) + Math.PI * r * r * (a + b + c) + 4.0 / 3.0 * Math.PI * r * r * r;
        ReefShape shape = SampleUnits.Shape(SampleUnits.Plain(0.1, 0.08, 0.06) with { Rounding = new Length(r) });
        CellGrid grid = new()
        {
            Nx = 50,
            Ny = 50,
            Nz = 40,
            CellsPerPitch = 1,
            CellsPerLayer = 1,
            Origin = default,
            CellMetres = 0.0025,
            CellHeightMetres = 0.0025,
        };
        UnitPlacement placement = new() { QuarterTurns = quarterTurns, Corner = new Point3(0.0117, 0.0094, bottom), UnitBox = shape.Box };
        TargetField target = Voxelizer.Voxelize(shape, placement, grid, Two, null, TestContext.Current.CancellationToken);

        (CellGrid cells, float[] field) = SurfaceDistances.Of(shape, placement, target, Two);
        SurfaceMesh mesh = IsoSurface.At(field, new GridShape(cells.Nx, cells.Ny, cells.Nz), new CellSize(0.0025, 0.0025), 0f, Two);

        // A face bent with radius r is cut half way between centres h apart at most h^2 / (8 r) = 0.04 mm within.
        Assert.Equal(1.0, mesh.Volume / volume, 2e-3);
        for (int i = 0; i < mesh.Positions.Length; i += 3)
        {
            Point3 printer = cells.Origin + new Point3(mesh.Positions[i], mesh.Positions[i + 1], mesh.Positions[i + 2]);
            Assert.InRange(shape.SignedDistance(placement.ToUnit(printer)), -4.1e-5, 1e-6);
        }

        Assert.Equal(field, SurfaceDistances.Of(shape, placement, target, new Parallelism(3)).Distances);
    }
}
