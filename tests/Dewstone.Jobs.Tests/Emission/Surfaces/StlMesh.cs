using System.Buffers.Binary;
using System.Numerics;
using Dewstone.Jobs.Emission;

namespace Dewstone.Jobs.Tests.Emission.Surfaces;

/// <summary>A binary STL as its layout says, corners of the same place taken as one.</summary>
internal sealed class StlMesh
{
    private readonly Dictionary<Vector3, int> numbers = [];

    public StlMesh(EmittedFile file)
    {
        ReadOnlySpan<byte> bytes = file.Bytes.Span;
        Header = [.. bytes[..80]];
        int count = (int)BinaryPrimitives.ReadUInt32LittleEndian(bytes[80..]);
        Assert.Equal(84 + 50 * count, bytes.Length);
        Normals = new Vector3[count];
        Triangles = new int[3 * count];
        for (int t = 0; t < count; t++)
        {
            ReadOnlySpan<byte> from = bytes.Slice(84 + 50 * t, 50);
            Normals[t] = Vector(from);
            for (int k = 0; k < 3; k++)
            {
                Vector3 corner = Vector(from[(12 + 12 * k)..]);
                if (!numbers.TryGetValue(corner, out int number))
                {
                    number = numbers[corner] = Corners.Count;
                    Corners.Add(corner);
                }

                Triangles[3 * t + k] = number;
            }

            Assert.Equal(0, from[48] | from[49]);
        }
    }

    public byte[] Header { get; }

    public Vector3[] Normals { get; }

    public List<Vector3> Corners { get; } = [];

    public int[] Triangles { get; }

    /// <summary>Volume by the divergence theorem, cubic metres.</summary>
    public double CubicMetres
    {
        get
        {
            double sum = 0.0;
            for (int i = 0; i < Triangles.Length; i += 3)
            {
                Vector3 a = Corners[Triangles[i]], b = Corners[Triangles[i + 1]], c = Corners[Triangles[i + 2]];
                sum += (double)a.X * ((double)b.Y * c.Z - (double)b.Z * c.Y) + (double)a.Y * ((double)b.Z * c.X - (double)b.X * c.Z)
                    + (double)a.Z * ((double)b.X * c.Y - (double)b.Y * c.X);
            }

            return sum / 6.0 * 1e-9;
        }
    }

    /// <summary>Corners - edges + triangles.</summary>
    public int Euler => Corners.Count - Triangles.Length / 2 + Triangles.Length / 3;

    /// <summary>Each edge is walked once each way.</summary>
    public void AssertClosed()
    {
        HashSet<(int, int)> walked = [];
        for (int i = 0; i < Triangles.Length; i++)
        {
            Assert.True(walked.Add((Triangles[i], Triangles[i % 3 == 2 ? i - 2 : i + 1])), "an edge is walked twice one way");
        }

        Assert.All(walked, edge => Assert.Contains((edge.Item2, edge.Item1), walked));
    }

    private static Vector3 Vector(ReadOnlySpan<byte> from) => new(
        BinaryPrimitives.ReadSingleLittleEndian(from), BinaryPrimitives.ReadSingleLittleEndian(from[4..]), BinaryPrimitives.ReadSingleLittleEndian(from[8..]));
}
