using System.Text;
using Dewstone.Jobs.Emission;
using Dewstone.Model.Lattices;
using Dewstone.Model.Results;
using Dewstone.Reading.Job;

namespace Dewstone.Jobs.Tests.Emission;

public sealed class FieldFileTests
{
    [Fact]
    public void Predicted_field_comes_back_cell_by_cell()
    {
        MoistureResult moisture = Wavy(31, 17, 23);
        EmittedFile file = PredictedFieldEmitter.Emit(moisture, new Parallelism(1));

        Assert.True(VtiReader.TryRead(file.Bytes, out FieldImage? image, out string fault), fault);
        ushort[] waterCement = image!.Find<ushort>("water_cement")!;
        Assert.Equal((31, 17, 23), (image.Nx, image.Ny, image.Nz));
        Assert.Equal(moisture.Grid.Origin, image.Origin);
        Assert.Equal(moisture.Grid.CellMetres, image.Spacing.X);
        Assert.Equal(moisture.Grid.CellHeightMetres, image.Spacing.Z);
        Assert.Equal(0.0001, image.Remarks["water_cement_step"]);
        Assert.Equal(moisture.Hardened, image.Find<byte>("hardened"));
        for (int cell = 0; cell < moisture.Grid.Count; cell++)
        {
            Assert.InRange(waterCement[cell] * image.Remarks["water_cement_step"] - moisture.WaterCement(cell), -0.5001e-4, 0.5001e-4);
        }
    }

    [Fact]
    public void Raw_field_comes_back_bit_by_bit()
    {
        MoistureResult moisture = Wavy(40, 33, 20);

        Assert.True(VtiReader.TryRead(RawFieldEmitter.Emit(moisture, new Parallelism(2)).Bytes, out FieldImage? image, out _));
        Assert.Equal(moisture.VolumetricWaterContent, image!.Find<float>("volumetric_water_content"));
    }

    [Fact]
    public void Predicted_field_has_the_same_bytes_with_any_number_of_threads()
    {
        MoistureResult moisture = Wavy(64, 64, 40);
        byte[] one = PredictedFieldEmitter.Emit(moisture, new Parallelism(1)).Bytes.ToArray();

        Assert.Equal(one, PredictedFieldEmitter.Emit(moisture, new Parallelism(2)).Bytes.ToArray());
        Assert.Equal(one, PredictedFieldEmitter.Emit(moisture, new Parallelism(5)).Bytes.ToArray());
    }

    [Fact]
    public void Water_cement_beyond_sixteen_bits_is_held_at_the_most()
    {
        MoistureResult moisture = Wavy(4, 4, 4);
        moisture.VolumetricWaterContent[7] = 1000.0f;

        VtiReader.TryRead(PredictedFieldEmitter.Emit(moisture, new Parallelism(1)).Bytes, out FieldImage? image, out _);

        Assert.Equal(ushort.MaxValue, image!.Find<ushort>("water_cement")![7]);
    }

    [Fact]
    public void Head_of_the_file_is_what_viewers_expect()
    {
        string text = Encoding.Latin1.GetString(PredictedFieldEmitter.Emit(Wavy(4, 4, 4), new Parallelism(1)).Bytes.Span);

        Assert.StartsWith(
            """
            <?xml version="1.0"?>
            <VTKFile type="ImageData" version="1.0" byte_order="LittleEndian" header_type="UInt64" compressor="vtkZLibDataCompressor">
              <ImageData WholeExtent="0 4 0 4 0 4" Origin="0.1 0.05 0" Spacing="0.0125 0.0125 0.00625">
                <FieldData>
                  <DataArray type="Float64" Name="water_cement_step" NumberOfTuples="1" format="ascii">0.0001</DataArray>
                </FieldData>
                <Piece Extent="0 4 0 4 0 4">
                  <CellData Scalars="water_cement">
                    <DataArray type="UInt16" Name="water_cement" format="appended" offset="0"/>
            """,
            text, StringComparison.Ordinal);
        Assert.EndsWith("\n  </AppendedData>\n</VTKFile>\n", text, StringComparison.Ordinal);
    }

