using Dewstone.Jobs.Emission;
using Dewstone.Model.Description;
using Dewstone.Model.Diagnostics;
using Dewstone.Model.Lattices;
using Dewstone.Model.Quantities;
using Dewstone.Model.Results;

namespace Dewstone.Jobs.Tests;

/// <summary>
/// A small compiled job, made by hand: 4 x 3 positions, one loose layer under two layers with water, 4 cells a voxel side, doses spread evenly
/// over their voxels. Consistent in every total, so that only what a test changes is wrong. All values invented.
/// </summary>
internal static class Samples
{
    public const double Binder = 425.0;

    public static NeedleAddressing OneStation { get; } = (i, j, _) => new NeedleAddress(1, i + 1, j + 1);

    public static WettingConstants Constants { get; } = new() { WindowSeconds = 600.0, ShotsPerDose = 4, StepShare = 0.9, StepsPerSetting = 4, LastStepStretch = 1.1 };

    public static EmissionSettings Settings { get; } = new() { Addressing = OneStation, Wetting = Constants, NameOfFile = file => Path.GetRelativePath("/yard", file) };

    public static Lattice Lattice { get; } = new()
    {
        Columns = 4,
        Rows = 3,
        Layers = 3,
        FirstColumn = 2,
        FirstRow = 1,
        PitchMetres = 0.05,
        LayerMetres = 0.05,
        OriginXMetres = 0.025,
        OriginYMetres = 0.025,
        TipDepthMetres = 0.025,
        BinXMetres = 0.6,
        BinYMetres = 0.4,
        UnderLayers = 1,
    };

    public static DryMix Mix { get; } = new()
    {
        Name = "Estuary mix",
        Origin = new MixOrigin(MixOriginKind.Assumed, ""),
        Currency = "EUR",
        Solids =
        [
            new Constituent
            {
                Name = "Portland cement", Share = 0.25, GrainDensity = new Density(3150.0), IsBinder = true, CarbonPerKilogram = 0.86,
                PricePerKilogram = 0.16,
            },
            new Constituent
            {
                Name = "quartz sand 0-2 mm", Share = 0.75, GrainDensity = new Density(2650.0), RecycledShare = 0.4, CarbonPerKilogram = 0.005,
                PricePerKilogram = 0.03,
            },
        ],
        LooseDensity = new Density(1700.0),
        Liquid = new Liquid { Density = new Density(1000.0), PricePerLitre = 0.003, Additives = [new Additive("thickener", 2.0)] },
        Wetting = new PowerLaw { AtSaturation = new Diffusivity(3.2e-6), Exponent = 4 },
        Hardening = new Hardening { WaterCement = 0.22, Window = new Duration(600.0) },
        Strength = new StrengthLaw(),
        ReuseLimit = 5,
        Uncertainty = new MixUncertainty(0.2, 0.05, 0.02),
    };

    public static Printer Printer { get; } = new()
    {
        Name = "Yard printer",
        Bin = new Bin(new Length(0.6), new Length(0.4), new Length(0.5)),
        Grid = new NeedleGrid
        {
            Pitch = new Length(0.05),
            LayerHeight = new Length(0.05),
            OriginX = new Length(0.025),
            OriginY = new Length(0.025),
            UnderLayers = 1,
        },
        Head = new Head { Columns = 12, Rows = 8, CanShiftLayers = true },
        Needle = new Model.Description.Needle
        {
            TipDepth = new Length(0.025),
            Flow = new FlowRate(4e-6),
            Least = new Volume(2e-6),
            Most = new Volume(44e-6),
            Step = new Volume(1e-7),
            Repeatability = 0.02,
            Drift = 0.05,
        },
        Supply = new Supply(new FlowRate(2.5e-3), new Volume(0.4)),
        Timing = new MachineTiming
        {
            Setup = new Duration(1200.0),
            Spreading = new Duration(50.0),
            Move = new Duration(6.0),
            Plunge = new Duration(4.0),
            Hold = new Duration(1.0),
            Withdraw = new Duration(4.0),
        },
        Flush = new Flush(new Duration(2.0), 2),
        LooseMix = new LooseMixHandling(new Mass(2.0), 0.92),
        MaxLift = new Mass(2500.0),
    };

