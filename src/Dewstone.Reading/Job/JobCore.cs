using Dewstone.Model.Description;
using Dewstone.Model.Lattices;
using Dewstone.Model.Results;

namespace Dewstone.Reading.Job;

/// <summary>A job core as read from <c>job.json</c>: what the job was simulated with.</summary>
public sealed record JobCore
{
    /// <summary>The resolved description. A mix from a calibration does not say from which file.</summary>
    public required JobDescription Description { get; init; }

    /// <summary>Where the unit stands.</summary>
    public required UnitPlacement Placement { get; init; }

    /// <summary>Needle positions.</summary>
    public required Lattice Lattice { get; init; }

    /// <summary>Cells of the moisture field.</summary>
    public required CellGrid Cells { get; init; }

    /// <summary>The machine's steps with their times; places, water and mix stand in the sequence.</summary>
    public required Timeline Timeline { get; init; }

    /// <summary>Time from the first dose of a layer after which its water no longer moves, as simulated, s.</summary>
    public required double WindowSeconds { get; init; }

    /// <summary>Pore volume per volume of bed as simulated, 1.</summary>
    public required double Porosity { get; init; }

    /// <summary>Volumetric water content at which it sets, as simulated, 1.</summary>
    public required double ThresholdContent { get; init; }

    /// <summary>Dose tables, lowest layer first: path in the job folder and SHA-256 as lower-case hexadecimal.</summary>
    public required IReadOnlyList<(string Path, string Sha256)> DoseTables { get; init; }

    /// <summary>Tables of the doses given before a stop, likewise; empty for a print in one go.</summary>
    public IReadOnlyList<(string Path, string Sha256)> DeliveredTables { get; init; } = [];

    /// <summary>The sequence: path in the job folder and SHA-256 as lower-case hexadecimal.</summary>
    public required (string Path, string Sha256) Sequence { get; init; }
}
