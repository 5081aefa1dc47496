using Dewstone.Compute.Geometry;
using Dewstone.Model.Description;
using Dewstone.Model.Lattices;
using Dewstone.Model.Quantities;
using Dewstone.Model.Results;

namespace Dewstone.Compute.Dosing;

/// <summary>
/// The wanted solid of a turned unit on coarse cells, laid once and cut out anew for every place on the needle grid: a quarter of a pitch is one cell
/// there. Along z only when a layer too is four cells high; else it is laid once for each height.
/// </summary>
/// <param name="job">Unit and printer.</param>
/// <param name="shape">Wanted solid.</param>
/// <param name="rule">What weighs how much.</param>
/// <param name="parallelism">Threads; no result depends on them.</param>
/// <param name="cancellation">Looked at once a slab.</param>
internal sealed class RegistrationField(JobDescription job, ReefShape shape, CorrectionRule rule, Parallelism parallelism, CancellationToken cancellation)
{
    /// <summary>Cells a pitch: one a step of the search.</summary>
    public const int Cells = 4;

    // A window reaches at most three pitches beyond the unit.
    private const int MarginCells = 3 * Cells;
    private const double Blur = 1e-2;

    private readonly Dictionary<(int, int, int, int), CorrectionField> fields = [];

    /// <summary>The field over a placement's window.</summary>
    /// <param name="placement">Where the unit stands.</param>
    /// <param name="window">Coarse cells over its lattice.</param>
    /// <returns>A field of its own.</returns>
    public CorrectionField Over(UnitPlacement placement, CellGrid window)
    {
        Point3 corner = placement.Corner - window.Origin;
        (int x, int restX) = Split(corner.X / window.CellMetres);
        (int y, int restY) = Split(corner.Y / window.CellMetres);
        (int z, int restZ) = Split(corner.Z / window.CellHeightMetres);
        (int, int, int, int) key = (placement.QuarterTurns, restX, restY, restZ);
        if (!fields.TryGetValue(key, out CorrectionField? field))
        {
            Size3 box = placement.TurnedBox;
            CellGrid around = window with
            {
                Nx = Count(box.X, window.CellMetres),
                Ny = Count(box.Y, window.CellMetres),
                Nz = Count(box.Z, window.CellHeightMetres),
                Origin = window.Origin + new Point3(
                    (x - MarginCells) * window.CellMetres, (y - MarginCells) * window.CellMetres, (z - MarginCells) * window.CellHeightMetres),
            };
            fields[key] = field = CorrectionField.Over(
                shape, placement, around, job.Unit.Relief?.Amplitude.Metres ?? 0.0, rule, parallelism, cancellation);
        }

        return field.Cut(window, MarginCells - x, MarginCells - y, MarginCells - z);
    }

    private static int Count(double length, double edge) => (int)Math.Ceiling(length / edge) + 2 * MarginCells;

    // Whole cells and thousandths of one; what micrometres blur belongs to the whole cell.
    private static (int Whole, int Thousandths) Split(double cells)
    {
        int whole = (int)Math.Floor(cells + Blur), rest = (int)Math.Floor((cells - whole) * 1000.0 + 0.5);
        return (whole, rest > 1000.0 * Blur ? rest : 0);
    }
}
