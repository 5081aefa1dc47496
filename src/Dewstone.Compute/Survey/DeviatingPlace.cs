using Dewstone.Model.Quantities;

namespace Dewstone.Compute.Survey;

/// <summary>A place at which a scan differs from the prediction.</summary>
/// <param name="Where">Middle of its points, metres, frame of the surface.</param>
/// <param name="MeanMetres">Mean deviation of its points, metres; above 0 where there is too much.</param>
/// <param name="Points">Points that deviate.</param>
public readonly record struct DeviatingPlace(Point3 Where, double MeanMetres, int Points);
