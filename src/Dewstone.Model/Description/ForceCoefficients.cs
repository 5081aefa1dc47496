namespace Dewstone.Model.Description;

/// <summary>Morison coefficients.</summary>
/// <param name="Drag">Drag, 1.</param>
/// <param name="Inertia">Inertia, 1.</param>
/// <param name="Lift">Lift, 1.</param>
public sealed record ForceCoefficients(double Drag, double Inertia, double Lift);
