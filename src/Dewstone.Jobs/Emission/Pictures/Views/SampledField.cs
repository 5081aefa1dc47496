using System.Numerics;
using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;

namespace Dewstone.Jobs.Emission.Pictures.Views;

/// <summary>
/// A field that a picture samples all over, in whole steps of a byte: what a sample costs is fetching it, and a step shifts a surface by a hundredth of a cell.
/// The eight values around a point are fetched by four reads and taken together four at a time.
/// </summary>
internal sealed class SampledField
{
    private const float Most = 127f;

    private readonly sbyte[] steps;
    private readonly int nx;
    private readonly int plane;
    private readonly Vector128<float> last;

    /// <summary>A field ready to be sampled.</summary>
    /// <param name="steps">Values in steps, of which 127 are 1; x fastest, then y, then z.</param>
    /// <param name="nx">Values along x, 2 or more.</param>
    /// <param name="ny">Values along y, 2 or more.</param>
    /// <param name="nz">Values along z, 2 or more.</param>
    public SampledField(sbyte[] steps, int nx, int ny, int nz)
    {
        this.steps = steps;
        this.nx = nx;
        plane = nx * ny;
        last = new Vector3(nx - 1.001f, ny - 1.001f, nz - 1.001f).AsVector128();
    }

    /// <summary>Values in steps.</summary>
    /// <param name="values">From -1 to 1, what lies beyond is cut off.</param>
    /// <param name="to">Takes the steps; what is above 0, however little, stays above.</param>
    public static void ToSteps(ReadOnlySpan<float> values, Span<sbyte> to)
    {
        int i = 0;
        for (; i <= to.Length - 16; i += 16)
        {
            Vector128<short> first = Vector128.Narrow(Steps(values, i), Steps(values, i + 4)), second = Vector128.Narrow(Steps(values, i + 8), Steps(values, i + 12));
            Vector128.Narrow(first, second).StoreUnsafe(ref to[i]);
        }

        for (; i < to.Length; i++)
        {
            to[i] = (sbyte)Steps(Vector128.CreateScalar(values[i]))[0];
        }
    }

    /// <summary>The value at a point.</summary>
    /// <param name="point">In spacings from the first value's place; beyond the outermost values that of the nearest place inside.</param>
    /// <returns>From -1 to 1, straight between the eight nearest along each axis.</returns>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public float At(Vector128<float> point)
    {
        Vector128<float> p = Vector128.MinNative(Vector128.MaxNative(point, Vector128<float>.Zero), last);
        Vector128<int> cell = Vector128.ConvertToInt32Native(p);
        Vector128<float> share = p - Vector128.ConvertToSingle(cell);
        ref sbyte here = ref Unsafe.Add(ref MemoryMarshal.GetArrayDataReference(steps), cell[2] * plane + cell[1] * nx + cell[0]);
        ref sbyte above = ref Unsafe.Add(ref here, plane);
        ulong eight = Pair(ref here) | Pair(ref Unsafe.Add(ref here, nx)) << 16 | Pair(ref above) << 32 | Pair(ref Unsafe.Add(ref above, nx)) << 48;
        (Vector128<int> low, Vector128<int> high) = Vector128.Widen(Vector128.WidenLower(Vector128.CreateScalar(eight).AsSByte()));
        // A value, its neighbour to the east, and both of the row to the north.
        Vector128<float> below = Vector128.ConvertToSingle(low), rows = below + share[2] * (Vector128.ConvertToSingle(high) - below);
        float west = rows[0] + share[1] * (rows[2] - rows[0]), east = rows[1] + share[1] * (rows[3] - rows[1]);
        return (west + share[0] * (east - west)) * (1f / Most);
    }

    private static ulong Pair(ref sbyte at) => Unsafe.ReadUnaligned<ushort>(ref Unsafe.As<sbyte, byte>(ref at));

    private static Vector128<int> Steps(ReadOnlySpan<float> values, int first) => Steps(Vector128.Create(values.Slice(first, 4)));

    private static Vector128<int> Steps(Vector128<float> values)
    {
        Vector128<float> clamped = Vector128.MinNative(Vector128.MaxNative(values, Vector128.Create(-1f)), Vector128<float>.One) * Most;
        Vector128<float> away = Vector128.ConditionalSelect(Vector128.GreaterThan(values, Vector128<float>.Zero), Vector128.Create(0.5f), Vector128.Create(-0.5f));
        Vector128<int> rounded = Vector128.ConvertToInt32Native(clamped + away);
        return Vector128.ConditionalSelect(Vector128.GreaterThan(values, Vector128<float>.Zero).AsInt32(), Vector128.Max(rounded, Vector128<int>.One), rounded);
    }
}
