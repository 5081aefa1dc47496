using System.Numerics;

namespace Dewstone.Jobs.Emission.Pictures.Views;

/// <summary>Light of a workshop yard: a sky, a low sun from the upper left, a weak bounce from the right.</summary>
internal sealed class Daylight
{
    private readonly Vector3 sun;
    private readonly Vector3 bounce;

    /// <summary>The light for a camera.</summary>
    /// <param name="camera">The camera; the light goes with it.</param>
    public Daylight(ViewCamera camera)
    {
        sun = Vector3.Normalize(-0.62f * camera.Right + 0.75f * Vector3.UnitZ - 0.5f * camera.Forward);
        bounce = Vector3.Normalize(0.9f * camera.Right + 0.1f * Vector3.UnitZ - 0.45f * camera.Forward);
    }

    /// <summary>Direction towards the sun, length 1.</summary>
    public Vector3 Sun => sun;

    /// <summary>How bright a surface is.</summary>
    /// <param name="normal">Outward, length 1.</param>
    /// <param name="open">Openness, 0 to 1.</param>
    /// <param name="sunlit">Share of the sun that reaches it, 0 to 1.</param>
    /// <returns>Factor on its own colour, about 0 to 1.1.</returns>
    public float On(Vector3 normal, float open, float sunlit)
    {
        float sky = 0.34f + 0.14f * normal.Z;
        float direct = 0.62f * sunlit * Math.Max(0f, Vector3.Dot(normal, sun));
        float reflected = 0.12f * Math.Max(0f, Vector3.Dot(normal, bounce));
        return (sky + reflected) * open + direct * (0.45f + 0.55f * open);
    }
}
