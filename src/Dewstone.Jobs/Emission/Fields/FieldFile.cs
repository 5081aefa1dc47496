using System.Buffers.Binary;
using System.Globalization;
using System.Text;
using Dewstone.Model.Lattices;
using Dewstone.Model.Results;

namespace Dewstone.Jobs.Emission.Fields;

/// <summary>
/// Writes cells as a VTK XML image file ("VTK XML Formats", Kitware wiki, version 1.0): cell data, raw appended, packed in blocks
/// of 32 KiB that threads share out; no byte depends on how many there are. Origin and spacing in metres, printer frame.
/// </summary>
internal static class FieldFile
{
    private const int BlockBytes = Deflater.LongestBlock;

    /// <summary>Bytes of a file.</summary>
    /// <param name="grid">The cells.</param>
    /// <param name="arrays">What is known of each.</param>
    /// <param name="remarks">Names and values of numbers that explain the arrays.</param>
    /// <param name="parallelism">Threads.</param>
    /// <param name="cancellationToken">Looked at between blocks.</param>
    public static byte[] Write(
        CellGrid grid,
        IReadOnlyList<CellArray> arrays,
        IReadOnlyList<NamedAmount> remarks,
        Parallelism parallelism,
        CancellationToken cancellationToken)
    {
        (CellArray Array, int First, int Bytes)[] work =
            [.. arrays.SelectMany(array => Blocks(array, grid.Count))];
        byte[][] packed = new byte[work.Length][];
        ParallelOptions options = new() { MaxDegreeOfParallelism = parallelism.Threads, CancellationToken = cancellationToken };
        Parallel.For(0, work.Length, options, () => new Packer(grid.Nx), (i, _, packer) =>
        {
            packed[i] = packer.Pack(work[i].Array, work[i].First, work[i].Bytes);
            return packer;
        }, _ => { });

        return Assemble(grid, arrays, remarks, packed);
    }

    private static IEnumerable<(CellArray Array, int First, int Bytes)> Blocks(CellArray array, int cells)
    {
        int perBlock = BlockBytes / array.CellBytes;
        for (int first = 0; first < cells; first += perBlock)
        {
            yield return (array, first, Math.Min(perBlock, cells - first) * array.CellBytes);
        }
    }

    private static byte[] Assemble(CellGrid grid, IReadOnlyList<CellArray> arrays, IReadOnlyList<NamedAmount> remarks, byte[][] packed)
    {
        List<byte[]> parts = [];
        List<long> offsets = [];
        long offset = 0;
        int next = 0;
        foreach (CellArray array in arrays)
        {
            long bytes = (long)grid.Count * array.CellBytes;
            int blocks = (int)((bytes + BlockBytes - 1) / BlockBytes);
            ReadOnlySpan<byte[]> own = packed.AsSpan(next, blocks);
            next += blocks;
            offsets.Add(offset);
            parts.Add(Header(bytes, own));
            offset += parts[^1].Length;
            foreach (byte[] block in own)
            {
                parts.Add(block);
                offset += block.Length;
            }
        }

        byte[] head = Encoding.UTF8.GetBytes(Xml(grid, arrays, offsets, remarks));
        byte[] foot = "\n  </AppendedData>\n</VTKFile>\n"u8.ToArray();
        byte[] file = new byte[head.Length + offset + foot.Length];
        int at = 0;
        foreach (byte[] part in parts.Prepend(head).Append(foot))
        {
            part.CopyTo(file, at);
            at += part.Length;
        }

        return file;
    }

    /// <summary>Number of blocks, bytes a block, bytes of a shorter last one (0 for none), then the packed size of each.</summary>
    private static byte[] Header(long bytes, ReadOnlySpan<byte[]> blocks)
    {
        byte[] header = new byte[8 * (3 + blocks.Length)];
        Put(header, 0, blocks.Length);
        Put(header, 1, BlockBytes);
        Put(header, 2, bytes % BlockBytes);
        for (int i = 0; i < blocks.Length; i++)
        {
            Put(header, 3 + i, blocks[i].Length);
        }

        return header;
    }

    private static void Put(Span<byte> header, int place, long value) => BinaryPrimitives.WriteUInt64LittleEndian(header[(8 * place)..], (ulong)value);

    private static string Xml(CellGrid grid, IReadOnlyList<CellArray> arrays, List<long> offsets, IReadOnlyList<NamedAmount> remarks)
    {
        string extent = $"0 {grid.Nx} 0 {grid.Ny} 0 {grid.Nz}";
        StringBuilder xml = new();
        xml.Append("<?xml version=\"1.0\"?>\n");
        xml.Append("<VTKFile type=\"ImageData\" version=\"1.0\" byte_order=\"LittleEndian\" header_type=\"UInt64\" compressor=\"vtkZLibDataCompressor\">\n");
        xml.Append(CultureInfo.InvariantCulture, $"  <ImageData WholeExtent=\"{extent}\"");
        xml.Append(CultureInfo.InvariantCulture, $" Origin=\"{Number(grid.Origin.X)} {Number(grid.Origin.Y)} {Number(grid.Origin.Z)}\"");
        xml.Append(CultureInfo.InvariantCulture, $" Spacing=\"{Number(grid.CellMetres)} {Number(grid.CellMetres)} {Number(grid.CellHeightMetres)}\">\n");
        xml.Append("    <FieldData>\n");
        foreach (NamedAmount remark in remarks)
        {
            xml.Append($"      <DataArray type=\"Float64\" Name=\"{remark.Name}\" NumberOfTuples=\"1\" format=\"ascii\">{Number(remark.Amount)}</DataArray>\n");
        }

        xml.Append("    </FieldData>\n");
        xml.Append($"    <Piece Extent=\"{extent}\">\n      <CellData Scalars=\"{arrays[0].Name}\">\n");
        for (int i = 0; i < arrays.Count; i++)
        {
            xml.Append(CultureInfo.InvariantCulture, $"        <DataArray type=\"{arrays[i].Type}\" Name=\"{arrays[i].Name}\" format=\"appended\" offset=\"{offsets[i]}\"/>\n");
        }

        return xml.Append("      </CellData>\n    </Piece>\n  </ImageData>\n  <AppendedData encoding=\"raw\">\n   _").ToString();
    }

    private static string Number(double value) => (value + 0.0).ToString("R", CultureInfo.InvariantCulture);

    /// <summary>What one thread needs to pack blocks.</summary>
    private sealed class Packer(int rowCells)
    {
        private readonly Deflater deflater = new();
        private readonly byte[] block = new byte[BlockBytes];

        public byte[] Pack(CellArray array, int first, int bytes)
        {
            Span<byte> values = block.AsSpan(0, bytes);
            array.Fill(first, values);
            return deflater.Pack(values, array.CellBytes, rowCells * array.CellBytes);
        }
    }
}
