using System.Buffers.Binary;
using System.Globalization;
using System.IO.Compression;
using System.Runtime.InteropServices;
using System.Text;
using System.Xml;
using System.Xml.Linq;
using Dewstone.Model.Quantities;

namespace Dewstone.Reading.Job;

/// <summary>
/// Reads a field file of a job folder: VTK XML image data ("VTK XML Formats", Kitware wiki) as we write it, that is cell data of
/// types UInt8, UInt16 and Float32, raw appended, little-endian, packed with zlib under 64-bit block headers. Other kinds are refused.
/// </summary>
public static class VtiReader
{
    // A file is trusted no further than this: a whole bin at 16 cells a voxel side has about 300 million cells.
    private const long MostCells = 1L << 29;
    private const int LongestHead = 1 << 20;

    // Deflate cannot pack tighter than 1032 to 1 (zlib's technical notes, from memory): a claim beyond that is false and nothing is made so large.
    private const long MostPacking = 1100;
    private static readonly byte[] AppendedMark = "<AppendedData encoding=\"raw\">"u8.ToArray();

    /// <summary>Reads a field file.</summary>
    /// <param name="file">Its bytes.</param>
    /// <param name="image">The cells.</param>
    /// <param name="fault">What is wrong with it, one line; empty when it was read.</param>
    /// <returns>False when it is no field file or is damaged.</returns>
    public static bool TryRead(ReadOnlyMemory<byte> file, out FieldImage? image, out string fault)
    {
        image = null;
        fault = "";
        try
        {
            image = Read(file);
            return true;
        }
        catch (Exception damage) when (damage is InvalidDataException or XmlException or FormatException or OverflowException or DecoderFallbackException)
        {
            fault = damage.Message.ReplaceLineEndings(" ");
            return false;
        }
    }

    private static FieldImage Read(ReadOnlyMemory<byte> file)
    {
        int mark = file.Span[..Math.Min(file.Length, LongestHead)].IndexOf(AppendedMark);
        int underscore = mark < 0 ? -1 : file.Span[mark..].IndexOf((byte)'_');
        if (underscore < 0)
        {
            throw new InvalidDataException("it has no raw appended data");
        }

        XElement root = Head(file.Span[..mark]);
        Expect(root, "type", "ImageData");
        Expect(root, "byte_order", "LittleEndian");
        Expect(root, "header_type", "UInt64");
        Expect(root, "compressor", "vtkZLibDataCompressor");
        XElement frame = Child(root, "ImageData");
        int[] extent = Words(frame, "WholeExtent", word => int.Parse(word, NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture), 6);
        double[] origin = Words(frame, "Origin", Number, 3);
        double[] spacing = Words(frame, "Spacing", Number, 3);
        (int nx, int ny, int nz) = (Cells(extent, 0), Cells(extent, 1), Cells(extent, 2));
        if ((long)nx * ny > MostCells || (long)nx * ny * nz > MostCells)
        {
            throw new InvalidDataException("it claims more cells than a bin can have");
        }

        ReadOnlyMemory<byte> data = file[(mark + underscore + 1)..];
        if ((long)nx * ny * nz > MostPacking * data.Length)
        {
            throw new InvalidDataException("its data ends too early");
        }

        Dictionary<string, Array> arrays = [];
        foreach (XElement array in Child(Child(frame, "Piece"), "CellData").Elements("DataArray"))
        {
            Expect(array, "format", "appended");
            long offset = long.Parse(Word(array, "offset"), NumberStyles.None, CultureInfo.InvariantCulture);
            arrays[Word(array, "Name")] = Values(Word(array, "type"), data, offset, nx * ny * nz);
        }

        return new FieldImage
        {
            Nx = nx,
            Ny = ny,
            Nz = nz,
            Origin = new Point3(origin[0], origin[1], origin[2]),
            Spacing = new Size3(spacing[0], spacing[1], spacing[2]),
            Arrays = arrays,
            Remarks = (frame.Element("FieldData")?.Elements("DataArray") ?? []).DistinctBy(remark => Word(remark, "Name")).ToDictionary(remark => Word(remark, "Name"), remark => Number(remark.Value.Trim())),
        };
    }

