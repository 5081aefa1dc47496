namespace Dewstone.Model.Results;

/// <summary>One point of the refuge curve.</summary>
/// <param name="DiameterMetres">Diameter of a ball, m.</param>
/// <param name="CubicMetres">Water within the unit's box that such a ball can reach from outside, m3.</param>
/// <param name="IsSure">Whether the ball is four cells wide or more; smaller ones are not judged by.</param>
public sealed record RefugePoint(double DiameterMetres, double CubicMetres, bool IsSure);
