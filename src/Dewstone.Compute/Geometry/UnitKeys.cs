using Dewstone.Model.Description;
using Dewstone.Model.Diagnostics;

namespace Dewstone.Compute.Geometry;

/// <summary>Where the features of a unit stand in its description.</summary>
internal static class UnitKeys
{
    /// <summary>A top key.</summary>
    /// <param name="key">Key name.</param>
    /// <returns>Its path.</returns>
    public static KeyPath Top(string key) => new(DescriptionKind.Unit, key);

    /// <summary>A tunnel.</summary>
    /// <param name="index">Tunnel, from 0.</param>
    /// <returns>Its path.</returns>
    public static KeyPath Tunnel(int index) => Top("tunnels").Item(index);

    /// <summary>A cavity.</summary>
    /// <param name="index">Cavity, from 0.</param>
    /// <returns>Its path.</returns>
    public static KeyPath Cavity(int index) => Top("cavities").Item(index);

    /// <summary>A keep zone.</summary>
    /// <param name="index">Zone, from 0.</param>
    /// <returns>Its path.</returns>
    public static KeyPath Keep(int index) => Top("keep").Item(index);

    /// <summary>The key under which a form stands.</summary>
    /// <param name="form">The form.</param>
    /// <returns><c>sphere</c>, <c>ellipsoid</c> or <c>block</c>.</returns>
    public static string Form(SolidForm form) => form switch { SphereForm => "sphere", EllipsoidForm => "ellipsoid", _ => "block" };

    /// <summary>The key under which a cavity's own values stand.</summary>
    /// <param name="cavity">The cavity.</param>
    /// <returns><c>scatter</c> or the form's key.</returns>
    public static string Kind(Cavity cavity) => cavity is FormedCavity formed ? Form(formed.Form) : "scatter";

    /// <summary>The feature an opening belongs to.</summary>
    /// <param name="opening">The opening.</param>
    /// <returns>Path of its tunnel or cavity.</returns>
    public static KeyPath Of(ShapeOpening opening) => opening.Tunnel >= 0 ? Tunnel(opening.Tunnel) : Cavity(opening.Cavity);

    /// <summary>An opening for a message.</summary>
    /// <param name="opening">The opening.</param>
    /// <returns>Its name in quotes, with the hollow's number when it has one.</returns>
    public static string Says(ShapeOpening opening) =>
        opening.Hollow < 0 ? $"\"{opening.Name}\"" : $"\"{opening.Name}\" (hollow {opening.Hollow + 1})";

    /// <summary>A length for a message.</summary>
    /// <param name="metres">Metres.</param>
    /// <returns>Millimetres to a tenth, with their unit.</returns>
    public static string Millimetres(double metres) => string.Create(null, $"{metres * 1000.0:0.#} mm");
}
