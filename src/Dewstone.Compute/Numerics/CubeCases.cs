namespace Dewstone.Compute.Numerics;

/// <summary>
/// How a surface cuts a cube, for each of the 256 ways its corners can be set: triangles over the cube's edges, derived here from one rule
/// for a face and not copied from a table.
/// </summary>
/// <remarks>
/// Corner c = dx + 2 dy + 4 dz. Edges 0 to 3 run along x (dy + 2 dz), 4 to 7 along y (dx + 2 dz), 8 to 11 along z (dx + 2 dy). On each face,
/// every unbroken run of set corners is cut off by one line; two set corners across a face's diagonal are therefore kept apart, and so are
/// two lone empty ones across the cube. The rule
/// looks at the four corners of the face alone, so the two cubes that share it draw the same line, in opposite directions: the surface has
/// no holes (the flaw of the first tables; Lorensen and Cline, "Marching cubes", 1987; Nielson and Hamann, "The asymptotic decider",
/// 1991; both from memory). The lines of a cube join to loops, and loops become fans of triangles, seen counter-clockwise from the empty
/// side, about the first corner from which no line of the fan runs along a face, so that every edge has two triangles.
/// </remarks>
internal static class CubeCases
{
    /// <summary>Corners of the six faces, counter-clockwise seen from outside the cube.</summary>
    private static readonly byte[][] Faces =
    [
        [0, 4, 6, 2], [1, 3, 7, 5], [0, 1, 5, 4], [2, 6, 7, 3], [0, 2, 3, 1], [4, 5, 7, 6],
    ];

    /// <summary>First entry of each case in <see cref="Triangles"/>, and the end; each entry is an edge, three make a triangle.</summary>
    public static readonly int[] Starts = new int[257];

    /// <summary>Edges of the triangles of all cases.</summary>
    public static readonly byte[] Triangles = Build();

    private static byte[] Build()
    {
        List<byte> triangles = [];
        int[] next = new int[12];
        for (int corners = 0; corners < 256; corners++)
        {
            Starts[corners] = triangles.Count;
            Array.Fill(next, -1);
            foreach (byte[] face in Faces)
            {
                DrawLines(face, corners, next);
            }

            AddFans(next, triangles);
        }

        Starts[256] = triangles.Count;
        return [.. triangles];
    }

    private static void DrawLines(byte[] face, int corners, int[] next)
    {
        for (int k = 0; k < 4; k++)
        {
            if (!IsSet(corners, face[k]) && IsSet(corners, face[(k + 1) % 4]))
            {
                int end = k + 1;
                while (IsSet(corners, face[(end + 1) % 4]))
                {
                    end++;
                }

                next[Edge(face[k], face[(k + 1) % 4])] = Edge(face[end % 4], face[(end + 1) % 4]);
            }
        }
    }

    private static void AddFans(int[] next, List<byte> triangles)
    {
        for (int first = 0; first < 12; first++)
        {
            List<int> loop = [];
            for (int at = first; next[at] >= 0;)
            {
                loop.Add(at);
                (at, next[at]) = (next[at], -1);
            }

            if (loop.Count > 0)
            {
                int apex = Enumerable.Range(0, loop.Count).First(start => IsFree(loop, start));
                for (int k = 1; k + 1 < loop.Count; k++)
                {
                    triangles.AddRange([(byte)loop[apex], (byte)loop[(apex + k) % loop.Count], (byte)loop[(apex + k + 1) % loop.Count]]);
                }
            }
        }
    }

    // Lines within a fan must not run along a face: the cube beside it may draw the same line, and four triangles would meet there.
    private static bool IsFree(List<int> loop, int apex)
    {
        for (int k = 2; k + 1 < loop.Count; k++)
        {
            if (ShareFace(loop[apex], loop[(apex + k) % loop.Count]))
            {
                return false;
            }
        }

        return true;
    }

    private static bool ShareFace(int one, int other) =>
        Array.Exists(Faces, face => Enumerable.Range(0, 4).Count(k => Edge(face[k], face[(k + 1) % 4]) is var edge && (edge == one || edge == other)) == 2);

    private static bool IsSet(int corners, int corner) => ((corners >> corner) & 1) != 0;

    private static int Edge(int from, int to)
    {
        int low = Math.Min(from, to);
        int dx = low & 1;
        int dy = (low >> 1) & 1;
        int dz = low >> 2;
        return Math.Abs(to - from) switch
        {
            1 => dy + 2 * dz,
            2 => 4 + dx + 2 * dz,
            _ => 8 + dx + 2 * dy,
        };
    }
}
