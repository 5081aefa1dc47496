namespace Dewstone.Model.Results;

/// <summary>The wave of one period that just moves the unit.</summary>
/// <param name="PeriodSeconds">Period, s.</param>
/// <param name="LowMetres">Its height at low water, m; null when no wave that can stand there moves it.</param>
/// <param name="LowLimitMetres">Greatest height of an unbroken wave at low water, m.</param>
/// <param name="HighMetres">Its height at high water, m; null when none does.</param>
/// <param name="HighLimitMetres">Greatest height of an unbroken wave at high water, m.</param>
public sealed record StormPoint(double PeriodSeconds, double? LowMetres, double LowLimitMetres, double? HighMetres, double HighLimitMetres);
