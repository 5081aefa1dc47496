using Dewstone.Compute.Numerics;
using Dewstone.Jobs.Emission;
using Dewstone.Jobs.Emission.Pictures;
using Dewstone.Model.Description;
using Dewstone.Model.Lattices;
using Dewstone.Model.Quantities;
using Dewstone.Model.Results;

namespace Dewstone.Jobs.Tests.Emission.Pictures;

/// <summary>
/// Compiled jobs made up from formulas, for pictures: the wanted solid from signed distances, the water from the distance to its surface,
/// so that what a picture must show at a place is known.
/// </summary>
internal static class SampleJob
{
    public const double Pitch = 0.05;
    private const double Threshold = 0.0935;

    private static readonly Lazy<IReadOnlyList<EmittedFile>> BallSet = new(() => Pictures(Ball()));

    /// <summary>The predicted solid of a job.</summary>
    public static HardenedSurface Surface(CompiledJob job) => HardenedSurface.Of(job.Moisture, job.Description.Mix.Wetting, new Parallelism(2));

    /// <summary>All pictures of a job: those of the unit, doubt where there are trials, plates.</summary>
    public static IReadOnlyList<EmittedFile> Pictures(CompiledJob job, int threads = 2, CancellationToken cancellation = default)
    {
        Parallelism parallelism = new(threads);
        HardenedSurface surface = Surface(job);
        return [.. PictureSet.OfUnit(job, surface, parallelism, cancellation), .. PictureSet.Doubt(job), .. PictureSet.Plates(job, surface, parallelism, cancellation)];
    }

    /// <summary>The pictures of the ball, drawn once for all tests.</summary>
    public static IReadOnlyList<EmittedFile> BallPictures => BallSet.Value;

    /// <summary>The 900 mm block: two crossing tunnels of 340 x 300 mm at 270 mm, twelve niches, a foot of 100 mm, one loose layer below.</summary>
    public static CompiledJob Block(int cells = 8) =>
        Make("Wrack block", new Size3(0.9, 0.9, 0.9), new Lattice
        {
            Columns = 22,
            Rows = 22,
            Layers = 19,
            FirstColumn = 1,
            FirstRow = 1,
            PitchMetres = Pitch,
            LayerMetres = Pitch,
            OriginXMetres = 0.025,
            OriginYMetres = 0.025,
            TipDepthMetres = 0.025,
            BinXMetres = 1.2,
            BinYMetres = 1.2,
            UnderLayers = 1,
        }, new Point3(0.15, 0.15, 0.05), cells, BlockDistance);

    /// <summary>A ball of 140 mm diameter resting on the loose layer, on five by five positions and four layers.</summary>
    public static CompiledJob Ball(int cells = 4) =>
        Make("Ball", new Size3(0.15, 0.15, 0.15), new Lattice
        {
            Columns = 5,
            Rows = 5,
            Layers = 4,
            FirstColumn = 2,
            FirstRow = 2,
            PitchMetres = Pitch,
            LayerMetres = Pitch,
            OriginXMetres = 0.025,
            OriginYMetres = 0.025,
            TipDepthMetres = 0.025,
            BinXMetres = 0.5,
            BinYMetres = 0.5,
            UnderLayers = 1,
        }, new Point3(0.15, 0.15, 0.05), cells, p => (p - new Point3(0.075, 0.075, 0.075)).Norm - 0.07);

