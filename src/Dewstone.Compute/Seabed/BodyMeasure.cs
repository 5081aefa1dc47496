using Dewstone.Compute.Numerics;
using Dewstone.Model.Lattices;
using Dewstone.Model.Quantities;
using Dewstone.Model.Results;

namespace Dewstone.Compute.Seabed;

/// <summary>Measures the hardened cells as a body that stands in the sea: the largest piece alone, since what is loose falls off.</summary>
/// <remarks>
/// It stands on the columns whose lowest cell lies within <see cref="BeddingMetres"/> of its lowest: it beds into the soil so far. Areas and volume are counts of cells.
/// </remarks>
public static class BodyMeasure
{
    /// <summary>How far an uneven underside beds into the soil, m: a usual pitch, as deep as the scallops that needles leave: a smaller foot would give way until it stands so; a rule of ours.</summary>
    public const double BeddingMetres = 0.05;

    private const int PlanesTogether = 8;

    /// <summary>Measures.</summary>
    /// <param name="grid">The cells.</param>
    /// <param name="hardened">1 where hardened, else 0; index order of the grid.</param>
    /// <param name="placement">Where the unit stands in the printer.</param>
    /// <param name="parallelism">Threads; no result depends on them.</param>
    /// <returns>The body in the unit frame; null when nothing hardened.</returns>
    public static StandingBody? Of(CellGrid grid, byte[] hardened, UnitPlacement placement, Parallelism parallelism)
    {
        ArgumentNullException.ThrowIfNull(grid);
        ArgumentNullException.ThrowIfNull(hardened);
        ArgumentNullException.ThrowIfNull(placement);
        GridShape shape = new(grid.Nx, grid.Ny, grid.Nz);
        ComponentMap pieces = Components.Label(hardened, shape, Phase.Set, Connectivity.Faces, parallelism);
        if (pieces.Pieces.Count == 0)
        {
            return null;
        }

        int main = Enumerable.Range(0, pieces.Pieces.Count).MaxBy(piece => pieces.Pieces[piece].Cells);
        Component body = pieces.Pieces[main];
        double[] areas = new double[StandingBody.Directions], heights = new double[StandingBody.Directions];
        Look(pieces.Labels, main + 1, shape, grid, body.Box, placement.QuarterTurns, areas, heights, parallelism);
        (Point3 centre, int[] lowest) = Columns(pieces.Labels, main + 1, shape, body.Box);
        double cell = grid.CellMetres, height = grid.CellHeightMetres;
        double columnArea = cell * cell;
        int reach = body.Box.FirstZ + (int)(BeddingMetres / height + 1e-9);
        (int plan, Point3 planCentre, int contact, List<(double X, double Y)> corners) = Plan(lowest, shape, reach);
        (double X, double Y)[] footprint = ConvexHull.Of(corners.Select(corner => Flat(corner.X, corner.Y)));
        (double x, double y) = Flat(centre.X, centre.Y);
        return new StandingBody
        {
            CubicMetres = body.Cells * grid.CellCubicMetres,
            MainShare = (double)body.Cells / pieces.Pieces.Sum(piece => (long)piece.Cells),
            HeightMetres = (body.Box.LastZ + 1 - body.Box.FirstZ) * height,
            Centre = (x, y, (centre.Z - body.Box.FirstZ) * height),
            PlanSquareMetres = plan * columnArea,
            PlanCentre = Flat(planCentre.X, planCentre.Y),
            ContactSquareMetres = contact * columnArea,
            Footprint = footprint,
            SilhouetteSquareMetres = areas,
            SilhouetteHeightMetres = heights,
            FootWidthMetres = LeastWidth(footprint),
            FootprintSquareMetres = Area(footprint),
        };

        (double X, double Y) Flat(double cellsX, double cellsY)
        {
            Point3 unit = placement.ToUnit(grid.Origin + new Point3(cellsX * cell, cellsY * cell, 0.0));
            return (unit.X, unit.Y);
        }
    }

