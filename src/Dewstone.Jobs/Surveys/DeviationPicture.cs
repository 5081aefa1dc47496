using Dewstone.Compute.Survey;
using Dewstone.Jobs.Emission;
using Dewstone.Jobs.Emission.Pictures;
using Dewstone.Jobs.Emission.Pictures.Drawing;
using Dewstone.Jobs.Emission.Surfaces;
using Dewstone.Model.Quantities;
using SixLabors.ImageSharp.PixelFormats;

namespace Dewstone.Jobs.Surveys;

/// <summary>A scan seen from six sides, coloured by its deviation: blue where solid is missing, white as predicted, orange where there is too much.</summary>
internal static class DeviationPicture
{
    /// <summary>Path of the picture.</summary>
    public const string Path = "deviation.png";

    private const int Width = 1560;
    private const int Margin = 40;
    private const int Top = 110;
    private const int ViewWidth = 480;
    private const int ViewHeight = 480;
    private const int ViewPitch = 530;
    private const int Bottom = 90;

    // What a side looks along (towards the viewer), its right and its up.
    private static readonly (string Name, Point3 Near, Point3 Right, Point3 Up)[] Sides =
    [
        ("from the south", new(0, -1, 0), new(1, 0, 0), new(0, 0, 1)), ("from the east", new(1, 0, 0), new(0, 1, 0), new(0, 0, 1)), ("from above", new(0, 0, 1), new(1, 0, 0), new(0, 1, 0)),
        ("from the north", new(0, 1, 0), new(-1, 0, 0), new(0, 0, 1)), ("from the west", new(-1, 0, 0), new(0, -1, 0), new(0, 0, 1)), ("from below", new(0, 0, -1), new(-1, 0, 0), new(0, 1, 0)),
    ];

    /// <summary>Draws.</summary>
    /// <param name="name">Name of the unit.</param>
    /// <param name="box">Its outer box, metres.</param>
    /// <param name="scan">The scan where it lies.</param>
    /// <param name="spacingMetres">Distance between its points, metres.</param>
    /// <returns>The file.</returns>
    public static EmittedFile Emit(string name, Size3 box, ScanSurveyResult scan, double spacingMetres)
    {
        Canvas canvas = new(Width, Top + 2 * ViewPitch + Bottom);
        double longest = Math.Max(box.X, Math.Max(box.Y, box.Z));
        double scale = Math.Min(ViewWidth, ViewHeight) * 0.9 / longest;
        Point3 middle = new(box.X / 2.0, box.Y / 2.0, box.Z / 2.0);
        Lettering.Large.Write(canvas, Lettering.Large.Fit($"{name}: scan against prediction", Width - 2 * Margin), Margin, 50, Ink.Line);
        Lettering.Plain.Write(
            canvas,
            FormattableString.Invariant($"mean {1000.0 * scan.Deviation.Mean:+0.0;-0.0;0.0} mm, 90 % from {1000.0 * scan.Deviation.Percentile(0.05):+0.0;-0.0;0.0} to {1000.0 * scan.Deviation.Percentile(0.95):+0.0;-0.0;0.0} mm, {scan.Deviation.Points.Count} points"),
            Margin, 78, Ink.Quiet);
        for (int side = 0; side < Sides.Length; side++)
        {
            int left = Margin + side % 3 * (ViewWidth + 20), top = Top + side / 3 * ViewPitch;
            Draw(canvas, left, top, scan.Deviation, Sides[side], middle, scale, spacingMetres);
            Lettering.Plain.Write(canvas, Sides[side].Name, left + ViewWidth / 2f, top + ViewHeight + 22, Ink.Line, 0.5f);
        }

        Legend(canvas);
        return new EmittedFile(Path, PngFile.Write(canvas));
    }

    private static void Draw(
        Canvas canvas, int left, int top, ScanDeviation deviation, (string Name, Point3 Near, Point3 Right, Point3 Up) side, Point3 middle, double scale, double spacing)
    {
        float[] near = new float[ViewWidth * ViewHeight], value = new float[near.Length];
        Array.Fill(near, float.NegativeInfinity);
        int reach = Math.Max(1, (int)Math.Ceiling(0.8 * spacing * scale));
        for (int i = 0; i < deviation.Points.Count; i++)
        {
            Point3 p = deviation.Points[i] - middle;
            int x = (int)Math.Floor(ViewWidth / 2.0 + scale * Point3.Dot(p, side.Right)), y = (int)Math.Floor(ViewHeight / 2.0 - scale * Point3.Dot(p, side.Up));
            float depth = (float)Point3.Dot(p, side.Near);
            for (int b = Math.Max(0, y - reach); b <= Math.Min(ViewHeight - 1, y + reach); b++)
            {
                for (int a = Math.Max(0, x - reach); a <= Math.Min(ViewWidth - 1, x + reach); a++)
                {
                    if (depth > near[b * ViewWidth + a])
                    {
                        (near[b * ViewWidth + a], value[b * ViewWidth + a]) = (depth, (float)(1000.0 * deviation.Metres[i]));
                    }
                }
            }
        }

        Paint(canvas, left, top, near, value, (float)(6.0 * spacing));
    }

    // White would not be told from paper: the outline, and steps in depth, are drawn in a quiet line.
    private static void Paint(Canvas canvas, int left, int top, float[] near, float[] value, float step)
    {
        for (int y = 0; y < ViewHeight; y++)
        {
            for (int x = 0; x < ViewWidth; x++)
            {
                int at = y * ViewWidth + x;
                if (float.IsNegativeInfinity(near[at]))
                {
                    continue;
                }

                bool isEdge = Falls(near, at, x > 0 ? at - 1 : -1, step) || Falls(near, at, x < ViewWidth - 1 ? at + 1 : -1, step)
                    || Falls(near, at, y > 0 ? at - ViewWidth : -1, step) || Falls(near, at, y < ViewHeight - 1 ? at + ViewWidth : -1, step);
                canvas.Pixels[(top + y) * canvas.Width + left + x] = isEdge ? Ink.Quiet : DeviationTones.Of(value[at]);
            }
        }
    }

    private static bool Falls(float[] near, int at, int beside, float step) => beside < 0 || near[at] - near[beside] > step;

    private static void Legend(Canvas canvas)
    {
        const int length = 500, height = 16;
        int left = (Width - length) / 2, top = canvas.Height - 70;
        for (int x = 0; x < length; x++)
        {
            Rgb24 tone = DeviationTones.Of(DeviationTones.FullMillimetres * (2f * x / (length - 1) - 1f));
            canvas.Fill(left + x, top, 1, height, tone);
        }

        canvas.Frame(left, top, length, height, 1, Ink.Quiet);
        for (int mark = -2; mark <= 2; mark++)
        {
            float x = left + length / 2f + mark * length / 4f;
            string text = FormattableString.Invariant($"{mark * DeviationTones.FullMillimetres / 2f:+0.#;-0.#;0}");
            Lettering.Small.Write(canvas, text, x, top + height + 16, Ink.Line, 0.5f);
        }

        Lettering.Plain.Write(canvas, "too little", left - 12, top + 13, Ink.Line, 1f);
        Lettering.Plain.Write(canvas, "too much, mm", left + length + 12, top + 13, Ink.Line);
    }
}
