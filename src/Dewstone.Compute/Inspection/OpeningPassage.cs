using Dewstone.Model.Quantities;
using Dewstone.Model.Results;

namespace Dewstone.Compute.Inspection;

/// <summary>What was measured of an opening.</summary>
/// <param name="Clear">Its clear opening.</param>
/// <param name="Opening">Index among the shape's openings.</param>
/// <param name="Mouths">How many mouths it has.</param>
/// <param name="MouthCentre">Mean place of its mouths' cells, metres, unit frame.</param>
/// <param name="Core">Mean place of its innermost cells, metres, unit frame; of a tunnel the same as the mouths'.</param>
internal sealed record OpeningPassage(ClearOpening Clear, int Opening, int Mouths, Point3 MouthCentre, Point3 Core);
