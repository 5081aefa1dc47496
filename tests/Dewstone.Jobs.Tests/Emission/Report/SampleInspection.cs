using Dewstone.Model.Diagnostics;
using Dewstone.Model.Quantities;
using Dewstone.Model.Results;

namespace Dewstone.Jobs.Tests.Emission.Report;

/// <summary>Findings of an inspection that shows something in every table.</summary>
internal static class SampleInspection
{
    private static readonly KeyPath Key = new(DescriptionKind.Unit, "tunnels[0]");

    /// <summary>The report.</summary>
    public static InspectionReport Report { get; } = new()
    {
        LoosePieces = new LoosePiecesReport([], 3, 0.02, 1e-6),
        Wall = new WallReport
        {
            Percentile5Metres = 0.0612,
            MedianMetres = 0.11,
            Percentile95Metres = 0.2,
            WantedMetres = 0.06,
            LeastNeckMetres = 0.048,
            Shares = [0.0, 0.125, 0.875],
            ThinPlaces = [],
        },
        TrappedMix = new TrappedMixReport(0.05, 1.25, []),
        ClearOpenings =
        [
            new ClearOpening { Name = "east-west", Key = Key, IsTunnel = true, WantedMetres = 0.3, PredictedMetres = 0.2717, RequiredMetres = 0.2, Narrowest = new Point3(0.45, 0.1, 0.27) },
            new ClearOpening { Name = "niches", Key = Key, IsTunnel = false, Hollow = 2, WantedMetres = 0.08, PredictedMetres = 0.0 },
        ],
        ShapeMatch = new ShapeMatchReport
        {
            Overlap = 0.9,
            SurfaceCubicMetres = 0.0365,
            VolumeError = 0.02,
            MassErrorKilograms = 1.0,
            MeanMetres = 0.0079,
            SignedMeanMetres = -0.0012,
            Percentile95Metres = 0.0188,
            DeepUnsetShare = 0.013,
            PocketSquareMetres = 0.1,
        },
        SoundZones = [new SoundZone("foot", Key, IsLifting: true, 0.004, 0.0003, new Point3(0.1, 0.2, 0.3))],
        WaterCement = new WaterCementReport
        {
            ShareBelow = 0.01,
            ShareAbove = 0.002,
            Mean = 0.5,
            SkinShareOutside = 0.08,
            SkinMean = 0.346,
            LargestCubicMetres = 0.0004,
            Largest = new Point3(0.1, 0.1, 0.1),
        },
        AnimalTraps = [new AnimalTrap("basin", Key, 0.036, 0.05, new Point3(0.2, 0.2, 0.3))],
        Requirements = [],
        Findings = [],
    };
}
