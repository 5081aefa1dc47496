using Dewstone.Compute.Numerics;
using Dewstone.Model.Description;
using Dewstone.Model.Diagnostics;
using Dewstone.Model.Lattices;
using Dewstone.Model.Results;

namespace Dewstone.Compute.Habitat;

/// <summary>Surveys the predicted solid as a place to live: the refuge curve, holes, surface, open sky.</summary>
/// <remarks>
/// On cells of about a quarter of a pitch; balls as deep as the site's animals that are less than four of those wide, but four of the job's own cells or more, on the job's
/// own. What is less than four cells wide is told as unsure and not judged by. The box is the unit's outer box above where it stands; the seabed closes it from below.
/// </remarks>
public static class HabitatSurvey
{
    /// <summary>Cells a ball must be wide to be judged by.</summary>
    public const double SureCells = 4.0;

    private const int CellsPerPitch = 4;
    private const double LargestMetres = 0.6;

    /// <summary>How far from the seabed what faces down belongs to the foot, m: that of the bedding at sea.</summary>
    private const double FootMetres = 0.05;

    private static readonly double[] Diameters =
        [0.010, 0.020, HabitatReport.LeastEntranceMetres, 0.040, 0.060, 0.080, 0.100, 0.150, 0.200, 0.300, 0.400, LargestMetres];

    private static readonly int[] Boxes = [1, 2, 4, 8, 16];

    /// <summary>Surveys.</summary>
    /// <param name="job">The site's animals.</param>
    /// <param name="placement">Where the unit stands in the printer.</param>
    /// <param name="hardened">Where the solid ends.</param>
    /// <param name="parallelism">Threads; no result depends on them.</param>
    /// <returns>Report and findings DW6020 and DW6021; no report when nothing hardened.</returns>
    public static HabitatResult Survey(
        JobDescription job, UnitPlacement placement, HardenedSurface hardened, Parallelism parallelism)
    {
        ArgumentNullException.ThrowIfNull(job);
        ArgumentNullException.ThrowIfNull(hardened);
        CellGrid grid = hardened.Grid;
        float[] front = hardened.Level;
        int together = Math.Max(1, grid.CellsPerPitch / CellsPerPitch);
        if (WaterField.Of(front, grid, placement, together, 0.5 * LargestMetres) is not { } field)
        {
            return new HabitatResult(null, []);
        }

        BallReach reach = new(field, LargestMetres, parallelism);
        ShelterAnimals? animals = job.Site?.Animals;
        double[] diameters =
        [
            .. Diameters.Concat(animals is null ? [] : [animals.Sheltered.Metres, animals.Predator.Metres])
                .Where(diameter => diameter <= LargestMetres).Distinct().Order(),
        ];
        double coarse = SureCells * field.Size.Width, fine = SureCells * grid.CellMetres;
        double[] small = animals is null ? [] : [.. new[] { animals.Sheltered.Metres, animals.Predator.Metres }.Where(diameter => diameter >= fine && diameter < coarse)];
        RefugePoint[] curve = new RefugePoint[diameters.Length];
        BallReach? near = small.Length == 0 || WaterField.Of(front, grid, placement, 1, 0.5 * coarse) is not { } own ? null : new BallReach(own, coarse, parallelism);
        Chunks.Run(diameters.Length, 1, parallelism, (first, _) =>
        {
            double diameter = diameters[first];
            bool isFine = near is not null && small.Contains(diameter);
            BallReach cells = isFine ? near! : reach;
            curve[first] = new RefugePoint(diameter, cells.CubicMetres(cells.Of(diameter, new Parallelism(1))), diameter >= (isFine ? fine : coarse));
        });
        // Whatever a larger ball reaches, a smaller one does too; only the cells may say otherwise.
        for (int i = curve.Length - 2; i >= 0; i--)
        {
            curve[i] = curve[i] with { CubicMetres = Math.Max(curve[i].CubicMetres, curve[i + 1].CubicMetres) };
        }

        SurfaceShape surface = SurfaceShape.Of(
            IsoSurface.At(field.Values, field.Shape, field.Size, WaterField.Level, parallelism), field.BedPlanes * field.Size.Height + FootMetres);
        double[] sky = OpenSky.Shares(field, reach.Clearances, parallelism);
        HabitatReport report = new()
        {
            VoidCubicMetres = reach.VoidCubicMetres(),
            Curve = curve,
            ShelteredMetres = animals?.Sheltered.Metres,
            PredatorMetres = animals?.Predator.Metres,
            RefugeCubicMetres = animals is null || animals.Sheltered.Metres < fine ? null : Refuge(curve, animals),
            Holes = HoleSurvey.Find(
                field, reach.Clearances, reach.Of(HabitatReport.LeastEntranceMetres, parallelism),
                new BallReach(field, LargestMetres, parallelism, onSeabed: false).Of(LargestMetres, parallelism, 2.0 * HoleSurvey.LeastDepthMetres), parallelism),
            SurfaceSquareMetres = surface.SquareMetres,
            PlanSquareMetres = Plan(field),
            VectorRuggedness = surface.VectorRuggedness,
            Dimension = BoxCounting.Dimension(Skin(field), field.Shape, Boxes),
            ShareUp = surface.ShareUp,
            ShareDown = surface.ShareDown,
            OpenSky = sky.Length == 0 ? 0.0 : sky.Average(),
            OpenSkyShares = [.. HabitatReport.SkyClasses.Select((_, i) => InClass(sky, i))],
            CellMetres = field.Size.Width,
        };
        return new HabitatResult(report, Findings(report, fine));
    }

