using System.Numerics;
using Dewstone.Compute.Numerics;
using Dewstone.Jobs.Emission.Pictures.Drawing;
using Dewstone.Model.Results;

namespace Dewstone.Jobs.Emission.Pictures.Views;

/// <summary>Draws the three views of the unit: outside, cut open, and the voids as the body.</summary>
internal sealed class ViewEmitter
{
    private const int Width = 1000, Height = 800, Border = 46, Foot = 64;

    private readonly PredictedJob job;
    private readonly HardenedSurface surface;
    private readonly Body solid;
    private readonly Parallelism parallelism;
    private readonly ViewPainter painter;

    /// <summary>Views of a job.</summary>
    /// <param name="job">The job.</param>
    /// <param name="surface">Its predicted solid.</param>
    /// <param name="solid">The same as a body.</param>
    /// <param name="parallelism">Threads; no picture depends on them.</param>
    /// <param name="cancellation">Looked at every few rows.</param>
    public ViewEmitter(PredictedJob job, HardenedSurface surface, Body solid, Parallelism parallelism, CancellationToken cancellation)
    {
        this.job = job;
        this.surface = surface;
        this.solid = solid;
        this.parallelism = parallelism;
        painter = new ViewPainter(Width, Height, parallelism, cancellation);
    }

    /// <summary>The unit from outside, seen from the south-south-east.</summary>
    /// <returns>The sheet.</returns>
    public Canvas Outside()
    {
        ViewCamera camera = new(job, 33.0, 27.0, Width, Height, Border, Foot);
        Canvas canvas = painter.Paint(new SolidScene(solid, solid, camera, null));
        ViewCaption.Draw(canvas, job, camera, "predicted solid from the south-east");
        return canvas;
    }

    /// <summary>The unit with its south-eastern quarter taken away; cut faces show water/cement.</summary>
    /// <returns>The sheet.</returns>
    public Canvas CutOpen()
    {
        ViewCamera camera = new(job, 40.0, 30.0, Width, Height, Border, Foot);
        WaterCementTones tones = new(job, surface);
        Body left = new(Remaining.Of(solid, camera, parallelism), solid.Grid, parallelism);
        Canvas canvas = painter.Paint(new SolidScene(solid, left, camera, tones));
        ViewCaption.Draw(canvas, job, camera, "predicted solid, south-eastern quarter cut away");
        Legend(canvas, tones);
        return canvas;
    }

    /// <summary>The voids as the body.</summary>
    /// <returns>The sheet.</returns>
    public Canvas Voids()
    {
        ViewCamera camera = new(job, 33.0, 27.0, Width, Height, Border, Foot);
        Body voids = new(VoidsLevel.Of(solid.Level, solid.Grid, job.Placement, parallelism), solid.Grid, parallelism);
        Canvas canvas = painter.Paint(new VoidsScene(voids, solid, camera));
        Edges(canvas, camera);
        ViewCaption.Draw(canvas, job, camera, $"tunnels, cavities and dry pockets as they set, less a skin of {VoidsLevel.SkinPitches * job.Lattice.PitchMetres * 1000.0:0.#} mm");
        return canvas;
    }

    private static void Legend(Canvas canvas, WaterCementTones tones)
    {
        const int Left = 28, Top = 58, Side = 26;
        Lettering.Plain.Write(canvas, "water/cement of the cut faces", Left, Top - 14f, Ink.Line);
        for (int band = 0; band < tones.Bands.Count; band++)
        {
            canvas.Fill(Left + band * Side, Top, Side, 16, ViewPainter.ToPixel(tones.Bands[band]));
        }

        for (int edge = 0; edge <= tones.Bands.Count; edge += 2)
        {
            canvas.Line(Left + edge * Side, Top + 15f, Left + edge * Side, Top + 20f, 1f, Ink.Quiet);
            Lettering.Small.Write(canvas, $"{tones.First + edge * tones.Step:0.0#}", Left + edge * Side, Top + 32f, Ink.Quiet, edge == 0 ? 0f : 0.5f);
        }

        canvas.Frame(Left, Top, tones.Bands.Count * Side, 16, 1, Ink.Quiet);
        int loose = Left + tones.Bands.Count * Side + 34;
        canvas.Fill(loose, Top, Side, 16, ViewPainter.ToPixel(WaterCementTones.Loose));
        canvas.Frame(loose, Top, Side, 16, 1, Ink.Quiet);
        Lettering.Small.Write(canvas, "did not set", loose + Side + 8f, Top + 13f, Ink.Quiet);
    }

    // The nine edges of the outer box that the viewer sees: all but those that meet in its farthest corner.
    private static void Edges(Canvas canvas, ViewCamera camera)
    {
        Vector3 low = camera.BoxLow, high = camera.BoxHigh;
        Vector3 far = new(camera.Forward.X > 0f ? high.X : low.X, camera.Forward.Y > 0f ? high.Y : low.Y, low.Z);
        for (int axis = 0; axis < 3; axis++)
        {
            for (int corner = 0; corner < 4; corner++)
            {
                Vector3 a = Corner(low, high, axis, corner, low[axis]), b = Corner(low, high, axis, corner, high[axis]);
                if (a != far && b != far)
                {
                    (float x0, float y0) = camera.Seen(a);
                    (float x1, float y1) = camera.Seen(b);
                    canvas.Line(x0, y0, x1, y1, 1f, Ink.Quiet, 0.75f);
                }
            }
        }
    }

    private static Vector3 Corner(Vector3 low, Vector3 high, int axis, int corner, float along)
    {
        Vector3 point = new(along);
        int second = (axis + 1) % 3, third = (axis + 2) % 3;
        point[second] = (corner & 1) == 0 ? low[second] : high[second];
        point[third] = (corner & 2) == 0 ? low[third] : high[third];
        return point;
    }
}
