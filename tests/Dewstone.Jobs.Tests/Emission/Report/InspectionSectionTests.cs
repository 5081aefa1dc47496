using System.Xml.Linq;
using Dewstone.Model.Diagnostics;
using Dewstone.Model.Quantities;
using Dewstone.Model.Results;

namespace Dewstone.Jobs.Tests.Emission.Report;

public sealed class InspectionSectionTests
{
    [Fact]
    public void Openings_stand_drawn_predicted_and_asked_for()
    {
        KeyPath key = new(DescriptionKind.Unit, "tunnels[0]");
        XElement part = SamplePage.Of(Samples.Job() with
        {
            Inspection = new InspectionReport
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
                    new ClearOpening { Name = "east-west", Key = key, IsTunnel = true, WantedMetres = 0.3, PredictedMetres = 0.2717, RequiredMetres = 0.2, Narrowest = new Point3(0.45, 0.1, 0.27) },
                    new ClearOpening { Name = "niches", Key = key, IsTunnel = false, Hollow = 2, WantedMetres = 0.08, PredictedMetres = 0.0 },
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
                SoundZones = [new SoundZone("foot", key, IsLifting: true, 0.004, 0.0003, new Point3(0.1, 0.2, 0.3))],
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
                AnimalTraps = [new AnimalTrap("basin", key, 0.036, 0.05, new Point3(0.2, 0.2, 0.3))],
                Requirements = [],
                Findings = [],
            },
        }).Part("inspection");
        string[] rows = [.. part.Descendants("tbody").Elements("tr").Select(row => string.Join('|', row.Elements().Select(cell => cell.Value)))];

        Assert.Contains("east-west|300 mm|271.7 mm|200 mm|x 450, y 100, z 270 mm", rows);
        Assert.Contains("niches, hollow 3|80 mm|closed|–|–", rows);
        Assert.Contains("mean distance, outward above 0|−1.2 mm", rows);
        Assert.Contains("least neck|48 mm", rows);
        Assert.Contains("foot|0.4 %|0.30 L|x 100, y 200, z 300 mm", rows);
        Assert.Contains("outside the band, of the outermost 10 mm|8.0 %", rows);
        Assert.Contains("largest region outside the band|0.40 L at x 100, y 100, z 100 mm", rows);
        Assert.Contains("basin|36 mm|50 mm|x 200, y 200, z 300 mm", rows);
        Assert.Equal(["12.5", "87.5"], part.Descendants("text").Where(text => (string?)text.Attribute("class") == "small" && text.Value.Length > 0).Select(text => text.Value));
        Assert.Contains("1.25 kg", part.Value);
        Assert.Contains("hangs together", part.Value);
    }

    [Fact]
    public void Job_that_was_not_inspected_says_so() =>
        Assert.Contains("not inspected", SamplePage.Of(Samples.Job() with { Inspection = null }).TextOf("inspection"));
}
