using Dewstone.Compute.Dosing;
using Dewstone.Compute.Geometry;
using Dewstone.Model.Description;
using Dewstone.Model.Lattices;
using Dewstone.Model.Quantities;
using Dewstone.Model.Results;

namespace Dewstone.Compute.Tests.Dosing;

public sealed class CorrectionFieldTests
{
    /// <summary>
    /// A sharp block of 4 pitches of 50.8 mm on cells of 12.7 mm: the depth of a cell's centre below the nearest face is exact. The rule as its remarks state
    /// it, worked by hand: 6.35 mm deep weighs 1.635 either way; 19.05 mm deep 2.905, dry 1.6 times that; deeper 4 at most, dry 6.4.
    /// </summary>
    [Fact]
    public void Missing_water_weighs_more_in_deep_solid_and_nowhere_else()
    {
        const double Pitch = 0.0508;
        JobDescription job = Targets.SmallCube();
        job = job with
        {
            Unit = job.Unit with { OuterBox = new Size3(4 * Pitch, 4 * Pitch, 4 * Pitch), Rounding = new Length(0.0), Tunnels = [], Cavities = [] },
        };
        PlacementResult place = Placer.Place(job, 4);
        CellGrid grid = place.Cells!;

        CorrectionField field = CorrectionField.Over(
            ReefShapeBuilder.Build(job.Unit).Shape, place.Placement!, grid, 0.0, new CorrectionRule(), new Parallelism(2), CancellationToken.None);

        int[] seen = new int[4];
        for (int i = 0; i < grid.Count; i++)
        {
            Point3 point = place.Placement!.ToUnit(grid.Centre(i % grid.Nx, i / grid.Nx % grid.Ny, i / (grid.Nx * grid.Ny)));
            double depth = new[] { point.X, point.Y, point.Z, 4 * Pitch - point.X, 4 * Pitch - point.Y, 4 * Pitch - point.Z }.Min();
            (int kind, double wet, double dry) = depth switch
            {
                < 0.0 => (0, field.Weights[i], field.Weights[i]),
                < 0.0127 => (1, 1.635, 1.635),
                < 0.0254 => (2, 2.905, 1.6 * 2.905),
                _ => (3, 4.0, 6.4),
            };
            seen[kind]++;
            Assert.Equal(wet, field.Weights[i], 1e-5);
            Assert.Equal(dry, field.DryWeights[i], 1e-5);
        }

        // Shells of a cube of 16 cells a side.
        Assert.Equal([grid.Count - 4096, 4096 - 2744, 2744 - 1728, 1728], seen);
    }
}
