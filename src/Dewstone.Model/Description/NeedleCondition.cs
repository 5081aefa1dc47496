namespace Dewstone.Model.Description;

/// <summary>Whether a needle can be used.</summary>
public enum NeedleCondition
{
    /// <summary>Works.</summary>
    Ok,

    /// <summary>Gives no water.</summary>
    Blocked,

    /// <summary>Works with reduced flow or accuracy.</summary>
    Limited,
}
