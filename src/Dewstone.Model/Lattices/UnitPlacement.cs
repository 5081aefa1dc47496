using Dewstone.Model.Quantities;

namespace Dewstone.Model.Lattices;

/// <summary>Where the unit stands in the printer frame: first turned about the vertical by quarter turns, then moved so that its box's lower corner lies at a point.</summary>
public sealed record UnitPlacement
{
    /// <summary>Quarter turns, counter-clockwise seen from above, 0 to 3.</summary>
    public required int QuarterTurns { get; init; }

    /// <summary>Lower corner of the turned outer box, metres, printer frame.</summary>
    public required Point3 Corner { get; init; }

    /// <summary>Outer box in the unit frame, metres.</summary>
    public required Size3 UnitBox { get; init; }

    /// <summary>Whether every other layer is shifted by half a pitch.</summary>
    public bool ShiftedLayers { get; init; }

    /// <summary>Outer box as turned, metres.</summary>
    public Size3 TurnedBox => (QuarterTurns & 1) == 0 ? UnitBox : new Size3(UnitBox.Y, UnitBox.X, UnitBox.Z);

    /// <summary>A point of the printer frame in the unit frame.</summary>
    /// <param name="printer">Metres, printer frame.</param>
    /// <returns>Metres, unit frame.</returns>
    public Point3 ToUnit(Point3 printer)
    {
        double x = printer.X - Corner.X, y = printer.Y - Corner.Y, z = printer.Z - Corner.Z;
        return QuarterTurns switch
        {
            0 => new Point3(x, y, z),
            1 => new Point3(y, UnitBox.Y - x, z),
            2 => new Point3(UnitBox.X - x, UnitBox.Y - y, z),
            _ => new Point3(UnitBox.X - y, x, z),
        };
    }

    /// <summary>A point of the unit frame in the printer frame.</summary>
    /// <param name="unit">Metres, unit frame.</param>
    /// <returns>Metres, printer frame.</returns>
    public Point3 ToPrinter(Point3 unit)
    {
        Point3 turned = QuarterTurns switch
        {
            0 => unit,
            1 => new Point3(UnitBox.Y - unit.Y, unit.X, unit.Z),
            2 => new Point3(UnitBox.X - unit.X, UnitBox.Y - unit.Y, unit.Z),
            _ => new Point3(unit.Y, UnitBox.X - unit.X, unit.Z),
        };
        return turned + Corner;
    }
}
