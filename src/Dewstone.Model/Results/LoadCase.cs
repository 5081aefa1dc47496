namespace Dewstone.Model.Results;

/// <summary>How a unit is held when its tension is judged.</summary>
public enum LoadCase
{
    /// <summary>Hanging as its file says, with the dynamic factor.</summary>
    Lifted,

    /// <summary>Standing on its west and east edges.</summary>
    OnWestAndEastEdges,

    /// <summary>Standing on its south and north edges.</summary>
    OnSouthAndNorthEdges,

    /// <summary>Standing flat with one like it on top.</summary>
    Stacked,
}
