using System.Numerics;
using Dewstone.Jobs.Emission.Pictures.Drawing;

namespace Dewstone.Jobs.Emission.Pictures.Views;

/// <summary>The predicted solid on the yard's floor, whole or with the quarter towards the viewer taken away.</summary>
internal sealed class SolidScene : IScene
{
    private static readonly Vector3 Concrete = new(0.900f, 0.868f, 0.812f);
    private static readonly Vector3 Paper = ViewPainter.ToColour(Ink.Paper);

    private readonly Body body;
    private readonly ViewCamera camera;
    private readonly Daylight light;
    private readonly float floor;
    private readonly WaterCementTones? tones;

    /// <summary>The scene.</summary>
    /// <param name="body">The solid.</param>
    /// <param name="camera">The camera.</param>
    /// <param name="tones">Tones of the cut faces; null when nothing is cut.</param>
    public SolidScene(Body body, ViewCamera camera, WaterCementTones? tones)
    {
        this.body = body;
        this.camera = camera;
        this.tones = tones;
        light = new Daylight(camera);
        floor = body.Foot();
    }

    /// <inheritdoc/>
    public Vector3 Look(float x, float y)
    {
        Vector3 from = camera.Through(x, y), forward = camera.Forward;
        float start = float.NegativeInfinity;
        Vector3 face = Vector3.Zero;
        if (tones is not null)
        {
            start = CutAway(from, out face);
        }

        float t = body.Meet(from, forward, start, float.PositiveInfinity);
        if (float.IsPositiveInfinity(t))
        {
            return Floor(from);
        }

        Vector3 point = from + t * forward;
        if (tones is not null && t <= start)
        {
            return tones.At(point) * (0.80f + 0.20f * Math.Abs(face.X));
        }

        Vector3 normal = body.Normal(point);
        return Concrete * light.On(normal, body.Open(point, normal), body.Sunlit(point, normal, light.Sun));
    }

    // The quarter taken away reaches from the box's upright middle line to the viewer, so on a sight line it is all that lies before a certain point.
    private float CutAway(Vector3 from, out Vector3 face)
    {
        Vector3 middle = (camera.BoxLow + camera.BoxHigh) / 2f;
        float acrossX = (middle.X - from.X) / camera.Forward.X, acrossY = (middle.Y - from.Y) / camera.Forward.Y;
        face = acrossX < acrossY ? Vector3.UnitX : Vector3.UnitY;
        return Math.Min(acrossX, acrossY);
    }

    private Vector3 Floor(Vector3 from)
    {
        float t = (floor - from.Z) / camera.Forward.Z;
        Vector3 point = from + t * camera.Forward;
        float open = body.Open(point, Vector3.UnitZ);
        return Paper * (0.55f + 0.45f * open);
    }
}
