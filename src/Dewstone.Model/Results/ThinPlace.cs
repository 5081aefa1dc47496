using Dewstone.Model.Quantities;

namespace Dewstone.Model.Results;

/// <summary>A place thinner than the wall asked for.</summary>
/// <param name="IsNeck">True for a neck that a piece hangs by; false for a part thinner than the wall all over.</param>
/// <param name="ThicknessMetres">Diameter of the largest ball in the neck, or anywhere in the thin part, metres.</param>
/// <param name="Where">The neck, or the thickest place of the thin part, metres, unit frame.</param>
/// <param name="Piece">What hangs by it, or the thin part.</param>
public sealed record ThinPlace(bool IsNeck, double ThicknessMetres, Point3 Where, SolidPiece Piece);
