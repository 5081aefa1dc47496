using Dewstone.Compute.Wetting;
using Dewstone.Model.Results;

namespace Dewstone.Compute.Tests.Wetting;

/// <summary>A layer in two goes: what set of the first is a wall to the second.</summary>
public sealed class SetMixTests
{
    private const int Side = 8;
    private const double Edge = 0.00625;

    // By definition of a tight wall: half a box beside set mix moves as a box of that half alone. Walls across x, y and z.
    [Theory]
    [InlineData(2, 1, 1)]
    [InlineData(1, 2, 1)]
    [InlineData(1, 1, 2)]
    public void Half_a_box_beside_set_mix_moves_as_if_alone(int x, int y, int z)
    {
        MoisturePotential law = MoisturePotential.Of(ReferenceMix.Bed(600.0).Law, ReferenceMix.Bed(600.0).Porosity);
        TransportStepper alone = new(Side, Side, Side, Edge, Edge, law, 1), beside = new(x * Side, y * Side, z * Side, Edge, Edge, law, 2);
        beside.Walls = new SetMix(beside, law);
        int offX = (x - 1) * Side, offY = (y - 1) * Side, offZ = (z - 1) * Side;
        void Wet(TransportStepper field, int i, int j, int k, float content)
        {
            field.Content[(k * field.Ny + j) * field.RowStride + i] = content;
            field.Touch(j, k, content);
        }

        for (int cell = 0; cell < Side * Side * Side; cell++)
        {
            int i = cell % Side, j = cell / Side % Side, k = cell / Side / Side;
            Wet(beside, i, j, k, 0.3f);
        }

        beside.Walls.Mark(0, z * Side, 0.1f);
        beside.Walls.Set(0, z * Side);
        foreach ((int i, int j, int k) in ((int, int, int)[])[(0, 0, 0), (1, 2, 1), (4, 0, 3), (0, 5, 6)])
        {
            Wet(alone, i, j, k, 0.38f);
            Wet(beside, i + offX, j + offY, k + offZ, 0.38f);
        }

        for (int step = 0; step < 400; step++)
        {
            double seconds = alone.StableStepSeconds();
            alone.Step(seconds);
            beside.Step(seconds);
        }

        beside.Walls.Release(z * Side);
        double sum = 0.0;
        for (int cell = 0; cell < Side * Side * Side; cell++)
        {
            int i = cell % Side, j = cell / Side % Side, k = cell / Side / Side;
            float one = alone.Content[(k * Side + j) * alone.RowStride + i];
            Assert.Equal(one, beside.Content[((k + offZ) * beside.Ny + j + offY) * beside.RowStride + i + offX], 1e-6f);
            Assert.Equal(0.3f, beside.Content[(k * beside.Ny + j) * beside.RowStride + i]);
            sum += one;
        }

        Assert.Equal(4 * 0.38, sum, 1e-5);
        Assert.True(alone.Content[(Side - 1) * alone.RowStride] > 0f);
    }

    // 35 mL at each of two needles a pitch apart, the second after the first has set: water is kept, the first ball stays as it was, the second
    // ends at it.
    [Fact]
    public void Second_go_keeps_the_water_and_ends_at_what_has_set()
    {
        SmallJob both = new SmallJob(6, 5, 5, 6).Dose(2, 2, 2, 35.0).Dose(3, 2, 2, 35.0);
        MoistureResult together = both.Solve();
        MoistureResult first = new SmallJob(6, 5, 5, 6).Dose(2, 2, 2, 35.0).Solve(), split = WettingSolver.Solve(Stopped(both, 1500.0), new Parallelism(2), null, TestContext.Current.CancellationToken);

        Assert.Equal(split.InjectedCubicMetres, split.FieldCubicMetres, 1e-6 * split.InjectedCubicMetres);
        Assert.InRange(split.LargestContent, 0.1, split.Porosity * (1.0 + 1e-6));
        Assert.Empty(split.Refused);
        for (int cell = 0; cell < first.Hardened.Length; cell++)
        {
            if (first.Hardened[cell] == 1)
            {
                Assert.Equal(first.VolumetricWaterContent[cell], split.VolumetricWaterContent[cell]);
            }
        }

        int set = split.Hardened.Count(cell => cell == 1);
        Assert.True(set > first.Hardened.Count(cell => cell == 1) * 1.5, $"{set}");
        Assert.NotEqual(together.Hardened, split.Hardened);
    }

    // Far apart the second needle knows nothing of the first.
    [Fact]
    public void Second_go_far_away_is_a_ball_of_its_own()
    {
        MoistureResult alone = new SmallJob(11, 5, 5, 6).Dose(8, 2, 2, 35.0).Solve();
        MoistureResult split = WettingSolver.Solve(
            Stopped(new SmallJob(11, 5, 5, 6).Dose(2, 2, 2, 35.0).Dose(8, 2, 2, 35.0), 1500.0), new Parallelism(2), null, TestContext.Current.CancellationToken);
        for (int cell = 0; cell < alone.Hardened.Length; cell++)
        {
            if (alone.VolumetricWaterContent[cell] > 0.01f)
            {
                Assert.Equal(alone.VolumetricWaterContent[cell], split.VolumetricWaterContent[cell], 1e-4f);
            }
        }
    }

    // The shorter the stop, the less it changes.
    [Fact]
    public void Stop_of_a_moment_is_nearly_no_stop()
    {
        SmallJob both = new SmallJob(6, 5, 5, 6).Dose(2, 2, 2, 35.0).Dose(3, 2, 2, 35.0);
        int together = both.Solve().Hardened.Count(cell => cell == 1);
        int Set(double pause) => WettingSolver.Solve(Stopped(both, pause), new Parallelism(2), null, TestContext.Current.CancellationToken).Hardened.Count(cell => cell == 1);

        Assert.InRange(Set(1.0), 0.99 * together, 1.01 * together);
    }

    // The dose at the higher x comes after a stop, with pumps that run no time.
    private static WettingProblem Stopped(SmallJob job, double pauseSeconds)
    {
        WettingProblem problem = job.Problem();
        int last = Array.FindLastIndex(problem.DosesCubicMetres, dose => dose > 0.0);
        problem.Schedule.DoseStartSeconds[last] = pauseSeconds;
        problem.Schedule.ResumedSeconds = pauseSeconds;
        return problem;
    }
}
