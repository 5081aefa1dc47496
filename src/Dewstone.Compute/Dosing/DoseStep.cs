namespace Dewstone.Compute.Dosing;

/// <summary>One solve on the way to the doses.</summary>
/// <param name="Solve">Number, from 1.</param>
/// <param name="CellsPerPitch">Cells a pitch it was solved on; objectives of different cells do not compare.</param>
/// <param name="Objective">Objective of <see cref="CorrectionRule"/>, litres, of the doses as rounded.</param>
/// <param name="WaterMillilitres">Water of the doses, mL.</param>
/// <param name="Kind">What was tried.</param>
public sealed record DoseStep(int Solve, int CellsPerPitch, double Objective, double WaterMillilitres, DoseStepKind Kind);