    private static CompiledJob Make(string name, Size3 box, Lattice lattice, Point3 corner, int cells, Func<Point3, double> distance)
    {
        CellGrid grid = CellGrid.Over(lattice, cells);
        float[] fraction = new float[grid.Count], content = new float[grid.Count];
        byte[] hardened = new byte[grid.Count];
        Parallel.For(0, grid.Nz, new ParallelOptions { MaxDegreeOfParallelism = 2 }, z =>
        {
            for (int y = 0; y < grid.Ny; y++)
            {
                for (int x = 0; x < grid.Nx; x++)
                {
                    int i = (z * grid.Ny + y) * grid.Nx + x;
                    Point3 printer = grid.Centre(x, y, z);
                    double d = distance(printer - corner);
                    fraction[i] = (float)Math.Clamp(0.5 - d / grid.CellMetres, 0.0, 1.0);
                    content[i] = (float)Content(d + Scallop(printer));
                    hardened[i] = content[i] >= Threshold ? (byte)1 : (byte)0;
                }
            }
        });
        DosePlan doses = Doses(lattice, p => distance(p - corner));
        MoistureResult moisture = new()
        {
            Grid = grid,
            VolumetricWaterContent = content,
            Hardened = hardened,
            BinderKilogramsPerCubicMetre = 425.0,
            LiquidKilogramsPerCubicMetre = 1000.0,
            Porosity = 0.384,
            ThresholdContent = Threshold,
            InjectedCubicMetres = doses.TotalCentiMillilitres * 1e-8,
            RefusedCubicMetres = 0.0,
            FieldCubicMetres = 0.0,
            Refused = [],
            LargestContent = 0.25,
            TimeSteps = 0,
            CellUpdates = 0,
        };
        return new CompiledJob
        {
            Description = Description(name, box),
            Registration = new Registration { Wish = new PlacementWish(), Fixed = true },
            Placement = new UnitPlacement { QuarterTurns = 0, Corner = corner, UnitBox = box },
            Lattice = lattice,
            Target = new TargetField { Grid = grid, Fraction = fraction, CubicMetres = 0.0 },
            Doses = doses,
            Timeline = new Timeline { Steps = [] },
            Schedule = new DoseSchedule { LayerSpreadSeconds = [], DoseStartSeconds = [], PumpSeconds = [] },
            Moisture = moisture,
            Solid = new SolidSummary { TargetCubicMetres = 0, HardenedCubicMetres = 0, ShapeMatch = 1, WaterInHardenedCubicMetres = 0, MeanWaterCement = 0.5, LargestWaterCement = 0.6 },
            Dosing = Samples.DosingOf(doses),
            Estimate = NoEstimate(),
            Requirements = [],
            Findings = [],
            Inputs = [],
            ToolVersion = "0.1.0",
        };
    }

    // The cube of the content falls straight through the surface, as a wetting front's does; deep inside it rests at water/cement 0.55.
    private static double Content(double distance) =>
        Math.Min(0.234 + 0.03 * Math.Sin(40.0 * distance), Threshold * Math.Cbrt(Math.Max(0.0, 1.0 - distance / 0.006)));

    private static double Scallop(Point3 p) =>
        -0.004 * Math.Cos(2.0 * Math.PI * (p.X - 0.025) / Pitch) * Math.Cos(2.0 * Math.PI * (p.Y - 0.025) / Pitch) * Math.Cos(2.0 * Math.PI * (p.Z - 0.025) / Pitch)
        - 0.003 * Math.Sin(11.0 * p.X + 5.0 * p.Z) * Math.Sin(9.0 * p.Y);

    private static double BlockDistance(Point3 p)
    {
        double body = RoundedBox(p.X - 0.45, p.Y - 0.45, p.Z - 0.45, 0.45, 0.45, 0.45, 0.05);
        double openings = Math.Min(
            RoundedBox(0.0, p.Y - 0.45, p.Z - 0.27, 1.0, 0.17, 0.15, 0.04), RoundedBox(p.X - 0.45, 0.0, p.Z - 0.27, 0.17, 1.0, 0.15, 0.04));
        foreach (Point3 niche in Niches)
        {
            openings = Math.Min(openings, (p - niche).Norm - 0.068);
        }

        double foot = Math.Max(body, p.Z - 0.1);
        return Math.Min(Math.Max(body, -openings), foot);
    }

    private static readonly Point3[] Niches =
    [
        new(0.2, 0.02, 0.62), new(0.47, 0.01, 0.74), new(0.72, 0.03, 0.6), new(0.89, 0.22, 0.7), new(0.88, 0.5, 0.58), new(0.9, 0.74, 0.76),
        new(0.15, 0.88, 0.7), new(0.6, 0.89, 0.64), new(0.01, 0.3, 0.6), new(0.02, 0.66, 0.72), new(0.3, 0.35, 0.89), new(0.66, 0.6, 0.88),
    ];

