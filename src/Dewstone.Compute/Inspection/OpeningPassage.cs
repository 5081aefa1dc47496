using Dewstone.Model.Quantities;
using Dewstone.Model.Results;

namespace Dewstone.Compute.Inspection;

/// <summary>What was measured of an opening.</summary>
/// <param name="Clear">Its clear opening.</param>
/// <param name="Mouths">How many mouths it has.</param>
/// <param name="MouthCentre">Mean place of its mouths' cells, metres, unit frame.</param>
/// <param name="Core">Mean place of its innermost cells, of a tunnel of one end, metres, unit frame.</param>
/// <param name="LowestMetres">Height of its lowest cell that stays loose, metres, unit frame.</param>
internal sealed record OpeningPassage(ClearOpening Clear, int Mouths, Point3 MouthCentre, Point3 Core, double LowestMetres);
