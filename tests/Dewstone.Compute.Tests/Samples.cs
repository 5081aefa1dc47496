using Dewstone.Model.Description;
using Dewstone.Model.Lattices;
using Dewstone.Model.Quantities;
using Dewstone.Model.Results;

namespace Dewstone.Compute.Tests;

/// <summary>The invented mix, printer, site and unit of Wrackline Bay as records, and small fields made by hand.</summary>
internal static class Samples
{
    public static DryMix EstuaryMix() => new()
    {
        Name = "Estuary mix",
        Origin = new MixOrigin(MixOriginKind.Assumed, ""),
        Currency = "EUR",
        Solids =
        [
            new Constituent
            {
                Name = "Portland cement", Share = 0.25, GrainDensity = new Density(3150), IsBinder = true, CarbonPerKilogram = 0.86, PricePerKilogram = 0.16,
            },
            new Constituent
            {
                Name = "quartz sand 0-2 mm", Share = 0.75, GrainDensity = new Density(2650), RecycledShare = 0.40, CarbonPerKilogram = 0.005,
                PricePerKilogram = 0.03,
            },
        ],
        LooseDensity = new Density(1700),
        Liquid = new Liquid { Density = new Density(1000), PricePerLitre = 0.003, Additives = [new Additive("thickener", 2.0)] },
        Wetting = new PowerLaw { AtSaturation = new Diffusivity(3.2e-6), Exponent = 4 },
        Hardening = new Hardening { WaterCement = 0.22, Window = new Duration(600) },
        Strength = new StrengthLaw { CementClass = "N" },
        ReuseLimit = 5,
        Uncertainty = new MixUncertainty(0.20, 0.05, 0.02),
    };

    /// <summary>A mix of a cement share and loose density, grains as in the estuary mix.</summary>
    public static DryMix Mix(double cementShare, double looseDensity)
    {
        DryMix mix = EstuaryMix();
        return mix with
        {
            Solids = [mix.Solids[0] with { Share = cementShare }, mix.Solids[1] with { Share = 1.0 - cementShare }],
            LooseDensity = new Density(looseDensity),
        };
    }

    public static Printer YardPrinter() => new()
    {
        Name = "Yard printer",
        Bin = new Bin(new Length(1.2), new Length(1.2), new Length(1.1)),
        Grid = new NeedleGrid
        {
            Pitch = new Length(0.05),
            LayerHeight = new Length(0.05),
            OriginX = new Length(0.025),
            OriginY = new Length(0.025),
            UnderLayers = 1,
        },
        Head = new Head { Columns = 24, Rows = 24, CanShiftLayers = true },
        Needle = new Needle
        {
            TipDepth = new Length(0.025),
            Flow = FlowRate.FromMillilitresPerSecond(4),
            Least = Volume.FromMillilitres(2),
            Most = Volume.FromMillilitres(44),
            Step = Volume.FromMillilitres(0.1),
            Repeatability = 0.02,
            Drift = 0.05,
        },
        Supply = new Supply(FlowRate.FromMillilitresPerSecond(2500), new Volume(0.4)),
        Timing = new MachineTiming
        {
            Setup = new Duration(1200),
            Spreading = new Duration(50),
            Move = new Duration(6),
            Plunge = new Duration(4),
            Hold = new Duration(1),
            Withdraw = new Duration(4),
        },
        Flush = new Flush(new Duration(2), 6),
        LooseMix = new LooseMixHandling(new Mass(15), 0.92),
        MaxLift = new Mass(2500),
    };

    public static Site WracklineShoal() => new()
    {
        Name = "Wrackline shoal",
        Water = new SiteWater
        {
            Depth = new Length(6),
            Low = new Length(-0.3),
            High = new Length(1.4),
            Salinity = 30,
            Temperature = new Temperature(12),
        },
        Wave = new DesignWave
        {
            SignificantHeight = new Length(1.2),
            PeakPeriod = new Duration(7),
            Direction = new Angle(270),
            ReturnPeriodYears = 50,
            HeightRule = DesignHeightRule.HighestTenth,
        },
        Seabed = new SeabedSoil { Soil = SoilKind.Sand, Friction = 0.55, EffectiveWeight = new UnitWeight(8500) },
    };

    public static ReefUnit WrackBlock() => new()
    {
        Name = "Wrack block",
        OuterBox = new Size3(0.9, 0.9, 0.9),
        Rounding = new Length(0.05),
        Blend = new Length(0.025),
        Tunnels =
        [
            new AxisTunnel
            {
                Name = "east-west", Along = Axis.X, At = new Point3(0, 0.45, 0.27), Clear = new Length(0.2),
                Section = new RectangularSection(new Length(0.34), new Length(0.30), new Length(0.04)),
            },
        ],
        Require = new Requirements
        {
            MaxMass = new Mass(1150),
            MinWall = new Length(0.06),
            WaterCement = new WaterCementBand(0.25, 0.60, 0.95),
            MinShapeMatch = 0.80,
            MaxLoosePieces = 0,
            MaxTrappedMix = new Mass(2),
        },
    };

