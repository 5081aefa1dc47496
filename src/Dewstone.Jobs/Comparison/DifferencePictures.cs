using System.Globalization;
using Dewstone.Jobs.Emission;
using Dewstone.Jobs.Emission.Pictures;
using Dewstone.Jobs.Emission.Pictures.Drawing;
using Dewstone.Model.Quantities;
using SixLabors.ImageSharp.PixelFormats;

namespace Dewstone.Jobs.Comparison;

/// <summary>Pictures of what changed, height by height: the older solid, the newer one, and the two laid over each other, seen from above, north up.</summary>
public static class DifferencePictures
{
    private const int MostPictures = 6;
    private const int PanelPixels = 420;
    private const int Border = 24;
    private const int Head = 56;
    private const int Foot = 44;

    /// <summary>Draws the heights at which the predicted solid changed most.</summary>
    /// <param name="difference">What differs.</param>
    /// <returns>PNG files, largest change first; none when no cell differs.</returns>
    public static IReadOnlyList<EmittedFile> Draw(JobDifference difference)
    {
        ArgumentNullException.ThrowIfNull(difference);
        return
        [
            .. difference.Predicted.Slabs.OrderByDescending(s => s.AddedLitres + s.RemovedLitres).ThenBy(s => s.FromMetres).Take(MostPictures)
                .Select((slab, rank) => Draw(difference, slab, rank + 1)),
        ];
    }

    private static EmittedFile Draw(JobDifference difference, SlabChange slab, int rank)
    {
        (int width, int height) = (4 * Border + 3 * PanelPixels, Head + PanelPixels + Foot + Border);
        Canvas canvas = new(width, height);
        double z = (slab.FromMetres + slab.ToMetres) / 2.0;
        string at = string.Create(CultureInfo.InvariantCulture, $"{slab.FromMetres * 1000.0:0} to {slab.ToMetres * 1000.0:0} mm above the unit's foot, cut at {z * 1000.0:0} mm");
        Lettering.Large.Write(canvas, at, Border, 34f, Ink.Line);
        Panel(canvas, 0, "older", (was, _) => was ? Ink.Solid : null, difference, z);
        Panel(canvas, 1, "newer", (_, isNow) => isNow ? Ink.Solid : null, difference, z);
        string litres = string.Create(CultureInfo.InvariantCulture, $"{slab.AddedLitres:0.00} L added (orange), {slab.RemovedLitres:0.00} L removed (blue)");
        Panel(canvas, 2, litres, (was, isNow) => (was, isNow) switch { (true, true) => Ink.SolidElsewhere, (false, true) => Ink.Excess, (true, false) => Ink.Missing, _ => null }, difference, z);
        return new EmittedFile(string.Create(CultureInfo.InvariantCulture, $"change-{rank:00}-at-{z * 1000.0:0}-mm.png"), PngFile.Write(canvas));
    }

    private static void Panel(Canvas canvas, int panel, string caption, Func<bool, bool, Rgb24?> ink, JobDifference difference, double z)
    {
        int left = Border + panel * (PanelPixels + Border), top = Head;
        Size3 a = difference.Old.Placement.UnitBox, b = difference.New.Placement.UnitBox;
        double margin = difference.New.Lattice.PitchMetres / 2.0, across = Math.Max(Math.Max(a.X, b.X), Math.Max(a.Y, b.Y)) + 2.0 * margin;
        for (int y = 0; y < PanelPixels; y++)
        {
            for (int x = 0; x < PanelPixels; x++)
            {
                Point3 at = new((x + 0.5) / PanelPixels * across - margin, (PanelPixels - y - 0.5) / PanelPixels * across - margin, z);
                if (ink(Hardens(difference.Old, at), Hardens(difference.New, at)) is { } colour)
                {
                    canvas.Touch(left + x, top + y, colour, 1f);
                }
            }
        }

        canvas.Frame(left, top, PanelPixels, PanelPixels, 1, Ink.Line);
        Lettering.Plain.Write(canvas, caption, left, top + PanelPixels + 24f, Ink.Line);
    }

    private static bool Hardens(ComparedJob job, Point3 unit) => job.CellAt(unit) is var cell and >= 0 && job.Hardened[cell] != 0;
}
