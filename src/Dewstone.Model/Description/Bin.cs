using Dewstone.Model.Quantities;

namespace Dewstone.Model.Description;

/// <summary>The container that holds the print bed.</summary>
/// <param name="SizeX">Inner size along x.</param>
/// <param name="SizeY">Inner size along y.</param>
/// <param name="Height">Inner height.</param>
public sealed record Bin(Length SizeX, Length SizeY, Length Height);
