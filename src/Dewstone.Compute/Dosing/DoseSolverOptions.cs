namespace Dewstone.Compute.Dosing;

/// <summary>How doses are found.</summary>
public sealed record DoseSolverOptions
{
    /// <summary>Whether doses are corrected; else each voxel gets its wanted share of the best single dose.</summary>
    public bool Correct { get; init; } = true;

    /// <summary>Most wetting computations of a correction, 1 or more.</summary>
    public int Solves { get; init; } = 10;

    /// <summary>Cells a pitch on which doses are judged while they are corrected; even.</summary>
    public int CellsPerPitch { get; init; } = 6;
}
