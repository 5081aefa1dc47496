using Dewstone.Jobs.Emission.Pictures.Drawing;
using Dewstone.Jobs.Emission.Pictures.Views;
using SixLabors.ImageSharp.PixelFormats;

namespace Dewstone.Jobs.Emission.Report;

/// <summary>The inks of the pictures as variables of a style sheet, so that pages and drawings use the same.</summary>
internal static class ReportInks
{
    /// <summary>Rules that define them: for light pages, and on a dark screen for dark ones. Print is always light.</summary>
    public static string Rules { get; } = $":root {{ {Inks(dark: false)} }}\n@media screen and (prefers-color-scheme: dark) {{ :root {{ {Inks(dark: true)} }} }}\n";

    private static string Inks(bool dark)
    {
        (string Name, Rgb24 Light, Rgb24 Dark)[] inks =
        [
            ("paper", Ink.Paper, DarkInk.Paper), ("line", Ink.Line, DarkInk.Line), ("quiet", Ink.Quiet, DarkInk.Quiet), ("faint", Ink.Faint, DarkInk.Faint),
            ("solid", Ink.Solid, DarkInk.Solid), ("elsewhere", Ink.SolidElsewhere, DarkInk.SolidElsewhere), ("excess", Ink.Excess, DarkInk.Excess),
            ("missing", Ink.Missing, DarkInk.Missing), ("water", Ink.Water, DarkInk.Water), ("driest", WaterCementTones.Driest, WaterCementTones.Driest),
            ("midway", WaterCementTones.Middle, WaterCementTones.Middle), ("wettest", WaterCementTones.Wettest, WaterCementTones.Wettest),
        ];
        return string.Join(' ', inks.Select(ink => (ink.Name, Tone: dark ? ink.Dark : ink.Light)).Select(ink => $"--{ink.Name}: #{ink.Tone.R:x2}{ink.Tone.G:x2}{ink.Tone.B:x2};"));
    }
}
