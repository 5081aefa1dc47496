using System.Text;
using Dewstone.Compute.Calibration;
using Dewstone.Compute.Numerics;
using Dewstone.Model.Description;
using Dewstone.Model.Measurements;
using Dewstone.Model.Quantities;

namespace Dewstone.Compute.Tests.Calibration;

/// <summary>The invented measurements of <c>examples/wrackline-bay/calibration</c>: the forward model with seeded errors, and planted faults of needles.</summary>
internal static class DemoData
{
    private static readonly double[] Doses = [3, 3, 3, 6, 6, 6, 12, 12, 12, 20, 20, 20, 35, 35, 35];
    private static readonly double[] Spacings = [40, 40, 50, 50, 60, 60];

    /// <summary>A mix that obeys another law than the estuary mix says: D = 1.5e-5 m2/s exp(8 (s - 1)).</summary>
    public static readonly DryMix Other = SimulatedTests.Truth with { Wetting = new ExponentialLaw { AtSaturation = new Diffusivity(1.5e-5), Exponent = 8 } };

    /// <summary>Every file with its text.</summary>
    public static IReadOnlyDictionary<string, string> Files()
    {
        SimulatedTests yard = new(2027), other = new(2028, null, Other);
        return new Dictionary<string, string>
        {
            ["absorption.csv"] = Text(yard.Absorption(4)),
            ["balls.csv"] = Text(yard.Balls(Doses)),
            ["pairs.csv"] = Text(yard.Pairs(Spacings, 20.0)),
            ["density.csv"] = Text(yard.Densities(5)),
            ["other-law/absorption.csv"] = Text(other.Absorption(4)),
            ["other-law/balls.csv"] = Text(other.Balls(Doses)),
            ["needles.csv"] = Needles(),
        };
    }

    private static string Text(MixReadings data)
    {
        StringBuilder text = new();
        Table("specimen,time_s,uptake_g,area_cm2", data.Absorption, r => $"{r.Specimen},{r.Seconds:0},{r.UptakeGrams:0.00},{r.AreaSquareCentimetres:0}");
        Table("dose_ml,diameter_x_mm,diameter_y_mm,diameter_z_mm,wet_mass_g,dry_mass_g,bed_temperature_c", data.Balls,
            r => $"{r.DoseMillilitres:0},{r.DiametersMillimetres[0]:0.0},{r.DiametersMillimetres[1]:0.0},{r.DiametersMillimetres[2]:0.0},{r.WetGrams:0.0},{r.DryGrams:0.0},{r.BedCelsius:0}");
        Table("dose_ml,spacing_mm,length_mm,waist_mm,bed_temperature_c", data.Pairs,
            r => $"{r.DoseMillilitres:0},{r.SpacingMillimetres:0},{r.LengthMillimetres:0.0},{r.WaistMillimetres:0.0},{r.BedCelsius:0}");
        Table("container_ml,mass_g", data.Densities, r => $"{r.ContainerMillilitres:0},{r.MassGrams:0}");
        return text.ToString();

        void Table<T>(string header, IReadOnlyList<T> rows, Func<T, string> row)
        {
            if (rows.Count > 0)
            {
                text.Append($"{header}\n").AppendJoin('\n', rows.Select(row)).Append('\n');
            }
        }
    }

    // The first pump board of the yard: 48 needles, six weighings each at 20.5 degC and 1009 hPa.
    private static string Needles()
    {
        StringBuilder text = new("column,row,asked_ml,weighed_g,water_temperature_c,air_pressure_hpa,board,channel\n");
        for (int needle = 0; needle < 48; needle++)
        {
            SeededDraws draws = new(20270405, needle);
            (int column, int row) = (needle % 24 + 1, needle / 24 + 1);
            double Normal(int draw) => NormalQuantile.At(draws.Fraction((ulong)draw));
            (double gain, double offset, double scatter) = (1.0 + 0.008 * Normal(0), 0.04 * Normal(1), 0.012);
            (gain, offset, scatter) = (column, row) switch
            {
                (5, 1) => (0.06, 0.0, 0.3),
                (17, 1) => (0.81, 0.0, scatter),
                (9, 2) => (gain, offset, 0.09),
                _ => (gain, offset, scatter),
            };
            double[] asked = [5, 5, 15, 15, 40, 40];
            for (int reading = 0; reading < asked.Length; reading++)
            {
                bool slip = (column, row, reading) == (3, 2, 3);
                double delivered = (gain * asked[reading] + offset) * (1.0 + scatter * Normal(2 + reading)) * (slip ? 0.6 : 1.0);
                text.Append($"{column},{row},{asked[reading]:0},{delivered / WaterVolume.MillilitresPerGram(20.5, 1009.0):0.00},20.5,1009,B01,{needle + 1}\n");
            }
        }

        return text.ToString();
    }
}