    public static ReefUnit Unit { get; } = new()
    {
        Name = "Pebble",
        OuterBox = new Size3(0.1, 0.05, 0.1),
        Rounding = new Length(0.01),
        Blend = new Length(0.005),
        Relief = new Relief
        {
            Amplitude = new Length(0.002),
            ShortestLength = new Length(0.02),
            LongestLength = new Length(0.06),
            Faces = FaceSet.Sides | FaceSet.Top,
            Seed = 7,
        },
        Tunnels =
        [
            new AxisTunnel
            {
                Name = "east-west", Along = Axis.X, At = new Point3(0.0, 0.025, 0.03), Section = new RectangularSection(new Length(0.02), new Length(0.02), new Length(0.002)),
                Clear = new Length(0.015),
            },
            new PathTunnel
            {
                Name = "bend", Path = [new Point3(0.0, 0.02, 0.05), new Point3(0.05, 0.03, 0.06)], Section = new RoundSection(new Length(0.02)),
            },
        ],
        Cavities =
        [
            new ScatteredCavities
            {
                Name = "niches", Count = 3, LeastDiameter = new Length(0.01), GreatestDiameter = new Length(0.02), Gap = new Length(0.01), Faces = FaceSet.Sides,
                BandZ = new Band(new Length(0.05), new Length(0.1)), Seed = 11,
            },
            new FormedCavity { Name = "room", Form = new EllipsoidForm { Centre = new Point3(0.05, 0.025, 0.05), Size = new Size3(0.03, 0.02, 0.02) } },
        ],
        Keep = [new KeepZone { Name = "foot", Form = new BlockForm { Centre = new Point3(0.05, 0.025, 0.005), Size = new Size3(0.1, 0.05, 0.01) } }],
        Lifting = new StrapLifting { Lines = [new StrapLine(Axis.Y, new Length(0.03)), new StrapLine(Axis.Y, new Length(0.07))] },
        Require = new Requirements { MaxMass = new Mass(2.0), WaterCement = new WaterCementBand(0.25, 0.6, 0.95), MinShapeMatch = 0.8 },
    };

    public static CompiledJob Job() => Build(needles: null, tonight: null, findings: []);

    public static CompiledJob HeldJob() => Build(needles: null, tonight: null, [SolidError]);

    public static Diagnostic SolidError { get; } = new()
    {
        Code = "DW3999",
        Severity = Severity.Error,
        Message = "shape match 0.71 is below 0.80",
        Remedy = "make the walls thicker",
        Location = new SourceLocation("/yard/units/pebble.unit.yaml", 33, 3),
        Where = new Point3(0.05, 0.025, 0.0123456),
        Related = [new RelatedPlace(new SourceLocation("/elsewhere/estuary.mix.yaml", 12, 1), null, "the mix")],
    };

    /// <summary>Four trials on 4 cells a voxel side; cell i hardened in i mod 5 of them.</summary>
    public static TrialsReport Trials()
    {
        CellGrid grid = CellGrid.Over(Lattice, 4);
        return new TrialsReport
        {
            Trials = 4,
            Seed = 1,
            Grid = grid,
            Inputs = [new TrialInput("bed temperature", 2.0, "K", "not measured tonight")],
            Requirements =
            [
                new TrialedRequirement
                {
                    Nominal = new RequirementResult
                    {
                        Id = RequirementIds.MaxMass,
                        Key = new KeyPath(DescriptionKind.Unit, "require.mass.max"),
                        Quantity = "mass on the hook at dig-out",
                        Op = "<=",
                        Limit = 3.0,
                        Value = 2.5,
                        Unit = "kg",
                    },
                    Unperturbed = 2.49,
                    Met = 3,
                    ShareLow = 0.3,
                    ShareHigh = 0.95,
                    Percentile5 = 2.4,
                    Median = 2.5,
                    Percentile95 = 3.1,
                    Driver = new TrialDriver("bed temperature", -0.9),
                },
            ],
            HardenedTrials = [.. Enumerable.Range(0, grid.Count).Select(cell => (ushort)(cell % 5))],
        };
    }

