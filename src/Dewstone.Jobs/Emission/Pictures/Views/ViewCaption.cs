using Dewstone.Jobs.Emission.Pictures.Drawing;
using Dewstone.Model.Quantities;
using Dewstone.Model.Results;

namespace Dewstone.Jobs.Emission.Pictures.Views;

/// <summary>The lines under a view: which unit, what is shown, how large, and a bar to measure by.</summary>
internal static class ViewCaption
{
    private static readonly int[] BarLengths = [500, 200, 100, 50, 20, 10];

    /// <summary>Draws the caption.</summary>
    /// <param name="canvas">The sheet.</param>
    /// <param name="job">The job.</param>
    /// <param name="camera">The camera.</param>
    /// <param name="what">What is shown.</param>
    public static void Draw(Canvas canvas, PredictedJob job, ViewCamera camera, string what)
    {
        const int Border = 28;
        int foot = canvas.Height - Border;
        Size3 box = job.Placement.UnitBox;
        string name = Lettering.Large.Fit(job.Description.Unit.Name, canvas.Width - 560);
        Lettering.Large.Write(canvas, name, Border, foot - 24f, Ink.Line);
        string size = $"{Mm(box.X)} \u00d7 {Mm(box.Y)} \u00d7 {Mm(box.Z)} mm";
        Lettering.Plain.Write(canvas, size, Border + Lettering.Large.Length(name) + 18f, foot - 24f, Ink.Quiet);
        Lettering.Plain.Write(canvas, what, Border, foot, Ink.Quiet);
        int length = BarLengths.First(mm => mm * camera.PixelsPerMetre / 1000.0 <= 190.0 || mm == 10);
        int pixels = (int)Math.Round(length * camera.PixelsPerMetre / 1000.0);
        int left = canvas.Width - Border - pixels;
        canvas.Frame(left, foot - 8, pixels, 8, 1, Ink.Line);
        canvas.Fill(left, foot - 8, pixels / 2, 8, Ink.Line);
        Lettering.Plain.Write(canvas, $"{length} mm in the picture's plane", canvas.Width - Border, foot - 16f, Ink.Quiet, 1f);
    }

    private static string Mm(double metres) => $"{metres * 1000.0:0.#}";
}
