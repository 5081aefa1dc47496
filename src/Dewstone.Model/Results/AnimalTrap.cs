using Dewstone.Model.Diagnostics;
using Dewstone.Model.Quantities;

namespace Dewstone.Model.Results;

/// <summary>A hollow that an animal may drop into and not get out of.</summary>
/// <param name="Name">Name of the cavity.</param>
/// <param name="Key">Where it stands in the description.</param>
/// <param name="ClearMetres">Predicted clear opening of its only mouth, metres.</param>
/// <param name="DropMetres">From its mouth down to its bottom, metres.</param>
/// <param name="Where">The mouth, metres, unit frame.</param>
public sealed record AnimalTrap(string Name, KeyPath Key, double ClearMetres, double DropMetres, Point3 Where);
