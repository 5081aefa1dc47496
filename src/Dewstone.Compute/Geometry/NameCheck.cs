using Dewstone.Model.Description;
using Dewstone.Model.Diagnostics;

namespace Dewstone.Compute.Geometry;

/// <summary>Finds names used twice among openings and among keep zones.</summary>
internal static class NameCheck
{
    /// <summary>Checks the names.</summary>
    /// <param name="unit">The description.</param>
    /// <param name="findings">Where findings go.</param>
    public static void Check(ReefUnit unit, DiagnosticBag findings)
    {
        Dictionary<string, KeyPath> openings = new(StringComparer.Ordinal), zones = new(StringComparer.Ordinal);
        for (int i = 0; i < unit.Tunnels.Count; i++) { Take(openings, unit.Tunnels[i].Name, UnitKeys.Tunnel(i), findings); }
        for (int i = 0; i < unit.Cavities.Count; i++) { Take(openings, unit.Cavities[i].Name, UnitKeys.Cavity(i), findings); }
        for (int i = 0; i < unit.Keep.Count; i++) { Take(zones, unit.Keep[i].Name, UnitKeys.Keep(i), findings); }
    }

    private static void Take(Dictionary<string, KeyPath> taken, string name, KeyPath key, DiagnosticBag findings)
    {
        if (taken.TryAdd(name, key)) { return; }
        findings.Add(
            ShapeFindings.NameTwice.At($"the name \"{name}\" is taken already", "give each opening and each keep zone its own name", key.Key("name")) with
            {
                Related = [new RelatedPlace(null, taken[name].Key("name"), "the first of that name")],
            });
    }
}
