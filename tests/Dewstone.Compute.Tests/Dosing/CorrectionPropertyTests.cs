using CsCheck;
using Dewstone.Compute.Dosing;
using Dewstone.Compute.Geometry;
using Dewstone.Compute.Sequencing;
using Dewstone.Compute.Wetting;
using Dewstone.Model.Description;
using Dewstone.Model.Lattices;
using Dewstone.Model.Quantities;
using Dewstone.Model.Results;

namespace Dewstone.Compute.Tests.Dosing;

/// <summary>What holds for the correction of any unit: small ones of 3 to 5 pitches a side, drawn from fixed seeds, on 4 cells a pitch all the way.</summary>
public sealed class CorrectionPropertyTests
{
    private const double Pitch = 0.0508;
    private const int Cells = 4;

    /// <summary>A rounded block of whole pitches with a round hollow and, when it has a width, a square tunnel along y; lengths in metres from its middle.</summary>
    private sealed record Piece(
        int Nx, int Ny, int Nz, double X, double Y, double Z, double Diameter, double TunnelX, double TunnelWidth, double Most, bool Shifted)
    {
        public JobDescription Job(int mirrorX = 1, int mirrorY = 1)
        {
            JobDescription job = Targets.SmallCube();
            double width = Nx * Pitch, depth = Ny * Pitch, height = Nz * Pitch;
            return job with
            {
                Unit = job.Unit with
                {
                    OuterBox = new Size3(width, depth, height),
                    Rounding = new Length(0.02),
                    Place = new PlacementWish { ShiftedLayers = Shifted },
                    Cavities =
                    [
                        new FormedCavity
                        {
                            Name = "hollow",
                            Form = new SphereForm
                            {
                                Centre = new Point3(width / 2 + mirrorX * X, depth / 2 + mirrorY * Y, height / 2 + Z), Diameter = new Length(Diameter),
                            },
                        },
                    ],
                    Tunnels = TunnelWidth < 0.03 ? [] :
                    [
                        new AxisTunnel
                        {
                            Name = "through", Along = Axis.Y, At = new Point3(width / 2 + mirrorX * TunnelX, 0.0, height / 2),
                            Section = new RectangularSection(new Length(TunnelWidth), new Length(TunnelWidth), new Length(0.0)),
                        },
                    ],
                },
                Printer = job.Printer with
                {
                    Head = job.Printer.Head with { CanShiftLayers = Shifted },
                    Needle = job.Printer.Needle with { Most = Volume.FromMillilitres(Most) },
                },
            };
        }
    }

    private static Piece Draw(uint seed, bool shifted)
    {
        Gen<Piece> gen = Gen.Select(
            Gen.Int[3, 5].Array[3], Gen.Double[-0.06, 0.06].Array[4], Gen.Double[0.05, 0.11], Gen.Double[0.0, 0.07], Gen.Double[25.0, 60.0],
            (sides, places, diameter, width, most) => new Piece(
                sides[0], sides[1], sides[2], places[0], places[1], places[2], diameter, places[3] / 2, width, most, shifted));
        return gen.Generate(new PCG(seed, 7), null, out _);
    }

    private static (DoseResult Doses, ReefShape Shape, PlacementResult Place) Solve(JobDescription job, int threads = 2)
    {
        PlacementResult place = Placer.Place(job, Cells);
        ReefShape shape = ReefShapeBuilder.Build(job.Unit).Shape;
        DoseSolverOptions options = new() { CoarseCells = Cells, FineCells = Cells, CoarseSolves = 3, FineSolves = 3 };
        return (DoseSolver.Solve(
            job, shape, place.Placement!, place.Lattice!, options, new Parallelism(threads), null, TestContext.Current.CancellationToken), shape, place);
    }

    /// <summary>Judged anew from the doses as delivered: no worse than any plain doses tried, and exactly the best of the history.</summary>
    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void Corrected_doses_of_any_unit_are_no_worse_than_plain_ones_on_their_cells(bool shifted)
    {
        int better = 0;
        for (uint seed = 0; seed < 12; seed++)
        {
            JobDescription job = Draw(seed, shifted).Job();
            (DoseResult result, ReefShape shape, PlacementResult place) = Solve(job);
            Lattice lattice = place.Lattice!;
            CorrectionLevel level = new(
                job, shape, place.Placement!, lattice, new DoseRounder(job, lattice), new ForwardModel(job, lattice, new Parallelism(1)), result.Nominal,
                new CorrectionRule(), Cells, new Parallelism(1), TestContext.Current.CancellationToken);

            double objective = level.Judge(result.Doses, TestContext.Current.CancellationToken);

            double plain = result.History.Where(step => step.Kind == DoseStepKind.Plain).Min(step => step.Objective);
            Assert.True(objective <= plain, $"seed {seed}: {plain} L -> {objective} L");
            Assert.Equal(result.History.Min(step => step.Objective), objective);
            better += objective < 0.98 * plain ? 1 : 0;
        }

        Assert.True(better >= 9, $"The correction gains 2 % on {better} of 12 units only.");
    }

