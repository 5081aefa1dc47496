namespace Dewstone.Model.Results;

/// <summary>Pieces of hardened mix that do not hang together with the main one by faces of cells.</summary>
/// <param name="Pieces">The pieces, heaviest first, crumbs left out.</param>
/// <param name="Crumbs">Number of crumbs.</param>
/// <param name="CrumbKilograms">Mass of all crumbs, kg.</param>
/// <param name="CrumbCubicMetres">Volume below which a piece is a crumb, cubic metres: what the needle's least dose wets just enough to set.</param>
public sealed record LoosePiecesReport(IReadOnlyList<SolidPiece> Pieces, int Crumbs, double CrumbKilograms, double CrumbCubicMetres);
