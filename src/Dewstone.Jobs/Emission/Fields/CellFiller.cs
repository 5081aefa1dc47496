namespace Dewstone.Jobs.Emission.Fields;

/// <summary>Fills bytes with the values of cells, in index order.</summary>
/// <param name="first">First cell.</param>
/// <param name="into">Receives the values, little-endian.</param>
internal delegate void CellFiller(int first, Span<byte> into);