    private static void Look(
        int[] labels, int piece, GridShape shape, CellGrid grid, CellBox box, int quarterTurns, double[] areas, double[] heights, Parallelism parallelism)
    {
        double[] ex = new double[StandingBody.Directions], ey = new double[StandingBody.Directions];
        for (int direction = 0; direction < ex.Length; direction++)
        {
            // Across the line of sight, turned into the printer frame with the unit.
            double angle = (90.0 * quarterTurns - direction * 180.0 / StandingBody.Directions) * Math.PI / 180.0;
            (ex[direction], ey[direction]) = (Math.Cos(angle), Math.Sin(angle));
        }

        int planes = box.LastZ + 1 - box.FirstZ;
        double[] widths = new double[planes * StandingBody.Directions];
        Chunks.Run(planes, PlanesTogether, parallelism, (first, end) =>
        {
            Silhouette silhouette = new(ex, ey);
            for (int plane = first; plane < end; plane++)
            {
                silhouette.Widths(
                    labels, piece, shape, box.FirstZ + plane, widths.AsSpan(plane * StandingBody.Directions, StandingBody.Directions));
            }
        });
        for (int direction = 0; direction < areas.Length; direction++)
        {
            double sum = 0.0, moment = 0.0;
            for (int plane = 0; plane < planes; plane++)
            {
                double width = widths[plane * StandingBody.Directions + direction];
                sum += width;
                moment += width * (plane + 0.5);
            }

            areas[direction] = sum * grid.CellMetres * grid.CellHeightMetres;
            heights[direction] = moment / sum * grid.CellHeightMetres;
        }
    }

    // Centre in cells from the grid's corner; lowest cell of each column, -1 for none.
    private static (Point3 Centre, int[] Lowest) Columns(int[] labels, int piece, GridShape shape, CellBox box)
    {
        int[] lowest = new int[shape.Plane];
        Array.Fill(lowest, -1);
        long count = 0, sumX = 0, sumY = 0, sumZ = 0;
        for (int z = box.FirstZ; z <= box.LastZ; z++)
        {
            for (int y = box.FirstY; y <= box.LastY; y++)
            {
                for (int x = box.FirstX; x <= box.LastX; x++)
                {
                    if (labels[shape.Index(x, y, z)] == piece)
                    {
                        count++;
                        sumX += x;
                        sumY += y;
                        sumZ += z;
                        int column = y * shape.Nx + x;
                        lowest[column] = lowest[column] < 0 ? z : lowest[column];
                    }
                }
            }
        }

        return (new Point3((double)sumX / count + 0.5, (double)sumY / count + 0.5, (double)sumZ / count + 0.5), lowest);
    }

    private static (int Plan, Point3 PlanCentre, int Contact, List<(double X, double Y)> Corners) Plan(int[] lowest, GridShape shape, int reach)
    {
        int plan = 0, contact = 0;
        long sumX = 0, sumY = 0;
        List<(double X, double Y)> corners = [];
        for (int y = 0; y < shape.Ny; y++)
        {
            int first = -1, last = -1;
            for (int x = 0; x < shape.Nx; x++)
            {
                int low = lowest[y * shape.Nx + x];
                if (low < 0)
                {
                    continue;
                }

                plan++;
                sumX += x;
                sumY += y;
                if (low <= reach)
                {
                    contact++;
                    first = first < 0 ? x : first;
                    last = x;
                }
            }

            if (first >= 0)
            {
                corners.AddRange([(first, y), (first, y + 1), (last + 1, y), (last + 1, y + 1)]);
            }
        }

        return (plan, new Point3((double)sumX / plan + 0.5, (double)sumY / plan + 0.5, 0.0), contact, corners);
    }

    private static double Area((double X, double Y)[] corners)
    {
        double twice = 0.0;
        for (int i = 0; i < corners.Length; i++)
        {
            (double X, double Y) a = corners[i], b = corners[(i + 1) % corners.Length];
            twice += a.X * b.Y - b.X * a.Y;
        }

        return 0.5 * twice;
    }

    // A convex outline is narrowest across one of its edges.
    private static double LeastWidth((double X, double Y)[] corners)
    {
        double least = double.PositiveInfinity;
        for (int i = 0; i < corners.Length; i++)
        {
            (double X, double Y) a = corners[i], b = corners[(i + 1) % corners.Length];
            double nx = a.Y - b.Y, ny = b.X - a.X, length = Math.Sqrt(nx * nx + ny * ny);
            least = Math.Min(least, corners.Max(c => ((c.X - a.X) * nx + (c.Y - a.Y) * ny) / length));
        }

        return least;
    }
}
