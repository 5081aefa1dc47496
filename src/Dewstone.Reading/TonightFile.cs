using Dewstone.Model.Description;

namespace Dewstone.Reading;

/// <summary>A night's file: what was measured, and the printer and needles it was measured on.</summary>
/// <param name="Tonight">What was measured.</param>
/// <param name="Printer">Path of the printer, as written; null when not named.</param>
/// <param name="Needles">Path of the needles file, as written; null when not named.</param>
public sealed record TonightFile(Tonight Tonight, string? Printer, string? Needles);
