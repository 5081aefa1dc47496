namespace Dewstone.Compute.Calibration;

/// <summary>What to do about a needle before the next print.</summary>
/// <param name="Column">Column in the head, from 1.</param>
/// <param name="Row">Row in the head, from 1.</param>
/// <param name="Clean">True to clean it, false to weigh it again.</param>
/// <param name="Reason">Why, a phrase.</param>
public sealed record NeedleAdvice(int Column, int Row, bool Clean, string Reason);