    private static double RoundedBox(double x, double y, double z, double halfX, double halfY, double halfZ, double radius)
    {
        double qx = Math.Abs(x) - halfX + radius, qy = Math.Abs(y) - halfY + radius, qz = Math.Abs(z) - halfZ + radius;
        double ox = Math.Max(qx, 0.0), oy = Math.Max(qy, 0.0), oz = Math.Max(qz, 0.0);
        return Math.Sqrt(ox * ox + oy * oy + oz * oz) + Math.Min(Math.Max(qx, Math.Max(qy, qz)), 0.0) - radius;
    }

    private static DosePlan Doses(Lattice lattice, Func<Point3, double> distance)
    {
        int[] steps = new int[lattice.Count], centi = new int[lattice.Count];
        for (int k = 0; k < lattice.Layers; k++)
        {
            for (int j = 0; j < lattice.Rows; j++)
            {
                for (int i = 0; i < lattice.Columns; i++)
                {
                    int at = lattice.Index(i, j, k);
                    double share = Math.Clamp(0.5 - distance(lattice.Tip(i, j, k)) / 0.05, 0.0, 1.0);
                    steps[at] = share < 0.15 ? 0 : (int)(share * 340.0);
                    centi[at] = steps[at] * 10;
                }
            }
        }

        return new DosePlan { Lattice = lattice, Steps = steps, CentiMillilitres = centi };
    }

    private static JobDescription Description(string name, Size3 box) => new()
    {
        Unit = new ReefUnit
        {
            Name = name,
            OuterBox = box,
            Rounding = Length.FromMillimetres(50),
            Require = new Requirements { WaterCement = new WaterCementBand(0.25, 0.6, 0.95) },
        },
        Mix = new DryMix
        {
            Name = "Estuary mix",
            Origin = new MixOrigin(MixOriginKind.Assumed, ""),
            Currency = "EUR",
            Solids = [],
            LooseDensity = new Density(1700),
            Liquid = new Liquid { Density = new Density(1000) },
            Wetting = new PowerLaw { AtSaturation = new Diffusivity(3.2e-6), Exponent = 4 },
            Hardening = new Hardening { WaterCement = 0.22, Window = new Duration(600) },
        },
        Printer = new Printer
        {
            Name = "Yard printer",
            Bin = new Bin(new Length(1.2), new Length(1.2), new Length(1.1)),
            Grid = new NeedleGrid { Pitch = new Length(0.05), LayerHeight = new Length(0.05), OriginX = new Length(0.025), OriginY = new Length(0.025) },
            Head = new Head { Columns = 24, Rows = 24 },
            Needle = new Needle
            {
                TipDepth = new Length(0.025),
                Flow = FlowRate.FromMillilitresPerSecond(4),
                Least = Volume.FromMillilitres(2),
                Most = Volume.FromMillilitres(44),
                Step = Volume.FromMillilitres(0.1),
            },
            Supply = new Supply(FlowRate.FromMillilitresPerSecond(2500), new Volume(0.4)),
            Timing = new MachineTiming { Spreading = new Duration(50), Move = new Duration(6), Plunge = new Duration(4), Hold = new Duration(1), Withdraw = new Duration(4) },
            LooseMix = new LooseMixHandling(new Mass(15), 0.92),
        },
        Needles = new NeedleTable { Needles = [new NeedleState { Column = 8, Row = 5, Condition = NeedleCondition.Blocked }] },
    };

    private static Estimate NoEstimate() => new()
    {
        SpreadKilograms = 0,
        HardenedDryKilograms = 0,
        ReusableKilograms = 0,
        LostKilograms = 0,
        FreshKilograms = 0,
        LiftKilograms = 0,
        DryKilograms = 0,
        SaturatedKilograms = 0,
        SubmergedKilograms = 0,
        WaterCubicMetres = 0,
        WaterByLayerCubicMetres = [],
        FlushCubicMetres = 0,
        BinderKilograms = 0,
        AdditiveKilograms = [],
        RecycledShare = 0,
        SavingAgainstFilledBox = 0,
        CarbonKilograms = 0,
        Cost = 0,
        Currency = "EUR",
        SetupSeconds = 0,
        PrintSeconds = 0,
        SecondsByAction = [],
    };
}
