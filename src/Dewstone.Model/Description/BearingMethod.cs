namespace Dewstone.Model.Description;

/// <summary>By which method it is judged whether sand bears a unit.</summary>
public enum BearingMethod
{
    /// <summary>By the one that gives least.</summary>
    Least,

    /// <summary>Terzaghi, 1943.</summary>
    Terzaghi,

    /// <summary>Meyerhof, 1963.</summary>
    Meyerhof,

    /// <summary>Vesic, 1973.</summary>
    Vesic,
}
