using Dewstone.Compute.Geometry;
using Dewstone.Compute.Inspection;
using Dewstone.Compute.Tests.Geometry;
using Dewstone.Model.Description;
using Dewstone.Model.Lattices;
using Dewstone.Model.Quantities;
using Dewstone.Model.Results;

namespace Dewstone.Compute.Tests.Inspection;

/// <summary>Small predicted solids given by a signed distance in the unit frame, on cells of 5 mm with a margin of 50 mm around the box.</summary>
internal static class Moulds
{
    public const double Cell = 0.005;

    private const int Margin = 10;

    public static readonly Parallelism Two = new(2);

    public static UnitPlacement Placement(Size3 box) =>
        new() { QuarterTurns = 0, Corner = new Point3(Margin * Cell, Margin * Cell, Margin * Cell), UnitBox = box };

    public static CellGrid Grid(Size3 box) => FrontFields.Grid(Cells(box.X), Cells(box.Y), Cells(box.Z), Cell);

    /// <summary>The hardened solid of a box's grid whose surface is where the distance is 0.</summary>
    public static PredictedSolid Solid(Size3 box, Func<Point3, double> distance, int threads = 2)
    {
        UnitPlacement placement = Placement(box);
        MoistureResult moisture = FrontFields.Moisture(Grid(box), p => distance(placement.ToUnit(p)));
        return new PredictedSolid(
            moisture, SolidField.Of(FrontFields.Surface(moisture), new Parallelism(threads)), placement, new Density(1700.0), new Parallelism(threads));
    }

    public static JobDescription Job(Requirements require, ReefUnit? unit = null) =>
        Samples.Job((unit ?? SampleUnits.Plain(0.2, 0.2, 0.2)) with { Require = require });

    /// <summary>Distance to an upright block.</summary>
    public static double Block(Point3 p, double x0, double y0, double z0, double x1, double y1, double z1) =>
        new BlockRegion(new Point3(x0, y0, z0), new Point3(x1, y1, z1)).Distance(p);

    public static double Ball(Point3 p, double x, double y, double z, double diameter) => FrontFields.Ball(p, new Point3(x, y, z), diameter / 2.0);

    private static int Cells(double metres) => (int)Math.Round(metres / Cell) + 2 * Margin;
}
