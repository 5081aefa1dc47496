using Dewstone.Model.Diagnostics;

namespace Dewstone.Compute.Geometry;

/// <summary>A shape and what was found while it was built.</summary>
/// <param name="Shape">The shape; with an error among the findings it lacks what could not be placed.</param>
/// <param name="Hollows">Scattered hollows as placed, in the order of placing.</param>
/// <param name="Diagnostics">Findings, in the order of the description.</param>
public sealed record ShapeResult(ReefShape Shape, IReadOnlyList<ScatteredHollow> Hollows, IReadOnlyList<Diagnostic> Diagnostics);
