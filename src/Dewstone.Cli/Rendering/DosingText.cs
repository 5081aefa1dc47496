using Dewstone.Model.Results;

namespace Dewstone.Cli.Rendering;

/// <summary>How the doses were found and what plain ones would give, in words.</summary>
internal static class DosingText
{
    /// <summary>The words.</summary>
    /// <param name="dosing">How the doses were found.</param>
    /// <returns>One line, or two for corrected doses.</returns>
    public static IEnumerable<string> Of(DosingSummary dosing)
    {
        if (!dosing.Corrected)
        {
            yield return $"plain, {dosing.PlainMillilitres:0} mL a full voxel: {Figures(dosing.Chosen)}";
            yield break;
        }

        string from = dosing.LikeFingerprint is { } like ? $", started from job {like}" : "";
        yield return $"corrected in {dosing.Solves} solves{from}: {Figures(dosing.Chosen)}";
        yield return $"plain would give, {dosing.PlainMillilitres:0} mL a full voxel: {Figures(dosing.Plain)}";
    }

    private static string Figures(DoseFigures figures) =>
        $"match {figures.ShapeMatch:0.000}, volume {(figures.VolumeError * 100.0).ToString("+0.0;-0.0;0.0")} %, {figures.WaterCubicMetres * 1000.0:0.0} L";
}
