using Dewstone.Model.Description;
using Dewstone.Model.Lattices;
using Dewstone.Model.Quantities;
using Dewstone.Model.Results;
using Dewstone.Reading.Job;

namespace Dewstone.Jobs.Comparison;

/// <summary>One side of a comparison, be it a job folder as read or a unit compiled just now.</summary>
public sealed record ComparedJob
{
    /// <summary>What it is called: the file or folder, as named.</summary>
    public required string Label { get; init; }

    /// <summary>Fingerprint of the job, 12 characters.</summary>
    public required string JobFingerprint { get; init; }

    /// <summary>Fingerprint of the design, 12 characters.</summary>
    public required string DesignFingerprint { get; init; }

    /// <summary>Whether it is held back from printing.</summary>
    public required bool Held { get; init; }

    /// <summary>What was asked for.</summary>
    public required JobDescription Description { get; init; }

    /// <summary>Where the unit stands.</summary>
    public required UnitPlacement Placement { get; init; }

    /// <summary>Needle positions.</summary>
    public required Lattice Lattice { get; init; }

    /// <summary>Fine cells.</summary>
    public required CellGrid Cells { get; init; }

    /// <summary>Wanted share of each cell; index order of the cells.</summary>
    public required float[] Target { get; init; }

    /// <summary>1 where a cell hardens, else 0; the same order.</summary>
    public required byte[] Hardened { get; init; }

    /// <summary>The doses; null for a held job's folder, which has none.</summary>
    public DosePlan? Doses { get; init; }

    /// <summary>Findings.</summary>
    public required IReadOnlyList<ComparedFinding> Findings { get; init; }

    /// <summary>Requirements and how they came out.</summary>
    public required IReadOnlyList<ClaimedRequirement> Requirements { get; init; }

    /// <summary>Totals, cost and carbon by name.</summary>
    public required IReadOnlyList<(string Name, double? Value)> Figures { get; init; }

    /// <summary>The cell that holds a point.</summary>
    /// <param name="point">Metres, unit frame.</param>
    /// <returns>Its index; -1 outside the cells.</returns>
    internal int CellAt(Point3 point)
    {
        Point3 p = Placement.ToPrinter(point) - Cells.Origin;
        int x = (int)Math.Floor(p.X / Cells.CellMetres), y = (int)Math.Floor(p.Y / Cells.CellMetres), z = (int)Math.Floor(p.Z / Cells.CellHeightMetres);
        return x >= 0 && y >= 0 && z >= 0 && x < Cells.Nx && y < Cells.Ny && z < Cells.Nz ? (z * Cells.Ny + y) * Cells.Nx + x : -1;
    }
}
