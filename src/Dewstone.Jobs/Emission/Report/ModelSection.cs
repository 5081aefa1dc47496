using Dewstone.Jobs.Emission.Json;
using Dewstone.Model.Description;
using Dewstone.Model.Lattices;
using Dewstone.Model.Results;

namespace Dewstone.Jobs.Emission.Report;

/// <summary>With which constants the report was computed, where they come from, and what not to lean on.</summary>
internal static class ModelSection
{
    /// <summary>Writes the part.</summary>
    /// <param name="html">The page.</param>
    /// <param name="subject">The job.</param>
    public static void Write(HtmlWriter html, ReportSubject subject)
    {
        CompiledJob job = subject.Job;
        DryMix mix = job.Description.Mix;
        MoistureResult moisture = job.Moisture;
        CellGrid grid = moisture.Grid;
        string origin = Origin(mix.Origin);
        bool assumed = mix.Origin.Kind != MixOriginKind.Calibration;
        html.Add($"<p>Everything here comes from a model: water spreads through the dry bed as moisture does in soil, with a diffusivity that rises steeply with saturation; it stands still when the window closes, and mix sets where water/cement reaches a threshold. No deviation, opening or mass on this page was measured on a unit.</p>");
        if (assumed)
        {
            html.Add($"<p><strong>Diffusivity and threshold of this mix are {origin}, not measured.</strong> Print and cut a few test doses from the same mix and calibrate before leaning on millimetres.</p>");
        }

        ReportTable.Write(html, "Constants", ["constant", "#value", "from"],
        [
            ["diffusivity at saturation", $"{mix.Wetting.AtSaturation.SquareMetresPerSecond * 1e6:0.###} mm²/s", origin],
            [$"exponent of the {MixJson.LawName(mix.Wetting)} law", $"{mix.Wetting.Exponent}", origin],
            ["residual water content", ReportFigures.Ratio(mix.Wetting.Residual), origin],
            ["water/cement at which it sets", ReportFigures.Ratio(mix.Hardening.WaterCement), origin],
            ["water content at which it sets", ReportFigures.Ratio(moisture.ThresholdContent), "from the threshold and the binder in the bed"],
            ["binder in the bed", ReportFigures.Density(moisture.BinderKilogramsPerCubicMetre), "mix shares and loose density"],
            ["pores of the bed, share of its volume", ReportFigures.Ratio(moisture.Porosity), "grain densities and loose density"],
            ["window", $"{subject.Settings.Wetting.WindowSeconds:0} s", "mix file, at the bed's temperature"],
            ["shots a dose", $"{subject.Settings.Wetting.ShotsPerDose}", "the program"],
            ["cells", $"{grid.Nx} × {grid.Ny} × {grid.Nz} of {ReportFigures.Length(grid.CellMetres)}", "the command line"],
        ]);
        html.Add($"<ul><li>Gravity, hysteresis and the swelling of cement are not in the model; the bed is taken as even everywhere.</li>");
        html.Add($"<li>A deviation is the distance from the predicted to the wanted surface. Details finer than two pitches ({ReportFigures.Length(2.0 * job.Lattice.PitchMetres)}) come out weaker or not at all.</li>");
        html.Add($"<li>Where two layers meet there is a cold joint: its strength is not predicted by the shape of the wetted solid.</li>");
        if (subject.Fields is not null)
        {
            html.Add($"<li>The surfaces on this page are thinned out for the screen; the files predicted.glb and predicted.stl hold the whole ones.</li>");
        }

        html.Add($"</ul>");
        ReportTable.Write(
            html, "Made from", ["role", "file", "begin of its SHA-256"],
            job.Inputs.Select(input => (string[])[input.Role, input.FileName, input.Sha256[..Math.Min(16, input.Sha256.Length)]]));
    }

    private static string Origin(MixOrigin origin) => origin.Kind switch
    {
        MixOriginKind.Calibration => "calibration",
        MixOriginKind.Handbook => $"from a handbook ({origin.Reference})",
        _ => "assumed",
    };
}
