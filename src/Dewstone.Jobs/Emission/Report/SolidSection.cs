using Dewstone.Jobs.Emission.Pictures.Drawing;
using Dewstone.Jobs.Emission.Pictures.Views;
using Dewstone.Jobs.Emission.Surfaces;
using Dewstone.Model.Quantities;
using Dewstone.Model.Results;
using SixLabors.ImageSharp.PixelFormats;

namespace Dewstone.Jobs.Emission.Report;

/// <summary>The predicted solid to be turned in the hand; a still picture stands there in print and where nothing can be turned.</summary>
internal static class SolidSection
{
    // Bounds go beyond the box by what may harden outside it.
    private const double MarginMetres = 0.2;

    /// <summary>Writes the part.</summary>
    /// <param name="html">The page.</param>
    /// <param name="subject">The job.</param>
    public static void Write(HtmlWriter html, ReportSubject subject)
    {
        CompiledJob job = subject.Job;
        string name = job.Description.Unit.Name;
        Size3 box = job.Placement.UnitBox;
        (PredictedSurface predicted, UnitSurface wanted, UnitSurface voids, _) = subject.Fields!;
        bool[] apart = PiecesApart.Of(predicted.Surface, job.Inspection?.LoosePieces.Pieces ?? []);
        Point3 low = new(-MarginMetres, -MarginMetres, -MarginMetres);
        double span = Math.Max(box.X, Math.Max(box.Y, box.Z)) + 2.0 * MarginMetres;
        double least = job.Moisture.ThresholdContent * job.Moisture.LiquidKilogramsPerCubicMetre / job.Moisture.BinderKilogramsPerCubicMetre;
        const double Band = 0.05;
        double first = Math.Floor(least / Band + 1e-9) * Band;
        int bands = Math.Clamp((int)Math.Ceiling((job.Solid.LargestWaterCement - first) / Band - 1e-9), 2, 12);

        html.Add($"""<figure id="hand" class="hand" data-predicted="{Counts(predicted.Surface)}" data-wanted="{Counts(wanted)}" data-voids="{Counts(voids)}" data-first="{first}" data-band="{Band}" data-bands="{bands}" data-most="{ViewerMesh.MostWaterCement}" data-middle="{Share(box.X / 2.0 - low.X, span)} {Share(box.Y / 2.0 - low.Y, span)} {Share(box.Z / 2.0 - low.Z, span)}" data-reach="{Share(new Point3(box.X, box.Y, box.Z).Norm / 2.0, span)}">""");
        html.Add($"""<canvas tabindex="0" role="img" aria-label="The predicted solid of {name}, to be turned: drag, or arrow keys; plus and minus zoom."></canvas>""");
        html.Raw("<img alt=\"The predicted solid from outside\" src=\"data:image/png;base64,");
        html.Base64(subject.UnitPicture.Span);
        html.Raw("\" />\n");
        html.Add($"""<form class="choices"><label><input type="radio" name="body" value="predicted" checked="checked" /> predicted</label><label><input type="radio" name="body" value="wanted" /> wanted</label><label><input type="radio" name="body" value="voids" /> voids</label>""");
        html.Add($"""<label class="over"><input type="checkbox" name="ghost" /> wanted surface over it</label>""");
        if (apart.Length > 0)
        {
            html.Add($"""<label><input type="checkbox" name="apart" checked="checked" /> pieces apart, striped</label>""");
        }

        html.Add($"""<span class="tints"><label><input type="radio" name="tint" value="deviation" checked="checked" /> deviation</label><label><input type="radio" name="tint" value="water" /> water/cement</label></span></form>""");
        DeviationKey(html);
        WaterKey(html, first, Band, bands);
        html.Add($"<figcaption>{name}, {ReportFigures.Box(box)}: the surface that is predicted to set<span class=\"turn\">, the one wanted, or the voids within, less a skin of half a pitch</span>. <span class=\"turn\">Drag or use the arrow keys to turn it; pinch, plus and minus, or the wheel once it is clicked, to come nearer.</span></figcaption></figure>");
        PackedBytes.Write(html, "predicted-surface", PackedBytes.Pack(ViewerMesh.Pack(predicted, apart, low, span)));
        PackedBytes.Write(html, "wanted-surface", PackedBytes.Pack(ViewerMesh.Pack(wanted, low, span)));
        PackedBytes.Write(html, "voids-surface", PackedBytes.Pack(ViewerMesh.Pack(voids, low, span)));
    }

    private static string Counts(UnitSurface surface) => $"{surface.Corners} {surface.Triangles.Length / 3}";

    private static void DeviationKey(HtmlWriter html)
    {
        string most = $"{DeviationTones.FullMillimetres:0} mm";
        html.Add($"""<svg class="key deviation" viewBox="0 0 480 40" role="img" aria-label="Blue: up to {most} are missing; white: as drawn; orange: up to {most} too much"><defs><linearGradient id="ramp">""");
        html.Add($"""<stop offset="0" class="least" /><stop offset="0.5" stop-color="#ffffff" /><stop offset="1" class="most" /></linearGradient></defs>""");
        html.Add($"""<rect x="60" y="4" width="300" height="12" fill="url(#ramp)" class="edge" /><text x="60" y="32" text-anchor="middle">{most} missing</text><text x="210" y="32" text-anchor="middle">as drawn</text><text x="360" y="32" text-anchor="middle">{most} too much</text></svg>""");
    }

    private static void WaterKey(HtmlWriter html, double first, double band, int bands)
    {
        double width = 300.0 / bands;
        html.Add($"""<svg class="key water" viewBox="0 0 480 40" role="img" aria-label="Water/cement {PredictedSurface.SkinMetres * 1000.0} mm behind the surface, in bands of {band}, the wetter the deeper the blue">""");
        for (int i = 0; i < bands; i++)
        {
            float share = i / (bands - 1f);
            Rgb24 tone = share < 0.5f
                ? Ink.Mix(WaterCementTones.Driest, WaterCementTones.Middle, 2f * share)
                : Ink.Mix(WaterCementTones.Middle, WaterCementTones.Wettest, 2f * share - 1f);
            html.Add($"""<rect x="{60.0 + i * width}" y="4" width="{width}" height="12" fill="{Hex(tone)}" class="edge" /><text x="{60.0 + i * width}" y="32" text-anchor="middle">{$"{first + i * band:0.00}"}</text>""");
        }

        html.Add($"""<text x="366" y="14">water/cement</text></svg>""");
    }

    private static string Share(double metres, double span) => $"{metres / span:0.000000}";

    private static string Hex(Rgb24 ink) => $"#{ink.R:x2}{ink.G:x2}{ink.B:x2}";
}
