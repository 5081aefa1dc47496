using Dewstone.Model.Description;

namespace Dewstone.Reading;

/// <summary>A mix on a printer, without a unit.</summary>
/// <param name="Mix">The mix.</param>
/// <param name="Printer">The printer.</param>
/// <param name="Needles">Its needles; null when no needles file is named.</param>
/// <param name="Tonight">The night; null when none is named.</param>
public sealed record MixOnPrinter(DryMix Mix, Printer Printer, NeedleTable? Needles, Tonight? Tonight);
