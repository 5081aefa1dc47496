using Dewstone.Compute.Inspection;
using Dewstone.Compute.Tests.Dosing;
using Dewstone.Compute.Tests.Geometry;
using Dewstone.Compute.Wetting;
using Dewstone.Model.Description;
using Dewstone.Model.Diagnostics;
using Dewstone.Model.Lattices;
using Dewstone.Model.Quantities;
using Dewstone.Model.Results;

namespace Dewstone.Compute.Tests.Inspection;

/// <summary>For each finding about the predicted solid, its size and its mass: what is found in a fixture of each kind. Limits are named beside the numbers.</summary>
internal static class FindingFixtures
{
    private static readonly Lazy<double> Trapped = new(() => TrappedMixCheckTests.Check(0.0).Report.Kilograms);

    private static readonly Lazy<double> Clear = new(() => InspectorTests.Inspect(InspectorTests.Tunnelled(0.1)).ClearOpenings.Single().PredictedMetres);

    private static readonly Lazy<double> SkinShare = new(() => 1.0 - InspectorTests.Inspect(Banded(0.5)).WaterCement!.SkinShareOutside);

    public static IReadOnlyDictionary<string, Func<FixtureKind, IEnumerable<Diagnostic>>> ByCode { get; } =
        new Dictionary<string, Func<FixtureKind, IEnumerable<Diagnostic>>>
        {
            // Refused water: a thousandth of all.
            ["DW3007"] = kind => Refused(Pick(kind, 0.0, 0.00099, 0.00101, 0.1)),

            // Water at the window's edge: a hundredth of the threshold's content in an outermost cell.
            ["DW3008"] = kind => AtWindowEdge(Pick(kind, 0.0, 0.999, 1.001, 50.0)),

            // Nothing hardens: one cell at the threshold is enough.
            ["DW3009"] = kind => Hardening(Pick(kind, 0.2, 0.0936, 0.0934, 0.0)),

            // Match and share are judged to the last digit, masses too.
            ["DW3011"] = kind => RequirementCheckTests.Check(new Requirements { MinShapeMatch = Pick(kind, 0.5, 0.9, 0.9 + 1e-9, 0.99) }).Findings,
            ["DW3012"] = kind => RequirementCheckTests.Check(
                new Requirements { WaterCement = new WaterCementBand(0.25, 0.6, Pick(kind, 0.5, 0.97, 0.97 + 1e-9, 0.99)) }).Findings,
            ["DW5001"] = kind => RequirementCheckTests.Check(new Requirements { MaxMass = new Mass(Pick(kind, 1500.0, 1000.0, 1000.0 - 1e-6, 500.0)) }).Findings,
            ["DW5002"] = kind => RequirementCheckTests.Check(new Requirements(), lift: Pick(kind, 500.0, 2500.0, 2500.0 + 1e-6, 4000.0)).Findings,

            // Loss at a blocked needle: 0.05 L, which are 25.6 cells of 12.5 mm.
            ["DW3015"] = kind => BlockedNeedleCheckTests.Check(InVoxel(Pick(kind, 0, 25, 26, 64)), BlockedNeedleCheckTests.Box, (10, 11)),

            // A crumb ends and a loose piece begins where the least dose sets: 171 cells; balls of 34 and 35.5 mm hold 171 and 179.
            ["DW3020"] = kind => kind == FixtureKind.Far ? OnePiece() : LoosePieceCheckTests.Check(LoosePieceCheckTests.Rattle(Pick(kind, 0.0, 0.034, 0.0355, 0.06)), null).Findings,
            ["DW3021"] = kind => kind == FixtureKind.Far ? OnePiece() : LoosePieceCheckTests.Check(LoosePieceCheckTests.Rattle(Pick(kind, 0.0, 0.0355, 0.034, 0.02)), null).Findings,

            // A wall of 60 mm, less a quarter of a cell: 58.75 mm.
            ["DW3022"] = kind => NeckCheckTests.Check(p => NeckCheckTests.Plate(p, Pick(kind, 0.08, 0.059, 0.058, 0.04), 0.025, 0.05), 0.06).Findings,

            // Trapped mix: to the last gram of what a closed hollow holds.
            ["DW3023"] = kind => TrappedMixCheckTests.Check(0.0, Pick(kind, 10.0, 0.0, -1e-6, -0.4) + (kind == FixtureKind.Far ? 0.0 : Trapped.Value)).Findings,

            // A clear opening: to the tenth of a millimetre of what the tunnel lets through.
            ["DW3024"] = kind => InspectorTests.Inspect(InspectorTests.Tunnelled(Clear.Value + Pick(kind, -0.05, -1e-4, 1e-4, 0.05))).Findings,

            // An opening sets shut when it is narrower than a cell of 5 mm, where its middle lies between cells.
            ["DW3025"] = kind => Lidded(Pick(kind, 0.06, 0.006, 0.004, 0.0)),

            // The skin's share in the band: to a thousandth of what it is.
            ["DW3026"] = kind => InspectorTests.Inspect(Banded(Pick(kind, 0.01, SkinShare.Value - 0.001, SkinShare.Value + 0.001, 0.9))).Findings,

            // Loose mix deeper than 20 mm: the first cell's middle beyond that lies at 22.5 mm.
            ["DW3027"] = kind => Drilled(new ReefUnit
            {
                Name = "plain",
                OuterBox = InspectorTests.Plain.OuterBox,
                Keep = [SampleUnits.Zone("foot", SampleUnits.Block(0.15, 0.15, 0.05, 0.3, 0.3, 0.1))],
            }, kind),
            ["DW3028"] = kind => Drilled(InspectorTests.Plain with { Lifting = new StrapLifting { Lines = [new StrapLine(Axis.Y, new Length(0.05))] } }, kind),

            // A trap for a body of 30 mm: up to one and a half times that, 45 mm, to half a cell.
            ["DW3029"] = kind => InspectorTests.Inspect(InspectorTests.Plain with
            {
                Cavities = [SampleUnits.Hollow("pit", SampleUnits.Block(0.15, 0.15, 0.3, Pick(kind, 0.08, 0.047, 0.043, 0.036), Pick(kind, 0.08, 0.047, 0.043, 0.036), 0.16))],
            }).Findings,

            // The bin waters 1200 mm, and holds 22 layers of which one lies below.
            ["DW4002"] = kind => PrinterFindingsTests.Place(Samples.Box(Pick(kind, 0.3, 1.2, 1.2001, 2.0), 0.3, 0.2)),
            ["DW4003"] = kind => PrinterFindingsTests.Place(Samples.Box(0.3, 0.3, Pick(kind, 0.2, 1.05, 1.0501, 2.0))),
        };

