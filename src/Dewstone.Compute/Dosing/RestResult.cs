using Dewstone.Model.Results;

namespace Dewstone.Compute.Dosing;

/// <summary>Doses of a print that was stopped: those given before, unchanged, and those that are left.</summary>
public sealed record RestResult
{
    /// <summary>All doses.</summary>
    public required DosePlan Doses { get; init; }

    /// <summary>Whether doses that are left were found anew.</summary>
    public required bool Redosed { get; init; }

    /// <summary>Objective of the job in one go, litres.</summary>
    public required double InOneGoLitres { get; init; }

    /// <summary>Objective of its own doses with the stop, litres.</summary>
    public required double AsTabledLitres { get; init; }

    /// <summary>Objective of the doses chosen, litres.</summary>
    public required double ChosenLitres { get; init; }

    /// <summary>Computations of the wetting it took.</summary>
    public required int Solves { get; init; }

    /// <summary>Cells a voxel side of the objectives.</summary>
    public required int Cells { get; init; }
}
