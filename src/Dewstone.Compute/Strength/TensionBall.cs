using Dewstone.Compute.Numerics;
using Dewstone.Model.Quantities;

namespace Dewstone.Compute.Strength;

/// <summary>Mean tension over the hardened cells in a ball, with the stress at each cell: what is judged, whatever size the bricks have.</summary>
/// <param name="solver">Solved.</param>
/// <param name="bricks">The body.</param>
/// <param name="lane">Set of forces.</param>
/// <param name="diameter">Diameter of the ball, metres.</param>
internal sealed class TensionBall(ElasticSolver solver, BodyBricks bricks, int lane, double diameter)
{
    /// <summary>
    /// A ball filled less than this tells nothing: in the edge of a block it is filled to a quarter, in a lip or a fringe of cells to less. 1.
    /// </summary>
    public const double LeastOfBall = 0.2;

    /// <summary>Bricks filled less than this hang by a few cells, and their strains are no measure of the body's, 1.</summary>
    public const double LeastOfBrick = 0.1;

    /// <summary>The corner of cells near a point around which tension comes nearest to the cracking stress.</summary>
    /// <param name="start">Metres, unit frame.</param>
    /// <returns>Place, mean tension and cracking stress there, Pa; a use of 0 when there is no solid about.</returns>
    public TensionPlace Climb(Point3 start)
    {
        Size3 cell = bricks.CellEdges;
        Point3 from = start - bricks.Corner;
        (int X, int Y, int Z) at = ((int)Math.Round(from.X / cell.X), (int)Math.Round(from.Y / cell.Y), (int)Math.Round(from.Z / cell.Z));
        TensionPlace best = At(at.X, at.Y, at.Z);
        for (int step = Math.Max(1, bricks.CellsInBrick.Across / 2); step > 0; step /= 2)
        {
            for (bool moved = true; moved;)
            {
                moved = false;
                foreach ((int dx, int dy, int dz) in (ReadOnlySpan<(int, int, int)>)[(-1, 0, 0), (1, 0, 0), (0, -1, 0), (0, 1, 0), (0, 0, -1), (0, 0, 1)])
                {
                    (int x, int y, int z) = (at.X + step * dx, at.Y + step * dy, at.Z + step * dz);
                    TensionPlace next = At(x, y, z);
                    if (next.Use > best.Use)
                    {
                        (best, at, moved) = (next, (x, y, z), true);
                    }
                }
            }
        }

        return best;
    }

    // Around a corner of cells that lies in the solid or on an edge of it.
    private TensionPlace At(int x, int y, int z)
    {
        Size3 cell = bricks.CellEdges;
        Point3 where = bricks.Corner + new Point3(x * cell.X, y * cell.Y, z * cell.Z);
        int around = 0;
        for (int corner = 0; corner < 8; corner++)
        {
            around += bricks.HasCell(x - (corner & 1), y - ((corner >> 1) & 1), z - (corner >> 2)) ? 1 : 0;
        }

        return around < 8.0 * Support.LeastFilled ? new TensionPlace(where, 0.0, 1.0) : Mean(x, y, z, where);
    }

    private TensionPlace Mean(int cx, int cy, int cz, Point3 where)
    {
        Size3 cell = bricks.CellEdges;
        (int across, int high) = bricks.CellsInBrick;
        double radius = 0.5 * diameter, soft = (cell.X + cell.Y + cell.Z) / 3.0, all = 0.0, tension = 0.0, strength = 0.0;
        Span<double> motion = stackalloc double[BrickElement.MotionTerms];
        (int rx, int ry, int rz) = (Reach(cell.X), Reach(cell.Y), Reach(cell.Z));
        GridShape count = bricks.CellCount;
        // Brick by brick, so that the displacements of each are fetched once.
        for (int bz = First(cz - rz) / high; bz <= Last(cz + rz, count.Nz) / high; bz++)
        {
            for (int by = First(cy - ry) / across; by <= Last(cy + ry, count.Ny) / across; by++)
            {
                for (int bx = First(cx - rx) / across; bx <= Last(cx + rx, count.Nx) / across; bx++)
                {
                    int brick = bricks.Shape.Index(bx, by, bz);
                    if (bricks.Filled[brick] < LeastOfBrick)
                    {
                        continue;
                    }

                    solver.MotionOf(lane, bx, by, bz, motion);
                    for (int i = 0; i < across * across * high; i++)
                    {
                        int ix = i % across, iy = i / across % across, iz = i / (across * across);
                        double dx = (bx * across + ix + 0.5 - cx) * cell.X, dy = (by * across + iy + 0.5 - cy) * cell.Y, dz = (bz * high + iz + 0.5 - cz) * cell.Z;
                        double weight = Math.Clamp((radius + 0.5 * soft - Math.Sqrt(dx * dx + dy * dy + dz * dz)) / soft, 0.0, 1.0);
                        if (weight > 0.0 && bricks.HasCell(bx * across + ix, by * across + iy, bz * high + iz))
                        {
                            Stress stress = solver.Brick.StressAt(motion, (2.0 * ix + 1.0) / across - 1.0, (2.0 * iy + 1.0) / across - 1.0, (2.0 * iz + 1.0) / high - 1.0);
                            all += weight;
                            tension += weight * Math.Max(0.0, stress.LargestPrincipal);
                            strength += weight * bricks.Pascals[brick];
                        }
                    }
                }
            }
        }

        double whole = Math.PI / 6.0 * diameter * diameter * diameter / cell.CubicMetres;
        return all >= LeastOfBall * whole ? new TensionPlace(where, tension / all, CrackingStress.Pascals(strength / all)) : new TensionPlace(where, 0.0, 1.0);

        int Reach(double edge) => (int)Math.Ceiling((radius + soft) / edge);
        static int First(int index) => Math.Max(0, index);
        static int Last(int index, int count) => Math.Min(count - 1, index);
    }
}
