namespace Dewstone.Model.Quantities;

/// <summary>A force, held in newtons.</summary>
/// <param name="Newtons">Value in newtons.</param>
public readonly record struct Force(double Newtons);
