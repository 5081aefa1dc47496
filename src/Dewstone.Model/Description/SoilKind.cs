namespace Dewstone.Model.Description;

/// <summary>Kind of seabed.</summary>
public enum SoilKind
{
    /// <summary>Sand.</summary>
    Sand,

    /// <summary>Clay.</summary>
    Clay,
}