    /// <summary>The XML before the data, closed again so that it can be parsed: raw data is not XML.</summary>
    private static XElement Head(ReadOnlySpan<byte> head)
    {
        string text = new UTF8Encoding(false, throwOnInvalidBytes: true).GetString(head) + "</VTKFile>";
        XmlReaderSettings settings = new() { DtdProcessing = DtdProcessing.Prohibit, XmlResolver = null };
        using XmlReader reader = XmlReader.Create(new StringReader(text), settings);
        return XElement.Load(reader);
    }

    private static Array Values(string type, ReadOnlyMemory<byte> data, long offset, int cells)
    {
        switch (type)
        {
            case "UInt8":
                byte[] bytes = new byte[cells];
                Unpack(data, offset, bytes);
                return bytes;
            case "UInt16":
                ushort[] shorts = new ushort[cells];
                Unpack(data, offset, MemoryMarshal.AsBytes(shorts.AsSpan()));
                return shorts;
            case "Float32":
                float[] floats = new float[cells];
                Unpack(data, offset, MemoryMarshal.AsBytes(floats.AsSpan()));
                return floats;
            default:
                throw new InvalidDataException($"its arrays may not be of type {type}");
        }
    }

    private static void Unpack(ReadOnlyMemory<byte> data, long offset, Span<byte> into)
    {
        long blocks = Header(data, offset, 0), whole = Header(data, offset, 1), last = Header(data, offset, 2);
        bool fits = whole > 0 && last >= 0 && last < whole && blocks == (into.Length + whole - 1) / whole && last == into.Length % whole;
        if (!fits)
        {
            throw new InvalidDataException("the sizes of its blocks do not agree with its cells");
        }

        long at = offset + 8 * (3 + blocks);
        for (int block = 0; block < blocks; block++)
        {
            long packed = Header(data, offset, 3 + block);
            if (packed <= 0 || packed > data.Length - at)
            {
                throw new InvalidDataException("its data ends too early");
            }

            int length = (int)Math.Min(whole, into.Length);
            UnpackBlock(data.Slice((int)at, (int)packed), into[..length]);
            into = into[length..];
            at += packed;
        }
    }

    private static void UnpackBlock(ReadOnlyMemory<byte> packed, Span<byte> into)
    {
        using MemoryStream source = MemoryMarshal.TryGetArray(packed, out ArraySegment<byte> bytes)
            ? new MemoryStream(bytes.Array!, bytes.Offset, bytes.Count, writable: false)
            : new MemoryStream(packed.ToArray(), writable: false);
        using ZLibStream zlib = new(source, CompressionMode.Decompress);
        int got = zlib.ReadAtLeast(into, into.Length, throwOnEndOfStream: false);
        if (got != into.Length || zlib.ReadByte() >= 0)
        {
            throw new InvalidDataException("a block of it has not the size it states");
        }
    }

    private static long Header(ReadOnlyMemory<byte> data, long offset, long place)
    {
        long at = offset + 8 * place;
        if (offset < 0 || at > data.Length - 8)
        {
            throw new InvalidDataException("its data ends too early");
        }

        return BinaryPrimitives.ReadInt64LittleEndian(data.Span[(int)at..]);
    }

    private static int Cells(int[] extent, int axis)
    {
        int cells = extent[2 * axis + 1];
        return extent[2 * axis] == 0 && cells > 0 ? cells : throw new InvalidDataException("its extent does not begin at 0");
    }

    private static void Expect(XElement element, string attribute, string value)
    {
        if (Word(element, attribute) != value)
        {
            throw new InvalidDataException($"its {attribute} is not {value}");
        }
    }

    private static string Word(XElement element, string attribute) =>
        element.Attribute(attribute)?.Value ?? throw new InvalidDataException($"{element.Name.LocalName} has no {attribute}");

    private static XElement Child(XElement element, string name) =>
        element.Element(name) ?? throw new InvalidDataException($"{element.Name.LocalName} has no {name}");

    private static T[] Words<T>(XElement element, string attribute, Func<string, T> parse, int count)
    {
        T[] words = [.. Word(element, attribute).Split(' ', StringSplitOptions.RemoveEmptyEntries).Select(parse)];
        return words.Length == count ? words : throw new InvalidDataException($"its {attribute} has not {count} numbers");
    }

    private static double Number(string word)
    {
        double value = double.Parse(word, NumberStyles.Float, CultureInfo.InvariantCulture);
        return double.IsFinite(value) ? value : throw new InvalidDataException($"{word} is not a finite number");
    }
}
