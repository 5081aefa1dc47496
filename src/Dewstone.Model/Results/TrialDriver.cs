namespace Dewstone.Model.Results;

/// <summary>The input that a requirement's margin follows most.</summary>
/// <param name="Input">Name of the input.</param>
/// <param name="RankCorrelation">Spearman's rank correlation of input and margin, -1 to 1; below 0 when more of it leaves less room.</param>
public sealed record TrialDriver(string Input, double RankCorrelation);
