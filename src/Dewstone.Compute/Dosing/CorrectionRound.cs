namespace Dewstone.Compute.Dosing;

/// <summary>One wetting computation in the search for doses.</summary>
/// <param name="Solve">Number of the computation, from 1.</param>
/// <param name="Objective">Misfit and price of water, weighted litres; of the doses as rounded.</param>
/// <param name="BestObjective">Least so far, weighted litres; never rises.</param>
/// <param name="WaterLitres">Water of the doses, L.</param>
public readonly record struct CorrectionRound(int Solve, double Objective, double BestObjective, double WaterLitres);