    [Fact]
    public void Damaged_files_are_refused_with_a_reason()
    {
        byte[] sound = PredictedFieldEmitter.Emit(Wavy(20, 20, 20), new Parallelism(1)).Bytes.ToArray();
        int data = sound.AsSpan().IndexOf("\n   _"u8) + 5;
        Assert.False(VtiReader.TryRead(Array.Empty<byte>(), out _, out string empty));
        Assert.Equal("it has no raw appended data", empty);
        Assert.False(VtiReader.TryRead(sound.AsMemory(0, data + 100), out _, out string cut));
        Assert.Equal("its data ends too early", cut);
        Assert.False(VtiReader.TryRead(Changed(sound, "0 20 0 20 0 20", "0 20 0 20 0 21"), out _, out string sizes));
        Assert.Equal("the sizes of its blocks do not agree with its cells", sizes);
        Assert.False(VtiReader.TryRead(Changed(sound, "0 20 0 20 0 20", "0 99999 0 99999 0 99999"), out _, out string many));
        Assert.Equal("it claims more cells than a bin can have", many);

        byte[] flipped = [.. sound];
        flipped[data + 8 * 4 + 400] ^= 0x10;
        Assert.False(VtiReader.TryRead(flipped, out _, out string damage));
        Assert.NotEmpty(damage);
    }

    [Fact]
    public void Random_damage_never_escapes_as_an_exception()
    {
        byte[] sound = PredictedFieldEmitter.Emit(Wavy(12, 12, 12), new Parallelism(1)).Bytes.ToArray();
        for (int i = 0; i < 3000; i++)
        {
            byte[] damaged = [.. sound];
            damaged[i * 7919 % sound.Length] ^= (byte)(1 << (i % 8));
            VtiReader.TryRead(damaged, out FieldImage? image, out string fault);

            Assert.Equal(image is null, fault.Length > 0);
        }
    }

    private static byte[] Changed(byte[] file, string from, string to) =>
        Encoding.Latin1.GetBytes(Encoding.Latin1.GetString(file).Replace(from, to, StringComparison.Ordinal));

    /// <summary>A field with a dry part, a cliff and a smooth wet part, as a bed has.</summary>
    internal static MoistureResult Wavy(int nx, int ny, int nz)
    {
        CellGrid grid = CellGrid.Over(Samples.Lattice, 4) with { Nx = nx, Ny = ny, Nz = nz, CellHeightMetres = 0.00625 };
        grid = grid with { Origin = new Dewstone.Model.Quantities.Point3(0.1, 0.05, 0.0) };
        float[] content = new float[grid.Count];
        byte[] hardened = new byte[grid.Count];
        for (int cell = 0; cell < content.Length; cell++)
        {
            (int x, int y, int z) = (cell % nx, cell / nx % ny, cell / (nx * ny));
            double wave = 0.2 + 0.1 * Math.Sin(0.37 * x) * Math.Cos(0.29 * y + 0.21 * z);
            double d = Math.Abs(x - nx / 2.0) / nx + Math.Abs(y - ny / 2.0) / ny;
            content[cell] = d < 0.4 ? (float)wave : 0.0f;
            hardened[cell] = (byte)(content[cell] >= 0.0935f ? 1 : 0);
        }

        return new MoistureResult
        {
            Grid = grid,
            VolumetricWaterContent = content,
            Hardened = hardened,
            BinderKilogramsPerCubicMetre = Samples.Binder,
            LiquidKilogramsPerCubicMetre = 1000.0,
            Porosity = 0.38,
            ThresholdContent = 0.0935,
            InjectedCubicMetres = 0.0,
            RefusedCubicMetres = 0.0,
            FieldCubicMetres = 0.0,
            Refused = [],
            LargestContent = 0.3,
            TimeSteps = 0,
            CellUpdates = 0,
        };
    }
}