    public static CompiledJob Build(NeedleTable? needles, Tonight? tonight, IReadOnlyList<Diagnostic> findings)
    {
        DosePlan doses = Doses();
        MoistureResult moisture = SampleOutcome.Moisture(doses);
        Timeline timeline = SampleOutcome.Timeline(doses);
        double water = doses.TotalCentiMillilitres * 1e-8;
        return new CompiledJob
        {
            Description = new JobDescription { Unit = Unit, Mix = Mix, Printer = Printer, Needles = needles, Tonight = tonight },
            Registration = new Registration { Wish = new PlacementWish(), Fixed = true },
            Placement = new UnitPlacement { QuarterTurns = 0, Corner = new Point3(0.15, 0.1, 0.05), UnitBox = Unit.OuterBox },
            Lattice = Lattice,
            Target = new TargetField { Grid = moisture.Grid, Fraction = new float[moisture.Grid.Count], CubicMetres = 0.0004 },
            Doses = doses,
            Timeline = timeline,
            Schedule = new DoseSchedule
            {
                LayerSpreadSeconds = [50.0, 100.0, 172.0],
                DoseStartSeconds = new double[Lattice.Count],
                PumpSeconds = new double[Lattice.Count],
            },
            Moisture = moisture,
            Solid = new SolidSummary
            {
                TargetCubicMetres = 0.0004,
                HardenedCubicMetres = 0.00038123456789,
                ShapeMatch = 0.91,
                WaterInHardenedCubicMetres = water,
                MeanWaterCement = 0.5,
                LargestWaterCement = 0.65,
                ShareInBand = 0.97,
            },
            Dosing = DosingOf(doses),
            Estimate = SampleOutcome.EstimateOf(doses, timeline),
            Requirements =
            [
                new RequirementResult
                {
                    Id = "mass.max", Key = new KeyPath(DescriptionKind.Unit, "require.mass.max"), Location = new SourceLocation("/yard/units/pebble.unit.yaml", 30, 10),
                    Quantity = "mass on the hook", Op = "<=", Limit = 2.0, Value = 0.76543219, Unit = "kg",
                },
            ],
            Findings = findings,
            Inputs = [new InputFile("unit", "pebble.unit.yaml", new string('a', 64)), new InputFile("mix", "estuary.mix.yaml", new string('b', 64))],
            ToolVersion = "0.1.0",
        };
    }

    public static DosingSummary DosingOf(DosePlan doses) => new()
    {
        Corrected = true,
        PlainMillilitres = 28.0,
        Plain = new DoseFigures(doses.TotalCentiMillilitres * 1.1e-8, 0.00042, 0.05, 0.88, 0.51),
        Chosen = new DoseFigures(doses.TotalCentiMillilitres * 1e-8, 0.00038123456789, -0.046, 0.91, 0.5),
        Solves = 24,
        MisfitCells = 6,
        PlainMisfitLitres = 0.2,
        MisfitLitres = 0.1,
    };

    public static DosePlan Doses()
    {
        int[] steps = new int[Lattice.Count], volumes = new int[Lattice.Count];
        for (int k = 1; k < 3; k++)
        {
            for (int i = 1; i < 3; i++)
            {
                int index = Lattice.Index(i, 1, k);
                steps[index] = 280 + i;
                volumes[index] = 2800 + 11 * i;
            }
        }

        return new DosePlan { Lattice = Lattice, Steps = steps, CentiMillilitres = volumes };
    }
}
