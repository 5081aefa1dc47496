using Dewstone.Model.Description;
using Dewstone.Model.Quantities;

namespace Dewstone.Compute.Geometry;

/// <summary>A ball placed by a scatter.</summary>
/// <param name="Cavity">Index of its scatter among the unit's cavities.</param>
/// <param name="Centre">Centre, metres, unit frame.</param>
/// <param name="DiameterMetres">Diameter, metres.</param>
/// <param name="Face">Face it opens to; none when it lies inside.</param>
/// <param name="Throw">Number of the throw that placed it, from 0, counted through the scatter.</param>
public sealed record ScatteredHollow(int Cavity, Point3 Centre, double DiameterMetres, FaceSet Face, int Throw);
