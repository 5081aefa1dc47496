using Dewstone.Compute.Seabed;
using Dewstone.Compute.Tests.Inspection;
using Dewstone.Model.Lattices;
using Dewstone.Model.Quantities;
using Dewstone.Model.Results;

namespace Dewstone.Compute.Tests.Seabed;

/// <summary>Bodies made of cells of 50 mm, with a margin of two cells.</summary>
internal static class Bodies
{
    public const double Cell = 0.05;

    private const int Margin = 2;

    public static StandingBody Box(double x, double y, double z) => Of(new Size3(x, y, z), _ => true)!;

    /// <summary>The cells of a box whose centres a rule takes, unit frame.</summary>
    public static StandingBody? Of(Size3 box, Func<Point3, bool> isSet, int quarterTurns = 0)
    {
        UnitPlacement placement = new() { QuarterTurns = quarterTurns, Corner = new Point3(Margin * Cell, Margin * Cell, Margin * Cell), UnitBox = box };
        (CellGrid grid, byte[] hardened) = Cells(placement, isSet);
        return BodyMeasure.Of(grid, hardened, placement, new Parallelism(2));
    }

    public static (CellGrid Grid, byte[] Hardened) Cells(UnitPlacement placement, Func<Point3, bool> isSet)
    {
        Size3 turned = placement.TurnedBox, box = placement.UnitBox;
        CellGrid grid = FrontFields.Grid(Count(turned.X), Count(turned.Y), Count(turned.Z), Cell);
        byte[] hardened = new byte[grid.Count];
        for (int i = 0; i < hardened.Length; i++)
        {
            Point3 p = placement.ToUnit(grid.Centre(i % grid.Nx, i / grid.Nx % grid.Ny, i / (grid.Nx * grid.Ny)));
            bool inBox = p.X > 0 && p.X < box.X && p.Y > 0 && p.Y < box.Y && p.Z > 0 && p.Z < box.Z;
            hardened[i] = inBox && isSet(p) ? (byte)1 : (byte)0;
        }

        return (grid, hardened);
    }

    /// <summary>Masses of a body of a saturated density in the given water.</summary>
    public static Estimate Masses(double cubicMetres, double saturated, double fresh, double water) => new()
    {
        SpreadKilograms = 0,
        HardenedDryKilograms = 0,
        ReusableKilograms = 0,
        LostKilograms = 0,
        FreshKilograms = fresh * cubicMetres,
        LiftKilograms = fresh * cubicMetres,
        DryKilograms = 0,
        SaturatedKilograms = saturated * cubicMetres,
        SubmergedKilograms = (saturated - water) * cubicMetres,
        WaterCubicMetres = 0,
        WaterByLayerCubicMetres = [],
        FlushCubicMetres = 0,
        BinderKilograms = 0,
        AdditiveKilograms = [],
        RecycledShare = 0,
        SavingAgainstFilledBox = 0,
        CarbonKilograms = 0,
        Cost = 0,
        Currency = "EUR",
        SetupSeconds = 0,
        PrintSeconds = 0,
        SecondsByAction = [],
    };

    private static int Count(double metres) => (int)Math.Round(metres / Cell) + 2 * Margin;
}
