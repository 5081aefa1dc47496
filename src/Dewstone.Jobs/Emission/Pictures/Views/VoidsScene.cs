using System.Numerics;
using Dewstone.Jobs.Emission.Pictures.Drawing;

namespace Dewstone.Jobs.Emission.Pictures.Views;

/// <summary>The voids as the body, with the solid around them as thin as glass: barely toned, darker where it is seen edge on.</summary>
internal sealed class VoidsScene : IScene
{
    private static readonly Vector3 Cast = new(0.500f, 0.655f, 0.760f);
    private static readonly Vector3 Paper = ViewPainter.ToColour(Ink.Paper);

    // One sheet of glass before another is told by how far away it is: their rims are as thin as a line.
    private const float MarkPerCell = 0.03f;

    private readonly Body voids;
    private readonly Body solid;
    private readonly ViewCamera camera;
    private readonly Daylight light;
    private readonly Approach toVoids;
    private readonly Approach toSolid;

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
        toVoids = voids.From(camera);
        toSolid = solid.From(camera);
    }

    /// <inheritdoc/>
    public Vector4 Look(float x, float y)
    {
        Vector3 from = camera.Through(x, y), forward = camera.Forward;
        float t = voids.Meet(from, forward, toVoids.Start(x, y), float.PositiveInfinity);
        Vector4 seen = new(Paper, 0f);
        if (!float.IsPositiveInfinity(t))
        {
            Vector3 point = from + t * forward;
            Vector3 normal = voids.Normal(point);
            seen = new Vector4(Cast * (0.12f + light.On(normal, voids.Open(point, normal), 1f)), 1f);
        }

        float glass = solid.Meet(from, forward, toSolid.Start(x, y), t);
        if (float.IsPositiveInfinity(glass))
        {
            return seen;
        }

        float facing = Math.Abs(Vector3.Dot(solid.Normal(from + glass * forward), forward));
        float rim = (1f - facing) * (1f - facing);
        return seen * new Vector4(new Vector3(0.955f - 0.16f * rim), 1f) + new Vector4(Vector3.Zero, 2f + MarkPerCell * glass);
    }
}
