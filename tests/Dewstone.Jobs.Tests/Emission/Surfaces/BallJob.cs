using Dewstone.Compute.Geometry;
using Dewstone.Jobs.Tests.Emission.Pictures;
using Dewstone.Model.Lattices;
using Dewstone.Model.Quantities;
using Dewstone.Model.Results;

namespace Dewstone.Jobs.Tests.Emission.Surfaces;

/// <summary>
/// A ball of 150 mm wanted, another hardened at a place of one's own: (content / threshold)^3 = 1 + depth / 6 mm, so that the level field of
/// the law with exponent 4 is straight through the surface.
/// </summary>
internal static class BallJob
{
    public const double WantedRadius = 0.075;

    /// <summary>Makes it.</summary>
    /// <param name="radius">Radius that hardens, metres; 0 for none.</param>
    /// <param name="shift">Where its middle lies from the wanted one's, printer frame.</param>
    /// <param name="quarterTurns">How the unit is turned.</param>
    public static CompiledJob Make(double radius, Point3 shift = default, int quarterTurns = 0)
    {
        CompiledJob job = SampleJob.Ball(cells: 8);
        job = job with
        {
            Description = job.Description with { Unit = job.Description.Unit with { Rounding = new Length(WantedRadius) } },
            Placement = job.Placement with { QuarterTurns = quarterTurns },
        };
        CellGrid grid = job.Moisture.Grid;
        Point3 middle = job.Placement.Corner + new Point3(WantedRadius, WantedRadius, WantedRadius) + shift;
        double threshold = job.Moisture.ThresholdContent;
        for (int i = 0; i < grid.Count; i++)
        {
            Point3 centre = grid.Centre(i % grid.Nx, i / grid.Nx % grid.Ny, i / (grid.Nx * grid.Ny));
            double depth = radius > 0.0 ? radius - (centre - middle).Norm : -1.0;
            float content = (float)(threshold * Math.Cbrt(Math.Max(0.0, 1.0 + depth / 0.006)));
            job.Moisture.VolumetricWaterContent[i] = content;
            job.Moisture.Hardened[i] = content >= threshold ? (byte)1 : (byte)0;
        }

        ReefShape shape = ReefShapeBuilder.Build(job.Description.Unit).Shape;
        return job with
        {
            Target = Voxelizer.Voxelize(shape, job.Placement, grid, new Parallelism(2), null, TestContext.Current.CancellationToken),
        };
    }
}
