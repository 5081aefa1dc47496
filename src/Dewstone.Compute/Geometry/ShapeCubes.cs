using Dewstone.Model.Quantities;

namespace Dewstone.Compute.Geometry;

/// <summary>
/// The box of a unit and some room around it in cubes, each with the parts within its reach, so that a distance near a surface asks a few parts instead of all.
/// It has the same bits as that from all parts: a part left out is farther than <c>certain</c> from any point of the cube, and so counts only where
/// the whole is deeper or farther than that; there all parts are asked.
/// </summary>
internal sealed class ShapeCubes
{
    private const int Along = 16;

    private const double RoomMetres = 0.05, LeastCertainMetres = 0.03, SlackMetres = 1e-6;

    private readonly ReefShape shape;
    private readonly int[] allOpenings;
    private readonly int[] allKeep;
    private readonly double edge;
    private readonly double certain;
    private readonly int nx;
    private readonly int ny;
    private readonly int nz;
    private readonly int[][] openings;
    private readonly int[][] keep;

    /// <summary>The cubes of a shape.</summary>
    /// <param name="shape">The shape.</param>
    public ShapeCubes(ReefShape shape)
    {
        this.shape = shape;
        allOpenings = [.. Enumerable.Range(0, shape.Openings.Count)];
        allKeep = [.. Enumerable.Range(0, shape.Keep.Count)];
        Size3 box = shape.Box;
        edge = (Math.Max(box.X, Math.Max(box.Y, box.Z)) + 2.0 * RoomMetres) / Along;
        certain = Math.Max(Fillet.Reach * shape.BlendMetres, LeastCertainMetres);
        (nx, ny, nz) = (Cubes(box.X), Cubes(box.Y), Cubes(box.Z));
        openings = new int[nx * ny * nz][];
        keep = new int[openings.Length][];
        double reach = 0.5 * Math.Sqrt(3.0) * edge + certain + SlackMetres;
        for (int cube = 0; cube < openings.Length; cube++)
        {
            double x = (cube % nx + 0.5) * edge - RoomMetres, y = (cube / nx % ny + 0.5) * edge - RoomMetres, z = (cube / (nx * ny) + 0.5) * edge - RoomMetres;
            openings[cube] = Array.FindAll(allOpenings, part => shape.Openings.Distance(part, x, y, z) <= reach);
            keep[cube] = Array.FindAll(allKeep, part => shape.Keep.Distance(part, x, y, z) <= reach);
        }
    }

    /// <summary>Signed distance to the solid.</summary>
    /// <param name="x">x, metres, unit frame.</param>
    /// <param name="y">y, metres.</param>
    /// <param name="z">z, metres.</param>
    /// <returns>Metres, negative in the solid.</returns>
    public double Distance(double x, double y, double z)
    {
        int i = (int)Math.Floor((x + RoomMetres) / edge), j = (int)Math.Floor((y + RoomMetres) / edge), k = (int)Math.Floor((z + RoomMetres) / edge);
        if ((uint)i < (uint)nx && (uint)j < (uint)ny && (uint)k < (uint)nz)
        {
            int cube = (k * ny + j) * nx + i;
            double near = shape.Value(x, y, z, openings[cube], keep[cube]);
            if (near > -certain && near < certain)
            {
                return near;
            }
        }

        return shape.Value(x, y, z, allOpenings, allKeep);
    }

    private int Cubes(double side) => (int)Math.Ceiling((side + 2.0 * RoomMetres) / edge);
}
