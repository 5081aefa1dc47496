using Dewstone.Model.Diagnostics;

namespace Dewstone.Reading.Quantities;

/// <summary>What is wrong with a text that should hold a value.</summary>
/// <param name="Kind">Entry of the catalogue.</param>
/// <param name="Message">What was found.</param>
/// <param name="Remedy">What would be right.</param>
internal sealed record TextFault(FindingKind Kind, string Message, string Remedy);
