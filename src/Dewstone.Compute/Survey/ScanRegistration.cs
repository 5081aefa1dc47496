namespace Dewstone.Compute.Survey;

/// <summary>How a scan lies on a predicted surface.</summary>
/// <param name="Motion">Brings the scan's points to the surface's frame.</param>
/// <param name="RootMeanSquareMetres">Root mean square distance of the pairs kept to their planes, metres.</param>
/// <param name="NearShare">Share of the points whose nearest corner is within 15 mm and what the surface is fine, 0 to 1.</param>
public readonly record struct ScanRegistration(RigidMotion Motion, double RootMeanSquareMetres, double NearShare);
