using Dewstone.Model.Results;

namespace Dewstone.Compute.Strength;

/// <summary>Load cases in words, as findings and report name them.</summary>
public static class LoadCaseWords
{
    /// <summary>A load case in words.</summary>
    /// <param name="held">The case.</param>
    /// <returns>Words without a capital.</returns>
    public static string Of(LoadCase held) => held switch
    {
        LoadCase.Lifted => "lifted",
        LoadCase.OnWestAndEastEdges => "standing on its west and east edges",
        LoadCase.OnSouthAndNorthEdges => "standing on its south and north edges",
        _ => "with one like it on top",
    };
}
