namespace Dewstone.Model.Results;

/// <summary>How far a long computation is.</summary>
/// <param name="Stage">What is being done, e.g. "wetting".</param>
/// <param name="Done">Share done, 0 to 1.</param>
/// <param name="Detail">A figure worth showing; empty when none.</param>
public readonly record struct Progress(string Stage, double Done, string Detail = "");
