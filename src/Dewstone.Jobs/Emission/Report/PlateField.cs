using System.Buffers.Binary;
using Dewstone.Compute.Numerics;
using Dewstone.Model.Lattices;
using Dewstone.Model.Results;

namespace Dewstone.Jobs.Emission.Report;

/// <summary>
/// The predicted and the wanted solid for the page's plates: a byte a cell each, 128 or more inside, one field after the
/// other; taken together to coarser cells when they would weigh too much.
/// </summary>
/// <param name="Shape">Cells.</param>
/// <param name="Size">Edges of a cell, m.</param>
/// <param name="Packed">Both fields, zlib.</param>
internal sealed record PlateField(GridShape Shape, CellSize Size, byte[] Packed)
{
    /// <summary>Most bytes packed: four thirds of it in the page.</summary>
    public const int MostPackedBytes = 2_500_000;

    private const int MostCells = 8_000_000;

    /// <summary>The fields of a job.</summary>
    /// <param name="job">The job.</param>
    /// <param name="surface">Its predicted solid.</param>
    /// <param name="parallelism">Threads; no byte depends on them.</param>
    /// <returns>The finest fields that are light enough.</returns>
    public static PlateField Of(PredictedJob job, HardenedSurface surface, Parallelism parallelism)
    {
        CellGrid grid = job.Moisture.Grid;
        for (int together = CoarseField.TogetherForAtMost(grid, MostCells); ; together++)
        {
            CoarseField level = CoarseField.Of(surface.Level, grid, together, 1f, parallelism);
            CoarseField wanted = CoarseField.Of(job.Target.Fraction, grid, together, 1f, parallelism);
            int cells = level.Values.Length;
            byte[] both = new byte[2 * cells];
            Bytes(level.Values, 0f, 127f, both.AsSpan(0, cells));
            Bytes(wanted.Values, 0.5f, 254f, both.AsSpan(cells));
            byte[] packed = PackedBytes.Pack(both);
            if (packed.Length <= MostPackedBytes)
            {
                return new PlateField(level.Shape, level.Size, packed);
            }
        }
    }

    /// <summary>The doses of a job, uint32 little-endian, hundredths of a millilitre, index order of the lattice; the two largest numbers say that a position is left out, and that its needle is blocked.</summary>
    /// <param name="job">The job.</param>
    /// <param name="isBlocked">Whether the needle of a position gives no water.</param>
    /// <returns>The bytes.</returns>
    public static byte[] Doses(PredictedJob job, Func<int, int, bool> isBlocked)
    {
        Lattice lattice = job.Lattice;
        byte[] bytes = new byte[4 * lattice.Count];
        for (int k = 0; k < lattice.Layers; k++)
        {
            for (int j = 0; j < lattice.Rows; j++)
            {
                for (int i = 0; i < lattice.Columns; i++)
                {
                    int index = lattice.Index(i, j, k);
                    uint dose = !lattice.IsUsable(i, j, k) ? uint.MaxValue : isBlocked(i, j) ? uint.MaxValue - 1 : (uint)job.Doses.CentiMillilitres[index];
                    BinaryPrimitives.WriteUInt32LittleEndian(bytes.AsSpan(4 * index), dose);
                }
            }
        }

        return bytes;
    }

    private static void Bytes(float[] values, float surface, float scale, Span<byte> to)
    {
        for (int i = 0; i < to.Length; i++)
        {
            to[i] = (byte)(128f + Math.Clamp(MathF.Floor((values[i] - surface) * scale), -128f, 127f));
        }
    }
}
