using Dewstone.Model.Description;
using Dewstone.Model.Quantities;

namespace Dewstone.Compute.Tests.Dosing;

/// <summary>Bodies on which doses are judged, as descriptions; all invented. Shared with the benchmarks.</summary>
internal static class Targets
{
    /// <summary>
    /// A cube of 18 pitches of 50.8 mm with two square tunnels that cross in its middle and three round hollows, in the mix and on a machine of the
    /// same pitch: the body on which an independent prototype of the same model was measured. Its tunnel walls lie in the needle lines.
    /// </summary>
    public static JobDescription Cube() => new()
    {
        Unit = new ReefUnit
        {
            Name = "Crossed cube",
            OuterBox = new Size3(0.9144, 0.9144, 0.9144),
            Rounding = Mm(60),
            Tunnels = [Way("east-west", Axis.X, 457.2, 457.2, 250, 250, 0), Way("north-south", Axis.Y, 457.2, 457.2, 250, 250, 0)],
            Cavities = [Ball("first", 250, 250, 270, 95), Ball("second", -260, 230, -250, 80), Ball("third", -240, -260, 240, 110)],
        },
        Mix = Mix(),
        Printer = Printer(50.8, 24, spreading: 57),
    };

    /// <summary>A block of 900 mm with two crossing tunnels, relief, 18 niches and a solid foot; about 0.7 of its box is solid.</summary>
    public static JobDescription Block() => new()
    {
        Unit = new ReefUnit
        {
            Name = "Block",
            OuterBox = new Size3(0.9, 0.9, 0.9),
            Rounding = Mm(50),
            Blend = Mm(25),
            Relief = new Relief
            {
                Amplitude = Mm(12),
                ShortestLength = Mm(80),
                LongestLength = Mm(250),
                Faces = FaceSet.Sides | FaceSet.Top,
                Seed = 7,
            },
            Tunnels = [Way("east-west", Axis.X, 450, 270, 340, 300, 40), Way("north-south", Axis.Y, 450, 270, 340, 300, 40)],
            Cavities =
            [
                new ScatteredCavities
                {
                    Name = "niches", Count = 18, LeastDiameter = Mm(110), GreatestDiameter = Mm(160), Gap = Mm(100),
                    Faces = FaceSet.Sides | FaceSet.Top, BandZ = new Band(Mm(500), Mm(900)), Seed = 11,
                },
            ],
            Keep = [new KeepZone { Name = "foot", Form = new BlockForm { Centre = new Point3(0.45, 0.45, 0.05), Size = new Size3(0.9, 0.9, 0.1) } }],
            Require = new Requirements { WaterCement = new WaterCementBand(0.25, 0.60, 0.95) },
        },
        Mix = Mix(),
        Printer = Printer(50, 24, spreading: 50),
    };

    /// <summary>Walls of 60 to 100 mm around six rectangular openings that run right through; about 0.61 of its box is solid.</summary>
    public static JobDescription ThinWalls() => new()
    {
        Unit = new ReefUnit
        {
            Name = "Lattice wall",
            OuterBox = new Size3(0.9, 0.6, 0.7),
            Rounding = Mm(30),
            Blend = Mm(15),
            Tunnels =
            [
                Way("low west", Axis.Y, 170, 200, 180, 200, 20), Way("low middle", Axis.Y, 440, 200, 220, 200, 20),
                Way("low east", Axis.Y, 720, 200, 160, 200, 20), Way("high west", Axis.Y, 170, 480, 180, 240, 20),
                Way("high middle", Axis.Y, 440, 480, 220, 240, 20), Way("high east", Axis.Y, 720, 480, 160, 240, 20),
            ],
            Require = new Requirements { WaterCement = new WaterCementBand(0.25, 0.60, 0.95) },
        },
        Mix = Mix(),
        Printer = Printer(50, 24, spreading: 50),
    };

    /// <summary>A quarter of the cube in each direction of the plan: one tunnel, one hollow, small enough for a test.</summary>
    public static JobDescription SmallCube() => new()
    {
        Unit = new ReefUnit
        {
            Name = "Small cube",
            OuterBox = new Size3(0.4064, 0.4064, 0.4064),
            Rounding = Mm(40),
            Tunnels = [Way("through", Axis.X, 203.2, 203.2, 150, 150, 0)],
            Cavities = [new FormedCavity { Name = "hollow", Form = new SphereForm { Centre = new Point3(0.2032, 0.36, 0.36), Diameter = Mm(120) } }],
        },
        Mix = Mix(),
        Printer = Printer(50.8, 12, spreading: 57),
    };

    private static DryMix Mix() => new()
    {
        Name = "Estuary mix",
        Origin = new MixOrigin(MixOriginKind.Assumed, ""),
        Currency = "EUR",
        Solids =
        [
            new Constituent { Name = "Portland cement", Share = 0.25, GrainDensity = new Density(3150), IsBinder = true },
            new Constituent { Name = "quartz sand 0-2 mm", Share = 0.75, GrainDensity = new Density(2650) },
        ],
        LooseDensity = new Density(1700),
        Liquid = new Liquid { Density = new Density(1000) },
        Wetting = new PowerLaw { AtSaturation = new Diffusivity(3.2e-6), Exponent = 4 },
        Hardening = new Hardening { WaterCement = 0.22, Window = new Duration(600) },
        Strength = new StrengthLaw { CementClass = "N" },
        ReuseLimit = 5,
    };

    private static Printer Printer(double pitchMillimetres, int needles, double spreading) => new()
    {
        Name = "Yard printer",
        Bin = new Bin(Mm(needles * pitchMillimetres), Mm(needles * pitchMillimetres), Mm(22 * pitchMillimetres)),
        Grid = new NeedleGrid
        {
            Pitch = Mm(pitchMillimetres),
            LayerHeight = Mm(pitchMillimetres),
            OriginX = Mm(pitchMillimetres / 2),
            OriginY = Mm(pitchMillimetres / 2),
            UnderLayers = 1,
        },
        Head = new Head { Columns = needles, Rows = needles, CanShiftLayers = true },
        Needle = new Needle
        {
            TipDepth = Mm(pitchMillimetres / 2),
            Flow = FlowRate.FromMillilitresPerSecond(4),
            Least = Volume.FromMillilitres(2),
            Most = Volume.FromMillilitres(45),
            Step = Volume.FromMillilitres(0.1),
            Repeatability = 0.02,
            Drift = 0.05,
        },
        Supply = new Supply(FlowRate.FromMillilitresPerSecond(2500), new Volume(0.4)),
        Timing = new MachineTiming
        {
            Setup = new Duration(1200),
            Spreading = new Duration(spreading),
            Move = new Duration(6),
            Plunge = new Duration(4),
            Hold = new Duration(1),
            Withdraw = new Duration(4),
        },
        LooseMix = new LooseMixHandling(new Mass(15), 0.92),
    };

    private static AxisTunnel Way(string name, Axis along, double across, double up, double width, double height, double rounding) => new()
    {
        Name = name,
        Along = along,
        At = along == Axis.X ? new Point3(0.0, across / 1000, up / 1000) : new Point3(across / 1000, 0.0, up / 1000),
        Section = new RectangularSection(Mm(width), Mm(height), Mm(rounding)),
    };

    private static FormedCavity Ball(string name, double x, double y, double z, double radius) => new()
    {
        Name = name,
        Form = new SphereForm { Centre = new Point3(0.4572 + x / 1000, 0.4572 + y / 1000, 0.4572 + z / 1000), Diameter = Mm(2 * radius) },
    };

    private static Length Mm(double millimetres) => new(millimetres / 1000);
}
