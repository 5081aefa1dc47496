using System.Numerics;
using Dewstone.Jobs.Emission.Pictures.Drawing;

namespace Dewstone.Jobs.Emission.Pictures.Views;

/// <summary>The predicted solid on the yard's floor, whole or with the quarter towards the viewer taken away.</summary>
internal sealed class SolidScene : IScene
{
    private static readonly Vector3 Concrete = new(0.900f, 0.868f, 0.812f);
    private static readonly Vector3 Fold = ViewPainter.ToColour(Ink.Line);
    private static readonly Vector3 Paper = ViewPainter.ToColour(Ink.Paper);

    private readonly Body body;
    private readonly Body shading;
    private readonly ViewCamera camera;
    private readonly Daylight light;
    private readonly Approach approach;
    private readonly float floor;
    private readonly Vector3 middle;
    private readonly WaterCementTones? tones;

    /// <summary>The scene.</summary>
    /// <param name="body">The solid.</param>
    /// <param name="shading">What throws shade: the solid itself, or what is left of it once cut.</param>
    /// <param name="camera">The camera.</param>
    /// <param name="tones">Tones of the cut faces; null when nothing is cut.</param>
    public SolidScene(Body body, Body shading, ViewCamera camera, WaterCementTones? tones)
    {
        this.body = body;
        this.shading = shading;
        this.camera = camera;
        this.tones = tones;
        light = new Daylight(camera);
        approach = body.From(camera);
        floor = body.Foot();
        middle = (camera.BoxLow + camera.BoxHigh) / 2f;
    }

    /// <inheritdoc/>
    public Vector4 Look(float x, float y)
    {
        Vector3 from = camera.Through(x, y), forward = camera.Forward;
        float cut = tones is null ? float.NegativeInfinity : CutAway(from);
        float t = body.Meet(from, forward, Math.Max(cut, approach.Start(x, y)), float.PositiveInfinity);
        if (float.IsPositiveInfinity(t))
        {
            return new Vector4(Floor(from), 0f);
        }

        Vector3 point = from + t * forward;
        if (tones is not null && t <= cut)
        {
            return new Vector4(OnFold(point) ? Fold : tones.At(point), IScene.FinelyDrawn);
        }

        Vector3 normal = body.Normal(point);
        return new Vector4(Concrete * light.On(normal, shading.Open(point, normal), shading.Sunlit(point, normal, light.Sun)), 1f);
    }

    // The quarter taken away reaches from the box's upright middle line to the viewer, so on a sight line it is all that lies before a certain point.
    private float CutAway(Vector3 from)
    {
        float acrossX = (middle.X - from.X) / camera.Forward.X, acrossY = (middle.Y - from.Y) / camera.Forward.Y;
        return Math.Min(acrossX, acrossY);
    }

    // Both faces carry the tones of the legend unshaded; a thin line tells them apart.
    private bool OnFold(Vector3 point) => Math.Max(Math.Abs(point.X - middle.X), Math.Abs(point.Y - middle.Y)) * camera.PixelsPerCell < 0.8f;

    private Vector3 Floor(Vector3 from)
    {
        float t = (floor - from.Z) / camera.Forward.Z;
        Vector3 point = from + t * camera.Forward;
        float open = shading.Open(point, Vector3.UnitZ);
        return Paper * (0.55f + 0.45f * open);
    }
}
