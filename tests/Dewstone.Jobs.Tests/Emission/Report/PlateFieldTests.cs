using System.Buffers.Binary;
using System.IO.Compression;
using System.Text.Json;
using Dewstone.Jobs.Emission.Report;
using Dewstone.Jobs.Tests.Emission.Pictures;
using Dewstone.Model.Lattices;
using Dewstone.Model.Quantities;
using Dewstone.Model.Results;

namespace Dewstone.Jobs.Tests.Emission.Report;

public sealed class PlateFieldTests
{
    [Fact]
    public void Fields_unpack_to_inside_and_outside_of_both_solids()
    {
        CompiledJob job = SampleJob.Ball();
        PlateField field = PlateField.Of(job, SampleJob.Surface(job), new Parallelism(2));
        using MemoryStream bytes = new();
        using (ZLibStream stream = new(new MemoryStream(field.Packed), CompressionMode.Decompress))
        {
            stream.CopyTo(bytes);
        }

        byte[] both = bytes.ToArray();
        int count = job.Moisture.Grid.Count;
        Assert.Equal(count, field.Shape.Count);
        Assert.Equal(2 * count, both.Length);
        Assert.Contains((byte)1, job.Moisture.Hardened);
        for (int i = 0; i < count; i++)
        {
            Assert.Equal(job.Moisture.Hardened[i] == 1, both[i] >= 128);
            Assert.Equal(Math.Clamp(Math.Floor((job.Target.Fraction[i] - 0.5) * 254.0) + 128.0, 0.0, 255.0), both[count + i], 1.0);
        }
    }

    [Fact]
    public void Coarse_cells_hold_the_mean_of_theirs()
    {
        // Of a field that grows evenly, the mean of cells is the value at their middle, also where the last ones are fewer.
        CellGrid grid = SampleJob.Ball().Moisture.Grid;
        float[] values = new float[grid.Count];
        for (int i = 0; i < values.Length; i++)
        {
            values[i] = i % grid.Nx + 10 * (i / grid.Nx % grid.Ny) + 100 * (i / (grid.Nx * grid.Ny));
        }

        CoarseField field = CoarseField.Of(values, grid, 3, 1e6f, new Parallelism(2));

        Assert.Equal((7, 7, 6), (field.Shape.Nx, field.Shape.Ny, field.Shape.Nz)); // of 20 x 20 x 16
        Assert.Equal(3.0 * grid.CellMetres, field.Size.Width, 1e-12);
        Assert.Equal(111f, field.Values[0], 1e-3f);
        Assert.Equal(18.5f + 10f * 18.5f + 100f * 15f, field.Values[^1], 1e-2f);
        Assert.Equal(2.5f, CoarseField.Of(values, grid, 3, 2.5f, new Parallelism(1)).Values[^1]);
        Assert.Equal(1, CoarseField.TogetherForAtMost(grid, 6400));
        Assert.Equal(2, CoarseField.TogetherForAtMost(grid, 6399));
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void Positions_of_the_page_are_those_of_the_needles(bool shifted)
    {
        CompiledJob job = Samples.Job();
        Lattice lattice = job.Lattice with { ShiftedLayers = shifted };
        string text = (string)SamplePage.Of(job with { Lattice = lattice }).Part("plate").Attribute("data-geometry")!;
        JsonElement geometry = JsonDocument.Parse(text).RootElement;
        double[] tip = [.. geometry.GetProperty("tip").EnumerateArray().Select(number => number.GetDouble())];
        double pitch = geometry.GetProperty("pitch").GetDouble(), height = geometry.GetProperty("layer").GetDouble();
        int under = geometry.GetProperty("under").GetInt32();
        for (int k = 0; k < lattice.Layers; k++)
        {
            // As the script works it out: every other layer, counted from the unit's second, stands half a pitch aside.
            double aside = geometry.GetProperty("shifted").GetInt32() == 1 && ((k - under) & 1) != 0 ? pitch / 2.0 : 0.0;
            Point3 wanted = lattice.Tip(2, 1, k);
            Assert.Equal(wanted.X, tip[0] + 2 * pitch + aside, 1e-12);
            Assert.Equal(wanted.Y, tip[1] + pitch + aside, 1e-12);
            Assert.Equal(wanted.Z, tip[2] + k * height, 1e-12);
        }
    }

    [Fact]
    public void Doses_tell_blocked_and_left_out_positions_apart()
    {
        CompiledJob job = Samples.Job();
        CompiledJob aside = job with { Lattice = job.Lattice with { FirstColumn = -1 } };
        byte[] bytes = PlateField.Doses(aside, (i, j) => i == 2 && j == 1);
        uint At(int i, int j, int k) => BinaryPrimitives.ReadUInt32LittleEndian(bytes.AsSpan(4 * job.Lattice.Index(i, j, k)));

        Assert.Equal((uint)job.Doses.CentiMillilitres[job.Lattice.Index(1, 1, 1)], At(1, 1, 1));
        Assert.NotEqual(0u, At(1, 1, 1));
        Assert.Equal(uint.MaxValue - 1, At(2, 1, 1));
        Assert.Equal(uint.MaxValue, At(0, 1, 1));
        Assert.Equal(0u, At(3, 2, 0));
    }
}
