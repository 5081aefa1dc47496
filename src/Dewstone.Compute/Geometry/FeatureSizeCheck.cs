using Dewstone.Model.Description;
using Dewstone.Model.Diagnostics;
using Dewstone.Model.Quantities;

namespace Dewstone.Compute.Geometry;

/// <summary>Finds features smaller than a voxel, and clear openings larger than the opening.</summary>
internal sealed class FeatureSizeCheck
{
    private readonly double pitch;
    private readonly double layer;
    private readonly DiagnosticBag findings;

    private FeatureSizeCheck(double pitch, double layer, DiagnosticBag findings)
    {
        this.pitch = pitch;
        this.layer = layer;
        this.findings = findings;
    }

    private double Either => Math.Max(pitch, layer);

    /// <summary>Checks the sizes.</summary>
    /// <param name="unit">The description.</param>
    /// <param name="pitch">Distance between needle positions, metres.</param>
    /// <param name="layer">Layer height, metres.</param>
    /// <param name="findings">Where findings go.</param>
    public static void Check(ReefUnit unit, double pitch, double layer, DiagnosticBag findings)
    {
        FeatureSizeCheck check = new(pitch, layer, findings);
        check.Size("the outer box", unit.OuterBox, UnitKeys.Top("box"));
        for (int i = 0; i < unit.Tunnels.Count; i++) { check.Tunnel(unit.Tunnels[i], UnitKeys.Tunnel(i)); }
        for (int i = 0; i < unit.Cavities.Count; i++) { check.Cavity(unit.Cavities[i], UnitKeys.Cavity(i)); }
        for (int i = 0; i < unit.Keep.Count; i++) { check.Form($"the keep zone \"{unit.Keep[i].Name}\"", unit.Keep[i].Form, UnitKeys.Keep(i)); }
    }

    private void Tunnel(Tunnel tunnel, KeyPath key)
    {
        string says = $"the tunnel \"{tunnel.Name}\"";
        KeyPath section = key.Key("section");
        bool upright = tunnel is AxisTunnel { Along: Axis.Z };
        double narrowest = Narrowest(tunnel.Section);
        if (tunnel.Section is RoundSection)
        {
            Least(says, "diameter", narrowest, upright ? pitch : Either, section.Key("diameter"));
        }
        else if (tunnel.Section is RectangularSection r)
        {
            Least(says, "width", r.Width.Metres, pitch, section.Key("width"));
            double height = upright ? pitch : tunnel is AxisTunnel ? layer : Either;
            Least(says, "height", r.Height.Metres, height, section.Key("height"));
        }
        Clear(says, tunnel.Clear, narrowest, key);
    }

    private void Cavity(Cavity cavity, KeyPath key)
    {
        string says = $"the cavity \"{cavity.Name}\"";
        if (cavity is FormedCavity formed)
        {
            Form(says, formed.Form, key);
            Clear(says, cavity.Clear, Narrowest(formed.Form), key);
        }
        else if (cavity is ScatteredCavities scatter)
        {
            Least($"the scatter \"{cavity.Name}\"",
                "least diameter", scatter.LeastDiameter.Metres, Either, key.Key("scatter").Key("diameter"));
            Clear(says, cavity.Clear, scatter.LeastDiameter.Metres, key);
        }
    }

    private void Form(string says, SolidForm form, KeyPath key)
    {
        KeyPath own = key.Key(UnitKeys.Form(form));
        switch (form)
        {
            case SphereForm sphere: Least(says, "diameter", sphere.Diameter.Metres, Either, own.Key("diameter")); break;
            case EllipsoidForm ellipsoid: Size(says, ellipsoid.Size, own.Key("size")); break;
            case BlockForm block: Size(says, block.Size, own.Key("size")); break;
        }
    }

    /// <summary>Narrowest measure of a section.</summary>
    /// <param name="section">The section.</param>
    /// <returns>Metres.</returns>
    public static double Narrowest(Section section) => section switch
    {
        RoundSection round => round.Diameter.Metres,
        RectangularSection r => Math.Min(r.Width.Metres, r.Height.Metres),
        _ => double.PositiveInfinity,
    };

    /// <summary>Narrowest measure of a form.</summary>
    /// <param name="form">The form.</param>
    /// <returns>Metres.</returns>
    public static double Narrowest(SolidForm form) => form switch
    {
        SphereForm sphere => sphere.Diameter.Metres,
        EllipsoidForm e => Math.Min(e.Size.X, Math.Min(e.Size.Y, e.Size.Z)),
        BlockForm b => Math.Min(b.Size.X, Math.Min(b.Size.Y, b.Size.Z)),
        _ => double.PositiveInfinity,
    };

    private void Size(string says, Size3 size, KeyPath key)
    {
        Least(says, "length along x", size.X, pitch, key);
        Least(says, "length along y", size.Y, pitch, key);
        Least(says, "height", size.Z, layer, key);
    }

    private void Least(string says, string what, double metres, double least, KeyPath key)
    {
        // A micrometre, the grain of lengths in files, keeps "as wide as a pitch" from failing by rounding.
        if (metres >= least - 1e-6) { return; }
        findings.Add(ShapeFindings.UnderOnePitch.At(
            $"{says} has a {what} of {UnitKeys.Millimetres(metres)}, less than a voxel of this printer ({UnitKeys.Millimetres(least)})",
            $"make it at least {UnitKeys.Millimetres(least)}, better twice that, or use a printer with a finer grid",
            key));
    }

    private void Clear(string says, Length? clear, double narrowest, KeyPath key)
    {
        if (clear is not Length ball || ball.Metres <= narrowest + 1e-6) { return; }
        findings.Add(ShapeFindings.ClearLargerThanOpening.At(
            $"{says} is {UnitKeys.Millimetres(narrowest)} at its narrowest, so a ball of {UnitKeys.Millimetres(ball.Metres)} cannot pass",
            "widen the opening or ask for a smaller ball",
            key.Key("clear")));
    }
}