    /// <summary>A plain box of a size in metres, nothing required.</summary>
    public static ReefUnit Box(double x, double y, double z) => new() { Name = "Box", OuterBox = new Size3(x, y, z) };

    public static JobDescription Job(ReefUnit? unit = null, DryMix? mix = null, Printer? printer = null, NeedleTable? needles = null) => new()
    {
        Unit = unit ?? WrackBlock(),
        Mix = mix ?? EstuaryMix(),
        Printer = printer ?? YardPrinter(),
        Needles = needles,
    };

    /// <summary>A small printer: a bin of whole pitches, 50 mm pitch and layer, its head covering the bin.</summary>
    /// <summary>A job whose full voxel gets water/cement 0.52 exactly, closed pockets included: a narrow band, and a window long enough to reach the corners.</summary>
    public static JobDescription Pinned(JobDescription job) => job with
    {
        Unit = job.Unit with { Require = job.Unit.Require with { WaterCement = job.Unit.Require.WaterCement ?? new WaterCementBand(0.50, 0.54, 0.9) } },
        Mix = job.Mix with { Hardening = job.Mix.Hardening with { Window = new Duration(3600) } },
    };

    public static Printer SmallPrinter(int columns, int rows, int layers)
    {
        Printer yard = YardPrinter();
        return yard with
        {
            Bin = new Bin(new Length(columns * 0.05), new Length(rows * 0.05), new Length(layers * 0.05)),
            Head = yard.Head with { Columns = columns, Rows = rows },
        };
    }

    /// <summary>A target whose cells hold what a rule says, the argument being the cell's centre in the printer frame, metres.</summary>
    public static TargetField Target(CellGrid grid, Func<Point3, double> fraction)
    {
        var cells = new float[grid.Count];
        double sum = 0.0;
        for (int z = 0; z < grid.Nz; z++)
        {
            for (int y = 0; y < grid.Ny; y++)
            {
                for (int x = 0; x < grid.Nx; x++)
                {
                    float value = (float)fraction(grid.Centre(x, y, z));
                    cells[(z * grid.Ny + y) * grid.Nx + x] = value;
                    sum += value;
                }
            }
        }

        return new TargetField { Grid = grid, Fraction = cells, CubicMetres = sum * grid.CellCubicMetres };
    }

    /// <summary>1 inside a placed unit's box, 0 outside.</summary>
    public static Func<Point3, double> InBox(UnitPlacement placement) => point =>
    {
        Point3 p = placement.ToUnit(point);
        Size3 box = placement.UnitBox;
        return p.X > 0 && p.X < box.X && p.Y > 0 && p.Y < box.Y && p.Z > 0 && p.Z < box.Z ? 1.0 : 0.0;
    };

    public static DosePlan Doses(Lattice lattice, Func<int, int, int, int> centiMillilitres)
    {
        var doses = new int[lattice.Count];
        for (int k = 0; k < lattice.Layers; k++)
        {
            for (int j = 0; j < lattice.Rows; j++)
            {
                for (int i = 0; i < lattice.Columns; i++)
                {
                    doses[lattice.Index(i, j, k)] = centiMillilitres(i, j, k);
                }
            }
        }

        return new DosePlan { Lattice = lattice, Steps = [.. doses.Select(d => d / 10)], CentiMillilitres = doses };
    }

    /// <summary>A moisture field by hand: content by flat index; hardened where water/cement is at least 0.22 of the estuary mix.</summary>
    public static MoistureResult Moisture(CellGrid grid, Func<int, double> content, double refusedCubicMetres = 0.0, IReadOnlyList<RefusedDose>? refused = null,
        bool touchedWindowEdge = false)
    {
        float[] cells = [.. Enumerable.Range(0, grid.Count).Select(i => (float)content(i))];
        double water = cells.Sum(c => (double)c) * grid.CellCubicMetres;
        return new MoistureResult
        {
            Grid = grid,
            VolumetricWaterContent = cells,
            Hardened = [.. cells.Select(c => c >= 0.0935f ? (byte)1 : (byte)0)],
            BinderKilogramsPerCubicMetre = 425,
            LiquidKilogramsPerCubicMetre = 1000,
            Porosity = 0.383947,
            ThresholdContent = 0.0935,
            InjectedCubicMetres = water + refusedCubicMetres,
            RefusedCubicMetres = refusedCubicMetres,
            FieldCubicMetres = water,
            Refused = refused ?? [],
            LargestContent = cells.Max(),
            TouchedWindowEdge = touchedWindowEdge,
            TimeSteps = 1,
            CellUpdates = grid.Count,
        };
    }
}
