using System.Buffers.Binary;
using Dewstone.Model.Lattices;
using Dewstone.Model.Results;

namespace Dewstone.Jobs.Emission.Report;

/// <summary>
/// The predicted and the wanted solid for the page's plates: a byte a cell each, 128 on the surface and above it inside, one field after the
/// other; taken together to coarser cells when they would weigh too much.
/// </summary>
/// <param name="Nx">Cells along x.</param>
/// <param name="Ny">Cells along y.</param>
/// <param name="Nz">Cells along z.</param>
/// <param name="CellMetres">Edge along x and y, m.</param>
/// <param name="CellHeightMetres">Edge along z, m.</param>
/// <param name="Packed">Both fields, zlib.</param>
internal sealed record PlateField(int Nx, int Ny, int Nz, double CellMetres, double CellHeightMetres, byte[] Packed)
{
    /// <summary>Most bytes packed: four thirds of it in the page.</summary>
    public const int MostPackedBytes = 2_500_000;

    private const int MostCells = 8_000_000;

    /// <summary>The fields of a job.</summary>
    /// <param name="subject">The job.</param>
    /// <returns>The finest fields that are light enough.</returns>
    public static PlateField Of(ReportSubject subject)
    {
        CellGrid grid = subject.Job.Moisture.Grid;
        for (int together = 1; ; together++)
        {
            int nx = Over(grid.Nx, together), ny = Over(grid.Ny, together), nz = Over(grid.Nz, together);
            if ((long)nx * ny * nz > MostCells)
            {
                continue;
            }

            byte[] bytes = new byte[2 * nx * ny * nz];
            Fill(bytes.AsMemory(0, bytes.Length / 2), subject.Surface.Level, 0f, 127f, grid, together, subject.Settings.Parallelism);
            Fill(bytes.AsMemory(bytes.Length / 2), subject.Job.Target.Fraction, 0.5f, 254f, grid, together, subject.Settings.Parallelism);
            byte[] packed = PackedBytes.Pack(bytes);
            if (packed.Length <= MostPackedBytes)
            {
                return new PlateField(nx, ny, nz, together * grid.CellMetres, together * grid.CellHeightMetres, packed);
            }
        }
    }

    /// <summary>The doses of a job, uint32 little-endian, hundredths of a millilitre, index order of the lattice; the two largest numbers say that a position is left out, and that its needle is blocked.</summary>
    /// <param name="job">The job.</param>
    /// <param name="isBlocked">Whether the needle of a position gives no water.</param>
    /// <returns>The bytes.</returns>
    public static byte[] Doses(CompiledJob job, Func<int, int, bool> isBlocked)
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

    private static int Over(int cells, int together) => (cells + together - 1) / together;

    private static void Fill(Memory<byte> to, float[] from, float surface, float scale, CellGrid grid, int together, Parallelism parallelism)
    {
        int nx = Over(grid.Nx, together), ny = Over(grid.Ny, together), nz = Over(grid.Nz, together);
        Parallel.For(0, nz, new ParallelOptions { MaxDegreeOfParallelism = parallelism.Threads }, z =>
        {
            Span<byte> plane = to.Span.Slice(z * nx * ny, nx * ny);
            for (int y = 0; y < ny; y++)
            {
                for (int x = 0; x < nx; x++)
                {
                    float mean = together == 1 ? from[(z * grid.Ny + y) * grid.Nx + x] : Mean(from, grid, x * together, y * together, z * together, together);
                    plane[y * nx + x] = (byte)(128f + Math.Clamp(MathF.Round((mean - surface) * scale), -128f, 127f));
                }
            }
        });
    }

    private static float Mean(float[] from, CellGrid grid, int x0, int y0, int z0, int together)
    {
        int x1 = Math.Min(x0 + together, grid.Nx), y1 = Math.Min(y0 + together, grid.Ny), z1 = Math.Min(z0 + together, grid.Nz);
        float sum = 0f;
        for (int z = z0; z < z1; z++)
        {
            for (int y = y0; y < y1; y++)
            {
                for (int x = x0; x < x1; x++)
                {
                    sum += from[(z * grid.Ny + y) * grid.Nx + x];
                }
            }
        }

        return sum / ((x1 - x0) * (y1 - y0) * (z1 - z0));
    }
}