    private static double Refuge(RefugePoint[] curve, ShelterAnimals animals)
    {
        double sheltered = curve.First(point => point.DiameterMetres == animals.Sheltered.Metres).CubicMetres;
        double predator = animals.Predator.Metres > LargestMetres ? 0.0 : curve.First(point => point.DiameterMetres == animals.Predator.Metres).CubicMetres;
        return Math.Max(0.0, sheltered - predator);
    }

    private static double InClass(double[] sky, int skyClass)
    {
        double from = HabitatReport.SkyClasses[skyClass];
        double to = skyClass + 1 < HabitatReport.SkyClasses.Count ? HabitatReport.SkyClasses[skyClass + 1] : double.PositiveInfinity;
        return sky.Length == 0 ? 0.0 : (double)sky.Count(share => share >= from && share < to) / sky.Length;
    }

    private static double Plan(WaterField field)
    {
        int columns = 0;
        for (int column = 0; column < field.Shape.Plane; column++)
        {
            bool isCovered = false;
            for (int cell = column; cell < field.Values.Length && !isCovered; cell += field.Shape.Plane)
            {
                isCovered = field.Values[cell] >= WaterField.Level;
            }

            columns += isCovered ? 1 : 0;
        }

        return columns * field.Size.Width * field.Size.Width;
    }

    // Solid cells with a face in the water. The solid lies within a margin.
    private static byte[] Skin(WaterField field)
    {
        float[] values = field.Values;
        int[] steps = [1, -1, field.Shape.Nx, -field.Shape.Nx, field.Shape.Plane, -field.Shape.Plane];
        byte[] skin = new byte[values.Length];
        for (int i = 0; i < values.Length; i++)
        {
            if (values[i] < WaterField.Level)
            {
                continue;
            }

            foreach (int step in steps)
            {
                skin[i] |= values[i + step] < WaterField.Level ? (byte)1 : (byte)0;
            }
        }

        return skin;
    }

    private static IReadOnlyList<Diagnostic> Findings(HabitatReport report, double fine) => report switch
    {
        { ShelteredMetres: { } body, RefugeCubicMetres: null } =>
        [
            HabitatFindings.TooFine.At(
                $"an animal {body * 1000.0:0.#} mm deep is less than four cells: what shelters it is not judged ({fine * 1000.0:0.#} mm is the least)",
                "compile with more --cells", Animals("sheltered")),
        ],
        { ShelteredMetres: { } body, PredatorMetres: { } predator, RefugeCubicMetres: { } refuge } when refuge < Math.PI / 6.0 * body * body * body =>
        [
            HabitatFindings.NoShelter.At(
                $"no place lets in an animal {body * 1000.0:0.#} mm deep and keeps out one of {predator * 1000.0:0.#} mm",
                "add holes whose mouths lie between the two", Animals("sheltered")),
        ],
        _ => [],
    };

    private static KeyPath Animals(string key) => new(DescriptionKind.Site, $"animals.{key}");
}
