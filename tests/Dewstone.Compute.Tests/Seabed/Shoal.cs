using Dewstone.Compute.Seabed;
using Dewstone.Model.Description;
using Dewstone.Model.Lattices;
using Dewstone.Model.Quantities;

namespace Dewstone.Compute.Tests.Seabed;

/// <summary>Units of plain shape stood at an invented shoal.</summary>
internal static class Shoal
{
    public static Site Site { get; } = Samples.WracklineShoal() with
    {
        Current = new SeaCurrent(new Speed(0.6), new Angle(90)),
        Seabed = new SeabedSoil
        {
            Soil = SoilKind.Sand,
            Friction = 0.55,
            FrictionAngle = new Angle(30),
            EffectiveWeight = new UnitWeight(8500),
            Grain = new Length(0.002),
        },
    };

    public static Site Clay(double pascals) => Site with
    {
        Seabed = new SeabedSoil { Soil = SoilKind.Clay, Friction = 0.35, UndrainedStrength = new Pressure(pascals), EffectiveWeight = new UnitWeight(6000) },
    };

    /// <summary>Stands a body of saturated and fresh densities at a site.</summary>
    public static SeabedResult Stand(Site site, Size3 box, Func<Point3, bool>? isSet = null, double saturated = 2150, double fresh = 1850)
    {
        UnitPlacement placement = new() { QuarterTurns = 0, Corner = new Point3(0.1, 0.1, 0.1), UnitBox = box };
        (CellGrid grid, byte[] hardened) = Bodies.Cells(placement, isSet ?? (_ => true));
        double volume = hardened.Count(cell => cell != 0) * grid.CellCubicMetres;
        double water = Dewstone.Compute.Numerics.SeaWater.KilogramsPerCubicMetre(site.Water.Salinity, site.Water.Temperature.Celsius);
        return SeabedSolver.Solve(
            Samples.Job(Samples.Box(box.X, box.Y, box.Z)) with { Site = site }, grid, hardened, placement, Bodies.Masses(volume, saturated, fresh, water), new(2));
    }
}
