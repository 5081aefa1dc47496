namespace Dewstone.Jobs.Emission.Surfaces;

/// <summary>A run of triangles whose corners lie within a stretch of corners, so that 16 bits can number them from the stretch's first.</summary>
/// <param name="FirstTriangle">First triangle.</param>
/// <param name="Triangles">Triangles.</param>
/// <param name="FirstCorner">First corner of the stretch.</param>
/// <param name="Corners">Corners of the stretch; neighbouring stretches overlap, so that no corner is written twice.</param>
internal sealed record GlbRun(int FirstTriangle, int Triangles, int FirstCorner, int Corners)
{
    /// <summary>Most corners of a stretch: number 65535 is kept by glTF.</summary>
    public const int MostCorners = 65_535;

    /// <summary>Whether its corners fit in 16 bits; a single triangle may lie across more.</summary>
    public bool IsShort => Corners <= MostCorners;

    /// <summary>Bytes of its corner numbers.</summary>
    public int NumberBytes => 3 * Triangles * (IsShort ? sizeof(ushort) : sizeof(uint));

    /// <summary>Cuts triangles into runs, each as long as it can be.</summary>
    /// <param name="triangles">Three corner numbers a triangle.</param>
    /// <returns>The runs in order, which hold every triangle once.</returns>
    public static IReadOnlyList<GlbRun> Of(ReadOnlySpan<int> triangles)
    {
        List<GlbRun> runs = [];
        int start = 0, low = int.MaxValue, high = -1;
        for (int i = 0; i < triangles.Length; i += 3)
        {
            int least = Math.Min(triangles[i], Math.Min(triangles[i + 1], triangles[i + 2]));
            int most = Math.Max(triangles[i], Math.Max(triangles[i + 1], triangles[i + 2]));
            if (i > start && Math.Max(high, most) - Math.Min(low, least) >= MostCorners)
            {
                runs.Add(new GlbRun(start / 3, (i - start) / 3, low, high - low + 1));
                (start, low, high) = (i, int.MaxValue, -1);
            }

            (low, high) = (Math.Min(low, least), Math.Max(high, most));
        }

        if (triangles.Length > 0)
        {
            runs.Add(new GlbRun(start / 3, (triangles.Length - start) / 3, low, high - low + 1));
        }

        return runs;
    }
}
