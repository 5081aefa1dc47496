using Dewstone.Model.Diagnostics;
using Dewstone.Model.Quantities;
using Dewstone.Model.Results;

namespace Dewstone.Compute.Inspection;

/// <summary>Places, pieces and keys as the findings of the predicted solid name them.</summary>
internal static class Wording
{
    /// <summary>Pieces named in one finding; more are counted.</summary>
    private const int PiecesNamed = 3;

    /// <summary>A key of what is required.</summary>
    /// <param name="key">Path below <c>require</c>.</param>
    /// <returns>Its path.</returns>
    public static KeyPath Require(string key) => new KeyPath(DescriptionKind.Unit, "require").Key(key);

    /// <summary>A place of the unit frame.</summary>
    /// <param name="point">Metres.</param>
    /// <returns>Whole millimetres.</returns>
    public static string Place(Point3 point) => string.Create(null, $"({point.X * 1e3:0}, {point.Y * 1e3:0}, {point.Z * 1e3:0}) mm");

    /// <summary>A volume.</summary>
    /// <param name="cubicMetres">Cubic metres.</param>
    /// <returns>Litres, or millilitres of less than a tenth of one.</returns>
    public static string Volume(double cubicMetres) =>
        cubicMetres < 1e-4 ? string.Create(null, $"{cubicMetres * 1e6:0.#} mL") : string.Create(null, $"{cubicMetres * 1e3:0.##} L");

    /// <summary>A piece with its mass, size and place.</summary>
    /// <param name="piece">The piece.</param>
    /// <returns>Text such as "0.52 kg, 60 x 50 x 40 mm at (10, 20, 30) mm".</returns>
    public static string Piece(SolidPiece piece) => string.Create(
        null,
        $"{piece.Kilograms:0.###} kg, {piece.Size.X * 1e3:0} x {piece.Size.Y * 1e3:0} x {piece.Size.Z * 1e3:0} mm at {Place(piece.Centre)}");

    /// <summary>Pieces, heaviest first.</summary>
    /// <param name="pieces">The pieces.</param>
    /// <returns>The first few, and how many more there are.</returns>
    public static string Pieces(IReadOnlyList<SolidPiece> pieces) =>
        string.Join("; ", pieces.Take(PiecesNamed).Select(Piece)) + (pieces.Count > PiecesNamed ? $"; and {pieces.Count - PiecesNamed} more" : "");
}
