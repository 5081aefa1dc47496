using Dewstone.Model.Description;
using Dewstone.Model.Lattices;
using Dewstone.Model.Quantities;

namespace Dewstone.Compute.Studies;

/// <summary>
/// Directions of a test block: a along the axis its features are about, u level across it, v across both (u, v are y, z for x; x, z for y; x, y for z).
/// Unit frame, metres.
/// </summary>
/// <param name="axis">Direction of holes, normal of walls.</param>
/// <param name="grid">Needle positions and layers.</param>
/// <param name="tipMetres">Depth of the tip below the top of its layer, metres.</param>
internal sealed class BlockFrame(Axis axis, NeedleGrid grid, double tipMetres)
{
    private readonly double pitch = grid.Pitch.Metres;
    private readonly double layer = grid.LayerHeight.Metres;

    /// <summary>The axis.</summary>
    public Axis Axis => axis;

    /// <summary>Distance between needles along a, metres.</summary>
    public double StepA => axis == Axis.Z ? layer : pitch;

    /// <summary>Distance between needles along u, metres.</summary>
    public double StepU => pitch;

    /// <summary>Distance between needles along v, metres.</summary>
    public double StepV => axis == Axis.Z ? pitch : layer;

    private double FirstLayer => layer - tipMetres;

    /// <summary>A point.</summary>
    /// <param name="a">Along the axis.</param>
    /// <param name="u">Level across.</param>
    /// <param name="v">Across both.</param>
    /// <returns>Unit frame.</returns>
    public Point3 Point(double a, double u, double v) => axis switch
    {
        Axis.X => new Point3(a, u, v),
        Axis.Y => new Point3(u, a, v),
        _ => new Point3(u, v, a),
    };

    /// <summary>Edges of a box.</summary>
    /// <param name="a">Along the axis.</param>
    /// <param name="u">Level across.</param>
    /// <param name="v">Across both.</param>
    /// <returns>Unit frame.</returns>
    public Size3 Size(double a, double u, double v)
    {
        Point3 p = Point(a, u, v);
        return new Size3(p.X, p.Y, p.Z);
    }

    /// <summary>A point by its directions.</summary>
    /// <param name="p">Unit frame.</param>
    /// <returns>Along a, u, v.</returns>
    public (double A, double U, double V) Of(Point3 p) => axis switch
    {
        Axis.X => (p.X, p.Y, p.Z),
        Axis.Y => (p.Y, p.X, p.Z),
        _ => (p.Z, p.X, p.Y),
    };

    /// <summary>Steps of the flat index from cell to cell along a, u, v.</summary>
    /// <param name="cells">The cells.</param>
    /// <returns>The steps.</returns>
    public (int A, int U, int V) Strides(CellGrid cells) => axis switch
    {
        Axis.X => (1, cells.Nx, cells.Nx * cells.Ny),
        Axis.Y => (cells.Nx, 1, cells.Nx * cells.Ny),
        _ => (cells.Nx * cells.Ny, 1, cells.Nx),
    };

    /// <summary>Least place along a at a phase against the needles.</summary>
    /// <param name="least">Not below this, metres.</param>
    /// <param name="phase">0 at a needle, a half midway between two.</param>
    /// <returns>Metres.</returns>
    public double NextA(double least, double phase) => Next(least, axis == Axis.Z ? FirstLayer : pitch / 2.0, StepA, phase);

    /// <summary>As <see cref="NextA"/>, along u.</summary>
    /// <param name="least">Not below this, metres.</param>
    /// <param name="phase">0 at a needle.</param>
    /// <returns>Metres.</returns>
    public double NextU(double least, double phase) => Next(least, pitch / 2.0, StepU, phase);

    /// <summary>As <see cref="NextA"/>, along v.</summary>
    /// <param name="least">Not below this, metres.</param>
    /// <param name="phase">0 at a needle.</param>
    /// <returns>Metres.</returns>
    public double NextV(double least, double phase) => Next(least, axis == Axis.Z ? pitch / 2.0 : FirstLayer, StepV, phase);

    /// <summary>The next whole number of steps.</summary>
    /// <param name="length">Metres.</param>
    /// <param name="step">Metres.</param>
    /// <returns>Metres.</returns>
    public static double Whole(double length, double step) => Math.Ceiling(length / step - 1e-9) * step;

    private static double Next(double least, double first, double step, double phase) =>
        first + (Math.Ceiling((least - first) / step - phase - 1e-9) + phase) * step;
}
