namespace Dewstone.Jobs.Emission.Pictures.Plates;

/// <summary>From metres in a cut to pixels of the sheet: right is right, up is up.</summary>
/// <param name="Left">Pixel of the window's left edge.</param>
/// <param name="Bottom">Pixel of the window's lower edge.</param>
/// <param name="PixelsPerMetre">Scale.</param>
/// <param name="FirstMetres">First coordinate at the left edge, printer frame.</param>
/// <param name="SecondMetres">Second coordinate at the lower edge, printer frame.</param>
/// <param name="SpanFirst">Window along the first direction, metres.</param>
/// <param name="SpanSecond">Window along the second direction, metres.</param>
internal readonly record struct SheetMap(
    float Left, float Bottom, double PixelsPerMetre, double FirstMetres, double SecondMetres, double SpanFirst, double SpanSecond)
{
    /// <summary>Pixels across the window.</summary>
    public int Width => (int)Math.Round(SpanFirst * PixelsPerMetre);

    /// <summary>Pixels down the window.</summary>
    public int Height => (int)Math.Round(SpanSecond * PixelsPerMetre);

    /// <summary>Pixel of the window's upper edge.</summary>
    public float Top => Bottom - Height;

    /// <summary>Pixel of the window's right edge.</summary>
    public float Right => Left + Width;

    /// <summary>Pixel across of a coordinate.</summary>
    /// <param name="metres">First coordinate, printer frame.</param>
    /// <returns>Pixels.</returns>
    public float X(double metres) => Left + (float)((metres - FirstMetres) * PixelsPerMetre);

    /// <summary>Pixel down of a coordinate.</summary>
    /// <param name="metres">Second coordinate, printer frame.</param>
    /// <returns>Pixels.</returns>
    public float Y(double metres) => Bottom - (float)((metres - SecondMetres) * PixelsPerMetre);
}