    private static T Pick<T>(FixtureKind kind, T far, T justSilent, T justRaised, T planted) => kind switch
    {
        FixtureKind.Far => far,
        FixtureKind.JustSilent => justSilent,
        FixtureKind.JustRaised => justRaised,
        _ => planted,
    };

    private static ReefUnit Banded(double share) =>
        InspectorTests.Plain with { Require = new Requirements { WaterCement = new WaterCementBand(0.3, 0.45, share) } };

    private static IEnumerable<Diagnostic> OnePiece() =>
        LoosePieceCheckTests.Check(Moulds.Solid(new Size3(0.2, 0.2, 0.2), p => Moulds.Block(p, 0, 0, 0, 0.2, 0.2, 0.2)), 0).Findings;

    private static IReadOnlyList<Diagnostic> Refused(double share)
    {
        CellGrid grid = WaterCheckTests.Placed.Cells!;
        double refused = 0.3 * grid.Count * grid.CellCubicMetres * share / (1.0 - share);
        return WaterCheckTests.Check(Samples.Moisture(grid, _ => 0.3, refused, [new RefusedDose(0, refused)]));
    }

    private static IReadOnlyList<Diagnostic> AtWindowEdge(double limits)
    {
        (Lattice lattice, CellGrid grid) = (WaterCheckTests.Placed.Lattice!, WaterCheckTests.Placed.Cells!);
        float limit = (float)(WindowEdge.ReachedShare * 0.0935);
        int west = (grid.Nz / 2 * grid.Ny + grid.Ny / 2) * grid.Nx;
        MoistureResult dry = Samples.Moisture(grid, i => i == west ? limits * limit : 0.0);
        bool touched = WindowEdge.IsTouched(lattice, grid, dry.VolumetricWaterContent, limit);
        return WaterCheckTests.Check(Samples.Moisture(grid, i => dry.VolumetricWaterContent[i], touchedWindowEdge: touched));
    }

    private static IReadOnlyList<Diagnostic> Hardening(double content)
    {
        CellGrid grid = FrontFields.Grid(8, 8, 8, 0.005);
        MoistureResult moisture = Samples.Moisture(grid, i => i == 4 * 64 + 4 * 8 + 4 ? content : 0.0);
        SolidSummary solid = SolidMeasure.Measure(Samples.Target(grid, _ => 1.0), moisture, FrontFields.Surface(moisture), null);
        return RequirementCheckTests.Check(new Requirements(), solid).Findings;
    }

    // Loose in so many of the 64 cells of the voxel x 50 to 100, y 100 to 150, z 100 to 150 mm.
    private static Func<Point3, bool> InVoxel(int cells) => p =>
    {
        (int x, int y, int z) = ((int)Math.Floor((p.X - 0.05) / 0.0125), (int)Math.Floor((p.Y - 0.1) / 0.0125), (int)Math.Floor((p.Z - 0.1) / 0.0125));
        return x is >= 0 and < 4 && y is >= 0 and < 4 && z is >= 0 and < 4 && (z * 4 + y) * 4 + x < cells;
    };

    // A pit of 60 mm under a lid 30 mm thick, flush with the top, with a square hole of a width.
    private static IReadOnlyList<Diagnostic> Lidded(double hole) => InspectorTests.Inspect(
        InspectorTests.Plain with { Cavities = [SampleUnits.Hollow("pit", SampleUnits.Block(0.15, 0.15, 0.3, 0.06, 0.06, 0.16))] },
        (p, drawn) => Math.Min(drawn, Math.Max(Math.Abs(p.Z - 0.29) - 0.015, Math.Max(
            Math.Max(Math.Abs(p.X - 0.15), Math.Abs(p.Y - 0.15)) - 0.035, hole / 2.0 - Math.Max(Math.Abs(p.X - 0.15), Math.Abs(p.Y - 0.15)))))).Findings;

    // A loose bore of 24 mm from the west face inwards.
    private static IReadOnlyList<Diagnostic> Drilled(ReefUnit unit, FixtureKind kind)
    {
        double depth = Pick(kind, 0.01, 0.0215, 0.0235, 0.06);
        return InspectorTests.Inspect(unit, (p, drawn) => Math.Max(
            drawn, -Math.Max(p.X - depth, Math.Sqrt((p.Y - 0.15) * (p.Y - 0.15) + (p.Z - 0.05) * (p.Z - 0.05)) - 0.012))).Findings;
    }
}
