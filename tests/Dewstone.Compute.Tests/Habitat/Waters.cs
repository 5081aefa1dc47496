using Dewstone.Compute.Habitat;
using Dewstone.Compute.Tests.Inspection;
using Dewstone.Model.Lattices;
using Dewstone.Model.Quantities;
using Dewstone.Model.Results;

namespace Dewstone.Compute.Tests.Habitat;

/// <summary>Solids on the seabed given by a signed distance in the unit frame, negative in the solid.</summary>
internal static class Waters
{
    private const int Margin = 2;

    public static readonly Parallelism Two = new(2);

    public static UnitPlacement Placement(Size3 box, double cell) =>
        new() { QuarterTurns = 0, Corner = new Point3(Margin * cell, Margin * cell, Margin * cell), UnitBox = box };

    public static CellGrid Grid(Size3 box, double cell) => FrontFields.Grid(Count(box.X, cell), Count(box.Y, cell), Count(box.Z, cell), cell);

    public static WaterField Field(Size3 box, double cell, Func<Point3, double> distance, double margin)
    {
        UnitPlacement placement = Placement(box, cell);
        CellGrid grid = Grid(box, cell);
        float[] front = new float[grid.Count];
        for (int i = 0; i < front.Length; i++)
        {
            Point3 p = placement.ToUnit(grid.Centre(i % grid.Nx, i / grid.Nx % grid.Ny, i / (grid.Nx * grid.Ny)));
            front[i] = (float)Math.Clamp(-distance(p) / cell, -1.0, 1.0);
        }

        return WaterField.Of(front, grid, placement, 1, margin)!;
    }

    public static BallReach Reach(Size3 box, double cell, Func<Point3, double> distance, double largest) =>
        new(Field(box, cell, distance, 0.5 * largest), largest, Two);

    public static double Volume(BallReach reach, double diameter) => reach.CubicMetres(reach.Of(diameter, Two));

    /// <summary>Distance to a block from corner to corner.</summary>
    public static double Block(Point3 p, Point3 low, Point3 high) => Moulds.Block(p, low.X, low.Y, low.Z, high.X, high.Y, high.Z);

    private static int Count(double metres, double cell) => (int)Math.Round(metres / cell) + 2 * Margin;
}
