using Dewstone.Model.Diagnostics;
using Dewstone.Model.Quantities;

namespace Dewstone.Model.Results;

/// <summary>A zone that has to be hardened throughout: a keep zone or a lifting place.</summary>
/// <param name="Name">What it is, for people.</param>
/// <param name="Key">Where it stands in the description.</param>
/// <param name="IsLifting">Whether the unit hangs by it.</param>
/// <param name="UnsetShare">Share of the wanted solid in it, deeper than 20 mm below the wanted surface, that stays loose, 0 to 1.</param>
/// <param name="UnsetCubicMetres">That volume, cubic metres.</param>
/// <param name="Where">Mean place of what stays loose, metres, unit frame; null when nothing does.</param>
public sealed record SoundZone(string Name, KeyPath Key, bool IsLifting, double UnsetShare, double UnsetCubicMetres, Point3? Where);
