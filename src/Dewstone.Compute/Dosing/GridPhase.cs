namespace Dewstone.Compute.Dosing;

/// <summary>Where a unit stands within a voxel of the needle grid.</summary>
/// <param name="X">Quarters of a pitch it stands on along x from where its lower corner lies on a voxel face, 0 to 3.</param>
/// <param name="Y">The same along y.</param>
/// <param name="Z">Quarters of a layer it stands above where its underside lies on one, 0 to 3.</param>
/// <param name="ShiftedLayers">Whether every other layer is shifted by half a pitch.</param>
public sealed record GridPhase(int X, int Y, int Z, bool ShiftedLayers);
