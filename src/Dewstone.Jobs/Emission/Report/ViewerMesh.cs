using System.Buffers.Binary;
using Dewstone.Jobs.Emission.Surfaces;
using Dewstone.Model.Quantities;

namespace Dewstone.Jobs.Emission.Report;

/// <summary>
/// A thinned surface as the page's viewer takes it, little-endian: corners as three uint16 each over the bounds below, corner numbers of the
/// triangles as uint32, then, of the predicted solid, a byte a corner each for the deviation, the water/cement and whether it lies on a piece apart.
/// </summary>
internal static class ViewerMesh
{
    /// <summary>Water/cement of byte 255.</summary>
    public const double MostWaterCement = 1.0;

    private const double Steps = 65_535.0;

    /// <summary>Packs a surface with what is to be seen on it.</summary>
    /// <param name="predicted">The surface.</param>
    /// <param name="apart">Corners on pieces apart; empty for none.</param>
    /// <param name="low">Corner of the bounds, m, unit frame.</param>
    /// <param name="span">Edge of the bounds, a cube, m.</param>
    /// <returns>The bytes.</returns>
    public static byte[] Pack(PredictedSurface predicted, bool[] apart, Point3 low, double span)
    {
        int corners = predicted.Surface.Corners;
        byte[] bytes = Pack(predicted.Surface, low, span, 3 * corners);
        Span<byte> marks = bytes.AsSpan(bytes.Length - 3 * corners);
        for (int i = 0; i < corners; i++)
        {
            float share = Math.Clamp(predicted.DeviationMillimetres[i] / DeviationTones.FullMillimetres, -1f, 1f);
            marks[i] = (byte)(127 + MathF.Round(127f * share));
            marks[corners + i] = (byte)Math.Round(255.0 * Math.Clamp(predicted.WaterCement[i] / MostWaterCement, 0.0, 1.0));
            marks[2 * corners + i] = apart.Length > 0 && apart[i] ? (byte)255 : (byte)0;
        }

        return bytes;
    }

    /// <summary>Packs a bare surface.</summary>
    /// <param name="surface">The surface.</param>
    /// <param name="low">Corner of the bounds, m, unit frame.</param>
    /// <param name="span">Edge of the bounds, a cube, m.</param>
    /// <param name="more">Bytes to leave free at the end.</param>
    /// <returns>The bytes.</returns>
    public static byte[] Pack(UnitSurface surface, Point3 low, double span, int more = 0)
    {
        float[] positions = surface.Positions;
        int first = (2 * positions.Length + 3) / 4 * 4;
        byte[] bytes = new byte[first + 4 * surface.Triangles.Length + more];
        double perMetre = Steps / span;
        for (int i = 0; i < positions.Length; i += 3)
        {
            Put(bytes, i, (positions[i] - low.X) * perMetre);
            Put(bytes, i + 1, (positions[i + 1] - low.Y) * perMetre);
            Put(bytes, i + 2, (positions[i + 2] - low.Z) * perMetre);
        }

        for (int i = 0; i < surface.Triangles.Length; i++)
        {
            BinaryPrimitives.WriteInt32LittleEndian(bytes.AsSpan(first + 4 * i), surface.Triangles[i]);
        }

        return bytes;
    }

    private static void Put(byte[] bytes, int slot, double steps) =>
        BinaryPrimitives.WriteUInt16LittleEndian(bytes.AsSpan(2 * slot), (ushort)Math.Round(Math.Clamp(steps, 0.0, Steps)));
}
