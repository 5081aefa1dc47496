using Dewstone.Compute.Geometry;
using Dewstone.Model.Description;
using Dewstone.Model.Lattices;
using Dewstone.Model.Quantities;

namespace Dewstone.Compute.Tests.Geometry;

/// <summary>Units the geometry tests share; all invented.</summary>
internal static class SampleUnits
{
    /// <summary>The habitat block of 900 mm with crossing tunnels, niches, relief and a solid foot.</summary>
    public static ReefUnit WrackBlock { get; } = new()
    {
        Name = "Wrack block",
        OuterBox = new Size3(0.9, 0.9, 0.9),
        Rounding = new Length(0.05),
        Blend = new Length(0.025),
        Relief = new Relief
        {
            Amplitude = new Length(0.012),
            ShortestLength = new Length(0.08),
            LongestLength = new Length(0.25),
            Faces = FaceSet.Sides | FaceSet.Top,
            Seed = 7,
        },
        Tunnels =
        [
            Straight("east-west", Axis.X, new Point3(0.0, 0.45, 0.27), Rectangle(0.34, 0.30, 0.04)) with { Clear = new Length(0.2) },
            Straight("north-south", Axis.Y, new Point3(0.45, 0.0, 0.27), Rectangle(0.34, 0.30, 0.04)) with { Clear = new Length(0.2) },
        ],
        Cavities =
        [
            new ScatteredCavities
            {
                Name = "niches",
                Count = 18,
                LeastDiameter = new Length(0.11),
                GreatestDiameter = new Length(0.16),
                Gap = new Length(0.1),
                Faces = FaceSet.Sides | FaceSet.Top,
                BandZ = new Band(new Length(0.5), new Length(0.9)),
                Seed = 11,
            },
        ],
        Keep = [Zone("foot", Block(0.45, 0.45, 0.05, 0.9, 0.9, 0.1))],
    };

    /// <summary>The cells of a bin with 50 mm voxels, 22 x 22 x 19 of them, as the habitat block is printed in.</summary>
    public static CellGrid WrackGrid(int cells) => CellGrid.Over(
        new Lattice
        {
            Columns = 22,
            Rows = 22,
            Layers = 19,
            FirstColumn = 1,
            FirstRow = 1,
            PitchMetres = 0.05,
            LayerMetres = 0.05,
            OriginXMetres = 0.025,
            OriginYMetres = 0.025,
            TipDepthMetres = 0.025,
            BinXMetres = 1.2,
            BinYMetres = 1.2,
            UnderLayers = 1,
        },
        cells);

    /// <summary>The habitat block standing on one loose layer in the middle of that bin.</summary>
    public static UnitPlacement WrackPlacement { get; } = new() { QuarterTurns = 0, Corner = new Point3(0.15, 0.15, 0.05), UnitBox = new Size3(0.9, 0.9, 0.9) };

    /// <summary>A plain box with what the caller adds.</summary>
    public static ReefUnit Plain(double x, double y, double z) => new() { Name = "plain", OuterBox = new Size3(x, y, z) };

    public static AxisTunnel Straight(string name, Axis along, Point3 at, Section section) =>
        new() { Name = name, Along = along, At = at, Section = section };

    public static PathTunnel Winding(string name, Section section, params Point3[] path) => new() { Name = name, Path = path, Section = section };

    public static RoundSection Round(double diameter) => new(new Length(diameter));

    public static RectangularSection Rectangle(double width, double height, double rounding = 0.0) =>
        new(new Length(width), new Length(height), new Length(rounding));

    public static BlockForm Block(double x, double y, double z, double sizeX, double sizeY, double sizeZ, double rounding = 0.0) =>
        new() { Centre = new Point3(x, y, z), Size = new Size3(sizeX, sizeY, sizeZ), Rounding = new Length(rounding) };

    public static SphereForm Ball(double x, double y, double z, double diameter) => new() { Centre = new Point3(x, y, z), Diameter = new Length(diameter) };

    public static EllipsoidForm Egg(double x, double y, double z, double sizeX, double sizeY, double sizeZ) =>
        new() { Centre = new Point3(x, y, z), Size = new Size3(sizeX, sizeY, sizeZ) };

    public static FormedCavity Hollow(string name, SolidForm form) => new() { Name = name, Form = form };

    public static KeepZone Zone(string name, SolidForm form) => new() { Name = name, Form = form };

    public static ReefShape Shape(ReefUnit unit) => ReefShapeBuilder.Build(unit).Shape;
}
