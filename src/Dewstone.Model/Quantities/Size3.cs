namespace Dewstone.Model.Quantities;

/// <summary>Full edge lengths of an upright box, metres.</summary>
/// <param name="X">Extent along x in metres.</param>
/// <param name="Y">Extent along y in metres.</param>
/// <param name="Z">Extent along z in metres.</param>
public readonly record struct Size3(double X, double Y, double Z)
{
    /// <summary>Volume of the box in cubic metres.</summary>
    public double CubicMetres => X * Y * Z;
}