    /// <summary>Every dose is none, or whole steps of 0.1 mL from the least to the most and to the pores; all of the water is in the bed to a millionth.</summary>
    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void Corrected_doses_of_any_unit_keep_the_limits_and_lose_no_water(bool shifted)
    {
        int atMost = 0;
        for (uint seed = 100; seed < 112; seed++)
        {
            Piece piece = Draw(seed, shifted);
            JobDescription job = piece.Job();
            (DoseResult result, _, PlacementResult place) = Solve(job);

            // Pores of a voxel at 1.02 times the loose density of the mix: 1 - 1.02 x 1700 x (0.25 / 3150 + 0.75 / 2650).
            double pores = (1.0 - 1.02 * 1700.0 * (0.25 / 3150.0 + 0.75 / 2650.0)) * Pitch * Pitch * Pitch * 1e6;
            double most = Math.Min(piece.Most, pores);
            double millilitres = 0.0;
            for (int i = 0; i < result.Doses.Steps.Length; i++)
            {
                double dose = result.Doses.CentiMillilitres[i] / 100.0;
                Assert.Equal(result.Doses.Steps[i] * 10, result.Doses.CentiMillilitres[i]);
                Assert.True(dose == 0.0 || (dose >= 2.0 && dose <= most), $"seed {seed}: {dose} mL, at most {most} mL");
                atMost += dose > most - 0.1 ? 1 : 0;
                millilitres += dose;
            }

            (_, DoseSchedule schedule) = TimelineBuilder.Build(job, place.Lattice!, result.Doses);
            BedProperties bed = BedProperties.From(job.Mix, job.LooseDensity, job.BedTemperature);
            MoistureResult moisture = WettingSolver.Solve(
                WettingProblem.Of(result.Doses, place.Cells!, schedule, bed), new Parallelism(1), null, TestContext.Current.CancellationToken);
            double field = 0.0;
            foreach (float content in moisture.VolumetricWaterContent)
            {
                field += (double)content * moisture.Grid.CellCubicMetres * 1e6;
            }

            Assert.Equal(millilitres, field, 1e-6 * millilitres);
        }

        Assert.True(atMost > 0, "No unit drives a dose to its limit, so the limits are not tried.");
    }

    /// <summary>Mirrored across x, across y, and across both: the doses mirrored, within one pump step.</summary>
    [Theory]
    [InlineData(-1, 1)]
    [InlineData(1, -1)]
    [InlineData(-1, -1)]
    public void Mirrored_unit_gets_mirrored_doses(int mirrorX, int mirrorY)
    {
        int differs = 0;
        for (uint seed = 200; seed < 208; seed++)
        {
            Piece piece = Draw(seed, shifted: false);
            DosePlan one = Solve(piece.Job()).Doses.Doses, other = Solve(piece.Job(mirrorX, mirrorY)).Doses.Doses;
            Lattice lattice = one.Lattice;
            for (int i = 0; i < lattice.Count; i++)
            {
                int x = i % lattice.Columns, y = i / lattice.Columns % lattice.Rows, layer = i / (lattice.Columns * lattice.Rows);
                int mirrored = lattice.Index(mirrorX > 0 ? x : lattice.Columns - 1 - x, mirrorY > 0 ? y : lattice.Rows - 1 - y, layer);
                Assert.True(
                    Math.Abs(one.Steps[i] - other.Steps[mirrored]) <= 1, $"seed {seed}, ({x}, {y}, {layer}): {one.Steps[i]} and {other.Steps[mirrored]} steps");
                differs += Math.Abs(one.Steps[i] - other.Steps[i]) > 1 ? 1 : 0;
            }
        }

        Assert.True(differs > 40, $"The units are all but their own mirror images: {differs} doses differ.");
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void One_two_and_three_threads_give_the_same_doses_and_history(bool shifted)
    {
        for (uint seed = 300; seed < 305; seed++)
        {
            JobDescription job = Draw(seed, shifted).Job();
            DoseResult one = Solve(job, 1).Doses;
            foreach (int threads in (int[])[2, 3])
            {
                DoseResult more = Solve(job, threads).Doses;
                Assert.Equal(one.Doses.Steps, more.Doses.Steps);
                Assert.Equal(one.Doses.CentiMillilitres, more.Doses.CentiMillilitres);
                Assert.Equal(one.History, more.History);
            }
        }
    }
}
