using Dewstone.Model.Description;

namespace Dewstone.Orders.SitePlans;

/// <summary>Sets units out in rows about an anchor.</summary>
/// <remarks>
/// The rows run along the plan's heading and follow one another to the right of it; the anchor is the middle of the whole. Units stand with +y along the
/// heading, in the order of their list, row by row; the first rows have one unit more when they do not come out even. Between two outer sizes there is
/// the clear distance asked for, along the row and from row to row: a row is as deep as its deepest unit.
/// </remarks>
public static class SiteLayout
{
    /// <summary>Decimals of a degree that positions are given to: about a millimetre, so that the clear distance asked for stays.</summary>
    public const int Decimals = 8;

    /// <summary>Sets the units out.</summary>
    /// <param name="plan">Anchor, heading, spacing, rows.</param>
    /// <param name="units">The units, in the order of their list.</param>
    /// <returns>As many places, row by row.</returns>
    public static IReadOnlyList<StandingUnit> Arrange(SitePlan plan, IReadOnlyList<SeaUnit> units)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(units);
        AnchorFrame frame = new(new GeographicPosition(plan.AnchorLatitudeDegrees, plan.AnchorLongitudeDegrees));
        List<SeaUnit[]> rows = Rows(units, plan.Rows);
        double spacing = plan.Spacing.Metres;
        double across = -0.5 * (rows.Sum(Depth) + spacing * Math.Max(0, rows.Count - 1));
        List<StandingUnit> standing = new(units.Count);
        for (int row = 0; row < rows.Count; row++)
        {
            double along = -0.5 * (rows[row].Sum(unit => unit.Size.Y) + spacing * (rows[row].Length - 1));
            double middle = across + 0.5 * Depth(rows[row]);
            for (int place = 0; place < rows[row].Length; place++)
            {
                SeaUnit unit = rows[row][place];
                standing.Add(Stand(frame, plan.Heading.Degrees, unit, (row + 1, place + 1), (middle, along + 0.5 * unit.Size.Y)));
                along += unit.Size.Y + spacing;
            }

            across += Depth(rows[row]) + spacing;
        }

        return standing;
    }

    private static double Depth(SeaUnit[] row) => row.Max(unit => unit.Size.X);

    private static List<SeaUnit[]> Rows(IReadOnlyList<SeaUnit> units, int asked)
    {
        List<SeaUnit[]> rows = [];
        int taken = 0;
        for (int row = 0; row < asked && taken < units.Count; row++)
        {
            int count = units.Count / asked + (row < units.Count % asked ? 1 : 0);
            rows.Add([.. units.Skip(taken).Take(count)]);
            taken += count;
        }

        return rows;
    }

    private static StandingUnit Stand(AnchorFrame frame, double heading, SeaUnit unit, (int Row, int Place) at, (double Right, double Ahead) middle)
    {
        double x = 0.5 * unit.Size.X, y = 0.5 * unit.Size.Y;
        (double Right, double Ahead)[] corners = [(-x, -y), (x, -y), (x, y), (-x, y)];
        return new StandingUnit
        {
            Unit = unit,
            Row = at.Row,
            Place = at.Place,
            HeadingDegrees = heading,
            Middle = Ground(heading, middle),
            Position = Rounded(frame.Position(Ground(heading, middle))),
            Corners = [.. corners.Select(corner => Rounded(frame.Position(Ground(heading, (middle.Right + corner.Right, middle.Ahead + corner.Ahead)))))],
        };
    }

    private static GroundPoint Ground(double headingDegrees, (double Right, double Ahead) at)
    {
        (double sine, double cosine) = Math.SinCos(headingDegrees * Math.PI / 180.0);
        return new GroundPoint(at.Ahead * sine + at.Right * cosine, at.Ahead * cosine - at.Right * sine);
    }

    private static GeographicPosition Rounded(GeographicPosition position) =>
        new(Math.Round(position.LatitudeDegrees, Decimals), Math.Round(position.LongitudeDegrees, Decimals));
}
