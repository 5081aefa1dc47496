namespace Dewstone.Model.Results;

/// <summary>What keeps the dose of a full voxel from rising further.</summary>
public enum DoseCeiling
{
    /// <summary>The greatest water/cement allowed.</summary>
    WaterCement,

    /// <summary>The most a needle gives.</summary>
    Needle,

    /// <summary>The pores of a voxel.</summary>
    Pores,
}
