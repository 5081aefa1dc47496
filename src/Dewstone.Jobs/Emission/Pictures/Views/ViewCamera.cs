using System.Numerics;
using Dewstone.Model.Lattices;
using Dewstone.Model.Quantities;
using Dewstone.Model.Results;

namespace Dewstone.Jobs.Emission.Pictures.Views;

/// <summary>An orthographic camera over the cell grid. Lengths are horizontal cell edges, from the grid's lower corner; z is stretched when cells are no cubes.</summary>
internal sealed class ViewCamera
{
    private readonly float left;
    private readonly float top;
    private readonly Vector3 right;
    private readonly Vector3 down;
    private readonly Vector3 centre;

    /// <summary>A camera that sees the whole outer box.</summary>
    /// <param name="job">The job.</param>
    /// <param name="azimuthDegrees">Where the viewer stands, from the unit's south towards its east, degrees.</param>
    /// <param name="elevationDegrees">How high the viewer stands above the horizon, degrees, above 0.</param>
    /// <param name="width">Pixels across.</param>
    /// <param name="height">Pixels down.</param>
    /// <param name="border">Room left free on all sides, pixels.</param>
    /// <param name="foot">More room left free at the foot, pixels.</param>
    public ViewCamera(PredictedJob job, double azimuthDegrees, double elevationDegrees, int width, int height, int border, int foot)
    {
        CellGrid grid = job.Moisture.Grid;
        Width = width;
        Height = height;
        double azimuth = azimuthDegrees * Math.PI / 180.0, elevation = elevationDegrees * Math.PI / 180.0;
        Vector3 viewer = Turned(job.Placement, Math.Sin(azimuth) * Math.Cos(elevation), -Math.Cos(azimuth) * Math.Cos(elevation), Math.Sin(elevation));
        Forward = -viewer;
        right = Turned(job.Placement, Math.Cos(azimuth), Math.Sin(azimuth), 0.0);
        down = Vector3.Cross(Forward, right);
        (Vector3 low, Vector3 high) = BoxOf(grid, job.Placement);
        (BoxLow, BoxHigh) = (low, high);
        centre = (low + high) / 2f;
        Vector3 half = (high - low) / 2f;
        float spanX = 2f * Vector3.Dot(Vector3.Abs(right), half), spanY = 2f * Vector3.Dot(Vector3.Abs(down), half);
        PixelsPerCell = Math.Min((width - 2 * border) / spanX, (height - 2 * border - foot) / spanY);
        left = width / 2f;
        top = (height - foot) / 2f;
        PixelsPerMetre = PixelsPerCell / grid.CellMetres;
    }

    /// <summary>Pixels across.</summary>
    public int Width { get; }

    /// <summary>Pixels down.</summary>
    public int Height { get; }

    /// <summary>Direction of sight, length 1.</summary>
    public Vector3 Forward { get; }

    /// <summary>To the right in the picture, length 1.</summary>
    public Vector3 Right => right;

    /// <summary>Scale, pixels a cell.</summary>
    public float PixelsPerCell { get; }

    /// <summary>Scale, pixels a metre.</summary>
    public double PixelsPerMetre { get; }

    /// <summary>Lower corner of the outer box, cells.</summary>
    public Vector3 BoxLow { get; }

    /// <summary>Upper corner of the outer box, cells.</summary>
    public Vector3 BoxHigh { get; }

    /// <summary>The outer box of a unit.</summary>
    /// <param name="grid">The cells.</param>
    /// <param name="placement">Where the unit stands.</param>
    /// <returns>Its lower and upper corner, cells.</returns>
    public static (Vector3 Low, Vector3 High) BoxOf(CellGrid grid, UnitPlacement placement)
    {
        Size3 box = placement.TurnedBox;
        return (ToCells(grid, placement.Corner), ToCells(grid, placement.Corner + new Point3(box.X, box.Y, box.Z)));
    }

    /// <summary>A point of the sight line through a point of the picture.</summary>
    /// <param name="x">Pixels across.</param>
    /// <param name="y">Pixels down.</param>
    /// <returns>The point in the plane through the box's middle, cells.</returns>
    public Vector3 Through(float x, float y) => centre + (x - left) / PixelsPerCell * right + (y - top) / PixelsPerCell * down;

    /// <summary>Where a point appears.</summary>
    /// <param name="point">The point, cells.</param>
    /// <returns>Pixels across and down.</returns>
    public (float X, float Y) Seen(Vector3 point)
    {
        Vector3 from = point - centre;
        return (left + Vector3.Dot(from, right) * PixelsPerCell, top + Vector3.Dot(from, down) * PixelsPerCell);
    }

    /// <summary>How far along the sight line a point lies.</summary>
    /// <param name="point">The point, cells.</param>
    /// <returns>Cells beyond the plane through the box's middle.</returns>
    public float Depth(Vector3 point) => Vector3.Dot(point - centre, Forward);

    /// <summary>A direction of the unit frame in the grid's.</summary>
    /// <param name="placement">How the unit is turned.</param>
    /// <param name="x">East.</param>
    /// <param name="y">North.</param>
    /// <param name="z">Up.</param>
    /// <returns>The direction.</returns>
    public static Vector3 Turned(UnitPlacement placement, double x, double y, double z)
    {
        Point3 turned = placement.ToPrinter(new Point3(x, y, z)) - placement.ToPrinter(new Point3(0, 0, 0));
        return new Vector3((float)turned.X, (float)turned.Y, (float)turned.Z);
    }

    private static Vector3 ToCells(CellGrid grid, Point3 printer) => new(
        (float)((printer.X - grid.Origin.X) / grid.CellMetres), (float)((printer.Y - grid.Origin.Y) / grid.CellMetres),
        (float)((printer.Z - grid.Origin.Z) / grid.CellMetres));
}
