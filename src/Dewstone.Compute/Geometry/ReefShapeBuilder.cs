using Dewstone.Model.Description;
using Dewstone.Model.Diagnostics;

namespace Dewstone.Compute.Geometry;

/// <summary>Turns a reef unit's description into its shape; scattered hollows are placed here.</summary>
/// <remarks>Feature indices of the seeded draws: 0 is the relief, 1 + i is cavity i.</remarks>
public static class ReefShapeBuilder
{
    internal const int ReliefFeature = 0;

    /// <summary>The shape of a unit.</summary>
    /// <param name="unit">The unit.</param>
    /// <returns>Shape, hollows as placed, and findings; a scatter that cannot place its count is an error among them.</returns>
    public static ShapeResult Build(ReefUnit unit)
    {
        ArgumentNullException.ThrowIfNull(unit);
        double blend = Math.Max(unit.Blend.Metres, 0.0);
        DiagnosticBag findings = new();
        OuterBody body = new(unit);
        PartTable keep = new();
        foreach (KeepZone zone in unit.Keep) { AddForm(keep, zone.Form, 0.0); }
        keep.Seal();

        PartTable openings = new();
        List<ShapeOpening> named = [];
        for (int i = 0; i < unit.Tunnels.Count; i++)
        {
            int first = openings.Count;
            TunnelParts.Add(openings, unit.Tunnels[i], unit.OuterBox, blend);
            named.Add(new ShapeOpening(unit.Tunnels[i].Name, i, -1, -1) { FirstPart = first, Parts = openings.Count - first });
        }
        // Formed cavities come before scattered ones whatever the order of the file, so that a scatter keeps its gap to all of them.
        for (int i = 0; i < unit.Cavities.Count; i++)
        {
            if (unit.Cavities[i] is not FormedCavity formed) { continue; }
            named.Add(new ShapeOpening(formed.Name, -1, i, -1) { FirstPart = openings.Count, Parts = 1 });
            AddForm(openings, formed.Form, blend);
        }
        List<ScatteredHollow> hollows = [];
        for (int i = 0; i < unit.Cavities.Count; i++)
        {
            if (unit.Cavities[i] is not ScatteredCavities scatter) { continue; }
            openings.Seal();
            IReadOnlyList<ScatteredHollow> placed = new ScatterPlacer(unit, i, scatter, body, openings, keep).Place();
            for (int number = 0; number < placed.Count; number++)
            {
                named.Add(new ShapeOpening(scatter.Name, -1, i, number) { FirstPart = openings.Count, Parts = 1 });
                openings.AddBall(placed[number].Centre, placed[number].DiameterMetres / 2.0);
            }
            hollows.AddRange(placed);
            if (placed.Count < scatter.Count) { findings.Add(CannotPlace(i, scatter, placed.Count)); }
        }
        openings.Seal();
        return new ShapeResult(new ReefShape(body, openings, keep, blend, unit.OuterBox, named), hollows, findings.Items);
    }

    private static void AddForm(PartTable table, SolidForm form, double blend)
    {
        switch (form)
        {
            case SphereForm sphere: table.AddBall(sphere.Centre, sphere.Diameter.Metres / 2.0); break;
            case EllipsoidForm ellipsoid: table.AddEllipsoid(ellipsoid.Centre, ellipsoid.Size); break;
            case BlockForm block: table.AddBlock(block.Centre, block.Size, block.Rounding.Metres, blend); break;
            default: throw new ArgumentException($"A form of type {form.GetType().Name} has no distance.", nameof(form));
        }
    }

    private static Diagnostic CannotPlace(int cavity, ScatteredCavities scatter, int placed) => ShapeFindings.ScatterCannotPlace.At(
        $"the scatter \"{scatter.Name}\" found room for {placed} of {scatter.Count} hollows in {ScatterPlacer.ThrowsAHollow} throws for the next one",
        "ask for fewer or smaller hollows, a smaller gap, a wider band or more faces, or try another seed",
        new KeyPath(DescriptionKind.Unit, "cavities").Item(cavity).Key("scatter").Key("count"));
}
