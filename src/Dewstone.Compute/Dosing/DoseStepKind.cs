namespace Dewstone.Compute.Dosing;

/// <summary>What a solve tried.</summary>
public enum DoseStepKind
{
    /// <summary>Plain doses: the wanted share of each voxel times one dose.</summary>
    Plain = 0,

    /// <summary>Corrected doses.</summary>
    Corrected = 1,
}
