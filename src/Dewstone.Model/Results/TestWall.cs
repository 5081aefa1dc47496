namespace Dewstone.Model.Results;

/// <summary>One wall that was tried.</summary>
/// <param name="DrawnMetres">Thickness as drawn, metres.</param>
/// <param name="LeastSetShare">Of all straight lines through the wall, the least share of the drawn thickness that sets, 0 to 1.</param>
/// <param name="CoreIsSet">Whether all of its middle third sets.</param>
/// <param name="Place">Which place against the needles: 0 with its middle in a plane of needles, 1 midway between planes.</param>
public sealed record TestWall(double DrawnMetres, double LeastSetShare, bool CoreIsSet, int Place)
{
    /// <summary>Least share of the drawn thickness that must set everywhere, 1; chosen, no source.</summary>
    public const double SoundShare = 0.5;

    /// <summary>Whether it holds without a dry pocket: its middle third sets, and on every line through it at least half of its thickness.</summary>
    public bool IsSound => CoreIsSet && LeastSetShare >= SoundShare;
}
