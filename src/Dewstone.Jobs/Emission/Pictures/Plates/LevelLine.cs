namespace Dewstone.Jobs.Emission.Pictures.Plates;

/// <summary>
/// Marching squares: the line where a level field on a plane crosses 0, as straight pieces, one or two for each square of four neighbouring
/// cell centres. Where the corners of a square alternate, the mean of the four decides which way the pieces run.
/// </summary>
internal static class LevelLine
{
    /// <summary>The line of a field.</summary>
    /// <param name="level">Values, second direction slowest.</param>
    /// <param name="width">Values along the first direction.</param>
    /// <param name="height">Values along the second direction.</param>
    /// <returns>Pieces in a fixed order, in cell spacings from the first cell centre.</returns>
    public static List<Segment> Of(float[] level, int width, int height)
    {
        List<Segment> segments = [];
        for (int y = 0; y < height - 1; y++)
        {
            for (int x = 0; x < width - 1; x++)
            {
                int at = y * width + x;
                float a = level[at], b = level[at + 1], c = level[at + width + 1], d = level[at + width];
                int corners = (a > 0f ? 1 : 0) | (b > 0f ? 2 : 0) | (c > 0f ? 4 : 0) | (d > 0f ? 8 : 0);
                if (corners is not (0 or 15))
                {
                    Square(segments, x, y, a, b, c, d, corners);
                }
            }
        }

        return segments;
    }

    private static void Square(List<Segment> segments, int x, int y, float a, float b, float c, float d, int corners)
    {
        (float X, float Y) south = (x + Crossing(a, b), y);
        (float X, float Y) east = (x + 1, y + Crossing(b, c));
        (float X, float Y) north = (x + Crossing(d, c), y + 1);
        (float X, float Y) west = (x, y + Crossing(a, d));
        bool joined = a + b + c + d > 0f;
        switch (corners)
        {
            case 1 or 14: Add(west, south); break;
            case 2 or 13: Add(south, east); break;
            case 4 or 11: Add(east, north); break;
            case 8 or 7: Add(north, west); break;
            case 3 or 12: Add(west, east); break;
            case 6 or 9: Add(south, north); break;
            case 5 when joined: Add(south, east); Add(north, west); break;
            case 5: Add(west, south); Add(east, north); break;
            case 10 when joined: Add(west, south); Add(east, north); break;
            default: Add(south, east); Add(north, west); break;
        }

        void Add((float X, float Y) from, (float X, float Y) to) => segments.Add(new Segment(from.X, from.Y, to.X, to.Y));
    }

    private static float Crossing(float from, float to) => (from > 0f) == (to > 0f) ? 0.5f : from / (from - to);

    /// <summary>A straight piece, in cell spacings from the first cell centre.</summary>
    /// <param name="X0">Start, first direction.</param>
    /// <param name="Y0">Start, second direction.</param>
    /// <param name="X1">End, first direction.</param>
    /// <param name="Y1">End, second direction.</param>
    internal readonly record struct Segment(float X0, float Y0, float X1, float Y1);
}
