using System.Text.Json;
using Dewstone.Compute.Sequencing;
using Dewstone.Model.Lattices;
using Dewstone.Model.Quantities;
using Dewstone.Model.Results;

namespace Dewstone.Jobs.Emission.Report;

/// <summary>The plates: plan of a layer and two sections that belong to it, drawn by the page's script from cells it carries.</summary>
internal static class PlatesSection
{
    /// <summary>Writes the part.</summary>
    /// <param name="html">The page.</param>
    /// <param name="subject">The job.</param>
    public static void Write(HtmlWriter html, ReportSubject subject)
    {
        CompiledJob job = subject.Job;
        Lattice lattice = job.Lattice;
        PlateField field = subject.Plates;
        // The unit's first layer is never shifted; the layers below it may be.
        Point3 straight = lattice.Tip(0, 0, lattice.UnderLayers), tip = new(straight.X, straight.Y, lattice.Tip(0, 0, 0).Z);
        Point3 origin = job.Moisture.Grid.Origin, corner = job.Placement.Corner;
        Size3 box = job.Placement.TurnedBox;
        int start = Math.Min(lattice.Layers, lattice.UnderLayers + (lattice.Layers - lattice.UnderLayers) / 3 + 1);
        string geometry = FormattableString.Invariant(
            $"{{\"cells\":[{field.Shape.Nx},{field.Shape.Ny},{field.Shape.Nz}],\"cell\":[{field.Size.Width},{field.Size.Width},{field.Size.Height}],\"origin\":[{origin.X},{origin.Y},{origin.Z}],\"lattice\":[{lattice.Columns},{lattice.Rows},{lattice.Layers}],\"tip\":[{tip.X},{tip.Y},{tip.Z}],\"pitch\":{lattice.PitchMetres},\"layer\":{lattice.LayerMetres},\"under\":{lattice.UnderLayers},\"shifted\":{(lattice.ShiftedLayers ? 1 : 0)},\"corner\":[{corner.X},{corner.Y},{corner.Z}],\"box\":[{box.X},{box.Y},{box.Z}],\"start\":{start}{Units(job)}}}");
        html.Add($"""<figure id="plate" class="plate" tabindex="0" data-geometry="{geometry}">""");
        html.Add($"""<div class="turnpages"><button type="button" data-step="-1">‹ back</button><output class="where">layer {start} of {lattice.Layers}</output><button type="button" data-step="1">next ›</button>""");
        html.Add($"""<form class="choices">""");
        if (!job.Held)
        {
            html.Add($"""<label><input type="radio" name="doses" value="circles" checked="checked" /> doses as circles</label><label><input type="radio" name="doses" value="numbers" /> as numbers, mL</label><label><input type="radio" name="doses" value="none" /> none</label>""");
        }

        html.Add($"</form></div>");
        html.Add($"""<div class="sheets"><canvas class="view-plan" role="img" aria-label="Plan of the layer"></canvas><div><canvas class="view-a" role="img" aria-label="Section A-A, along x"></canvas><canvas class="view-b" role="img" aria-label="Section B-B, along y"></canvas></div></div>""");
        html.Add($"""<p class="about" aria-live="polite"></p><ul class="legend"><li><i class="solid"></i>sets, wanted</li><li><i class="excess"></i>sets, not wanted</li><li><i class="missing"></i>wanted, does not set</li><li><i class="elsewhere"></i>sets elsewhere in the layer, or is still to come</li><li><i class="outline"></i>wanted outline</li>""");
        if (!job.Held)
        {
            html.Add($"""<li><i class="blocked">×</i>needle blocked</li>""");
        }

        html.Add($"</ul>");
        html.Add($"""<div class="contact" role="group" aria-label="All layers, the lowest first">""");
        for (int layer = 1; layer <= lattice.Layers; layer++)
        {
            html.Add($"""<button type="button" class="leaf" data-layer="{layer}"><canvas role="img" aria-label="plan of layer {layer}"></canvas><span aria-hidden="true">{layer}</span></button>""");
        }

        html.Add($"</div>");
        html.Add($"""<figcaption>Plan at the needles' tips, seen from above, and two sections of the same solid. <span class="turn">A click in the plan moves the sections, a click in a section, or on one of the small plans of all layers, goes to that layer; arrow keys turn the pages. </span>{(job.Held ? "The job is held: no doses are shown." : "")}</figcaption>""");
        html.Add($"""<noscript><p>The plates need a script; the folder layers/ holds the same as pictures.</p></noscript></figure>""");
        PackedBytes.Write(html, "plate-field", field.Packed);
        if (!job.Held)
        {
            Stations stations = Stations.Over(job.Description.Printer);
            HeadNeedles needles = HeadNeedles.Of(job.Description.Printer, job.Description.Needles);
            PackedBytes.Write(html, "plate-doses", PackedBytes.Pack(PlateField.Doses(job, (i, j) =>
            {
                StationSeat seat = stations.Seat(lattice, i, j);
                return needles.IsBlocked(seat.Column, seat.Row);
            })));
        }
    }

    // Marks and boxes of a bin's units; nothing for a single unit, whose box is the job's.
    private static string Units(CompiledJob job) => job.Description.Bin.Count == 0 ? "" : $",\"units\":[{string.Join(',', job.Description.Bin.Select(unit =>
        FormattableString.Invariant($"[\"{JsonEncodedText.Encode(unit.Mark)}\",{unit.Placement.Corner.X},{unit.Placement.Corner.Y},{unit.Placement.TurnedBox.X},{unit.Placement.TurnedBox.Y}]")))}]";
}
