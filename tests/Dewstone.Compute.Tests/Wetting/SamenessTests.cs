using CsCheck;
using Dewstone.Compute.Wetting;
using Dewstone.Model.Description;
using Dewstone.Model.Quantities;
using Dewstone.Model.Results;

namespace Dewstone.Compute.Tests.Wetting;

/// <summary>Turned or mirrored doses give the turned or mirrored field to the last bit; neither threads nor the order of needles change one.</summary>
public sealed class SamenessTests
{
    private const int Side = 4;
    private const int Layers = 3;

    private delegate (int X, int Y) Turn(int x, int y, int side);

    public static TheoryData<string> Turns => ["mirror x", "mirror y", "transpose", "quarter turn", "half turn"];

    [Theory]
    [MemberData(nameof(Turns))]
    public void Turned_doses_give_the_turned_field(string name)
    {
        Turn turn = name switch
        {
            "mirror x" => (x, y, side) => (side - 1 - x, y),
            "mirror y" => (x, y, side) => (x, side - 1 - y),
            "transpose" => (x, y, _) => (y, x),
            "quarter turn" => (x, y, side) => (side - 1 - y, x),
            _ => (x, y, side) => (side - 1 - x, side - 1 - y),
        };
        foreach (BedProperties bed in Beds)
        {
            double[] doses = RandomDoses(3);
            MoistureResult plain = Job(doses, (x, y, _) => (x, y)).Solve(bed);
            MoistureResult turned = Job(doses, turn).Solve(bed);
            Assert.Equal(0, Differing(plain, turned, turn));
        }
    }

    // Eight-fold symmetric doses: the field is its own image under all of these.
    [Fact]
    public void Symmetric_doses_give_a_symmetric_field()
    {
        double[] doses = RandomDoses(11);
        MoistureResult result = new SmallJob(Side, Side, Layers)
            .DoseBlock(0, Side, 0, Layers, (x, y, k) => doses[k * 8 + Math.Min(x, Side - 1 - x) * 2 + Math.Min(y, Side - 1 - y)
                + Math.Min(y, Side - 1 - y) * 2 + Math.Min(x, Side - 1 - x)])
            .Layered().Solve();
        Assert.Equal(0, Differing(result, result, (x, y, side) => (side - 1 - x, y)));
        Assert.Equal(0, Differing(result, result, (x, y, side) => (side - 1 - y, x)));
        Assert.Equal(0, Differing(result, result, (x, y, _) => (y, x)));
    }

    // 96 x 96 x 96 cells, enough for the second, third and fourth thread to be used.
    [Fact]
    public void Threads_change_no_bit()
    {
        double[] doses = RandomDoses(5);
        SmallJob job = new SmallJob(12, 12, 12).DoseBlock(1, 11, 0, 10, (x, y, k) => doses[(x * 7 + y * 5 + k * 3) % doses.Length]).Layered();
        MoistureResult one = job.Solve(ReferenceMix.Bed(400.0));
        foreach (int threads in new[] { 2, 3, 4 })
        {
            MoistureResult more = job.Solve(ReferenceMix.Bed(400.0), threads);
            Assert.Equal(one.VolumetricWaterContent, more.VolumetricWaterContent);
            Assert.Equal(one.Hardened, more.Hardened);
            Assert.Equal(one.CellUpdates, more.CellUpdates);
            Assert.Equal(one.FieldCubicMetres, more.FieldCubicMetres);
        }
    }

    // Needles of a layer in any order: each fills its own voxel, so pouring them forwards, backwards and shuffled leaves the same field.
    [Fact]
    public void Order_of_needles_changes_no_bit()
    {
        double[] doses = RandomDoses(9);
        SmallJob job = new(Side, Side, Layers);
        int[] forwards = [.. Enumerable.Range(0, Side * Side)];
        int[] shuffled = [.. forwards.OrderBy(i => i * 7 % 16)];
        float[] expected = Pour(job, doses, forwards);
        Assert.NotEqual(forwards, shuffled);
        Assert.Equal(expected, Pour(job, doses, [.. forwards.Reverse()]));
        Assert.Equal(expected, Pour(job, doses, shuffled));
    }

    // A grid whose rows are no whole number of vectors takes the path with spare lanes: the same field as embedded in a wider, dry window.
    [Fact]
    public void Cells_of_an_odd_row_are_as_those_of_a_wide_one()
    {
        MoistureResult narrow = new SmallJob(3, 3, 3, 7).Dose(1, 1, 1, 20.0).Solve(ReferenceMix.Bed(100.0));
        MoistureResult wide = new SmallJob(5, 3, 3, 7).Dose(2, 1, 1, 20.0).Solve(ReferenceMix.Bed(100.0));
        for (int row = 0; row < narrow.Grid.Ny * narrow.Grid.Nz; row++)
        {
            Assert.Equal(
                narrow.VolumetricWaterContent.AsSpan(row * 21, 21).ToArray(), wide.VolumetricWaterContent.AsSpan(row * 35 + 7, 21).ToArray());
        }
    }

    private static BedProperties[] Beds { get; } =
    [
        ReferenceMix.Bed(),
        ReferenceMix.Bed() with { Law = new ExponentialLaw { AtSaturation = new Diffusivity(1.5e-5), Exponent = 8 } },
    ];

    private static double[] RandomDoses(uint seed) => Gen.Double[0.0, 45.0].Array[Side * Side * Layers].Generate(new PCG(seed, 1), null, out _);

    // 6 cells a pitch: 24 cells a row, of which the last vector is full or not, depending on the machine.
    private static SmallJob Job(double[] doses, Turn turn)
    {
        SmallJob job = new(Side, Side, Layers, 6);
        for (int i = 0; i < doses.Length; i++)
        {
            (int x, int y) = turn(i % Side, i / Side % Side, Side);
            job.Dose(x, y, i / (Side * Side), doses[i]);
        }

        return job.Layered();
    }

    private static int Differing(MoistureResult a, MoistureResult b, Turn turn)
    {
        int count = 0;
        int side = a.Grid.Nx;
        for (int i = 0; i < a.Grid.Count; i++)
        {
            (int x, int y) = turn(i % side, i / side % side, side);
            int image = (i / (side * side) * side + y) * side + x;
            bool isSame = BitConverter.SingleToInt32Bits(a.VolumetricWaterContent[i]) == BitConverter.SingleToInt32Bits(b.VolumetricWaterContent[image]);
            count += isSame && a.Hardened[i] == b.Hardened[image] ? 0 : 1;
        }

        return count;
    }

    private static float[] Pour(SmallJob job, double[] doses, int[] order)
    {
        BedProperties bed = ReferenceMix.Bed();
        TransportStepper field = new(
            job.Grid.Nx, job.Grid.Ny, job.Grid.Nz, job.Grid.CellMetres, job.Grid.CellHeightMetres, MoisturePotential.Of(bed.Law, bed.Porosity), 1);
        VoxelFill fill = new(job.Grid, job.Lattice.LayerMetres - job.Lattice.TipDepthMetres, field.RowStride);
        for (int round = 0; round < 2; round++)
        {
            foreach (int i in order)
            {
                double contents = doses[i] * 1e-6 / job.Grid.CellCubicMetres;
                fill.Pour(field, i % Side * 8, i / Side * 8, 8, contents, (float)bed.Porosity);
            }

            field.Step(field.StableStepSeconds());
        }

        return field.TakeContent();
    }
}
