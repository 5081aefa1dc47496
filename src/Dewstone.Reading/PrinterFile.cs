using Dewstone.Model.Description;

namespace Dewstone.Reading;

/// <summary>A printer's file: the printer and the needles file it names.</summary>
/// <param name="Printer">The printer.</param>
/// <param name="Needles">Path of the needles file, as written; null when not named.</param>
public sealed record PrinterFile(Printer Printer, string? Needles);
