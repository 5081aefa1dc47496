using System.Numerics;
using Dewstone.Jobs.Emission.Pictures.Drawing;

namespace Dewstone.Jobs.Emission.Pictures.Views;

/// <summary>The voids as the body, with the solid around them as thin as glass: barely toned, darker where it is seen edge on.</summary>
internal sealed class VoidsScene : IScene
{
    private static readonly Vector3 Cast = new(0.500f, 0.655f, 0.760f);
    private static readonly Vector3 Paper = ViewPainter.ToColour(Ink.Paper);

    private readonly Body voids;
    private readonly Body solid;
    private readonly ViewCamera camera;
    private readonly Daylight light;

    /// <summary>The scene.</summary>
    /// <param name="voids">The voids.</param>
    /// <param name="solid">The solid.</param>
    /// <param name="camera">The camera.</param>
    public VoidsScene(Body voids, Body solid, ViewCamera camera)
    {
        this.voids = voids;
        this.solid = solid;
        this.camera = camera;
        light = new Daylight(camera);
    }

    /// <inheritdoc/>
    public Vector3 Look(float x, float y)
    {
        Vector3 from = camera.Through(x, y), forward = camera.Forward;
        float t = voids.Meet(from, forward, float.NegativeInfinity, float.PositiveInfinity);
        Vector3 seen = Paper;
        if (!float.IsPositiveInfinity(t))
        {
            Vector3 point = from + t * forward;
            Vector3 normal = voids.Normal(point);
            seen = Cast * (0.12f + light.On(normal, voids.Open(point, normal), 1f));
        }

        float glass = solid.Meet(from, forward, float.NegativeInfinity, t);
        if (float.IsPositiveInfinity(glass))
        {
            return seen;
        }

        float facing = Math.Abs(Vector3.Dot(solid.Normal(from + glass * forward), forward));
        float rim = (1f - facing) * (1f - facing);
        return seen * (0.955f - 0.16f * rim);
    }
}
