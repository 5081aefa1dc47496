namespace Dewstone.Model.Description;

/// <summary>Rule by which strength follows from the mix.</summary>
public enum StrengthRule
{
    /// <summary>Gel/space ratio with the air left in the bed.</summary>
    GelSpaceWithAir,

    /// <summary>Share of cement in cement, water and air.</summary>
    Feret,

    /// <summary>Gel/space ratio without air: for compacted beds only.</summary>
    GelSpace,

    /// <summary>Handbook curve of water/cement: for compacted beds only.</summary>
    HandbookCurve,

    /// <summary>Measured cubes.</summary>
    Measured,
}
