using System.Globalization;
using CsCheck;
using Dewstone.Reading.Quantities;

namespace Dewstone.Reading.Tests.Quantities;

public sealed class QuantityReaderTests
{
    /// <summary>
    /// Factors from the publications themselves: inch, foot and pound from the international yard and pound agreement (1959: 1 yd =
    /// 0.9144 m, 1 lb = 0.45359237 kg), pound-force with standard gravity 9.80665 m/s2 (third General Conference on Weights and Measures,
    /// 1901), knot from the international nautical mile of 1852 m (Monaco conference, 1929), the rest by definition of the SI prefixes.
    /// </summary>
    public static TheoryData<string, string, double> PublishedFactors => new()
    {
        { "a length", "1 in", 0.0254 },
        { "a length", "1 ft", 0.3048 },
        { "a length", "36 in", 0.9144 },
        { "a length", "3 ft", 0.9144 },
        { "a length", "900 mm", 0.9 },
        { "a length", "0.3 mm", 0.0003 },
        { "a length", "12.5 cm", 0.125 },
        { "a length", "250 um", 0.00025 },
        { "a length", "-0.3 m", -0.3 },
        { "a mass", "1 lb", 0.45359237 },
        { "a mass", "1764 lb", 1764 * 0.45359237 },
        { "a mass", "1.2 t", 1200 },
        { "a mass", "250 g", 0.25 },
        { "a density", "1700 kg/m3", 1700 },
        { "a density", "1.7 g/cm3", 1700 },
        { "a density", "1.7 kg/L", 1700 },
        { "a density", "1.7 t/m3", 1700 },
        { "a density", "100 lb/ft3", 100 * 0.45359237 / (0.3048 * 0.3048 * 0.3048) },
        { "a volume", "0.1 mL", 1e-7 },
        { "a volume", "35 mL", 35e-6 },
        { "a volume", "400 L", 0.4 },
        { "a volume", "35 cm3", 35e-6 },
        { "a volume", "1 in3", 0.0254 * 0.0254 * 0.0254 },
        { "a volume", "1 ft3", 0.3048 * 0.3048 * 0.3048 },
        { "a flow", "4 mL/s", 4e-6 },
        { "a flow", "240 mL/min", 4e-6 },
        { "a flow", "2.5 L/s", 2.5e-3 },
        { "a flow", "150 L/min", 2.5e-3 },
        { "a flow", "9000 L/h", 2.5e-3 },
        { "a flow", "9 m3/h", 2.5e-3 },
        { "a time", "20 min", 1200 },
        { "a time", "36 h", 129_600 },
        { "a time", "7 d", 604_800 },
        { "a time", "1 yr", 365.25 * 86_400 },
        { "a temperature", "20 degC", 20 },
        { "a temperature", "68 degF", 20 },
        { "a temperature", "-40 degF", -40 },
        { "a temperature", "293.15 K", 20 },
        { "a temperature in kelvin", "5000 K", 5000 },
        { "an angle", "60 deg", 60 },
        { "a diffusivity", "3.2e-6 m2/s", 3.2e-6 },
        { "a diffusivity", "3.2 mm2/s", 3.2e-6 },
        { "a diffusivity", "0.032 cm2/s", 3.2e-6 },
        { "a pressure", "12.4 MPa", 12.4e6 },
        { "a pressure", "12.4 N/mm2", 12.4e6 },
        { "a pressure", "5 kPa", 5000 },
        { "a pressure", "1 psi", 0.45359237 * 9.80665 / (0.0254 * 0.0254) },
        { "a force", "12 kN", 12_000 },
        { "a force", "1 lbf", 0.45359237 * 9.80665 },
        { "a weight per volume", "8.5 kN/m3", 8500 },
        { "a weight per volume", "1 lbf/ft3", 0.45359237 * 9.80665 / (0.3048 * 0.3048 * 0.3048) },
        { "a speed", "0.6 m/s", 0.6 },
        { "a speed", "36 km/h", 10 },
        { "a speed", "1 kn", 1852.0 / 3600.0 },
        { "a share", "24 %", 0.24 },
        { "a mass per mass", "0.86 kg/kg", 0.86 },
        { "a mass per mass", "860 kg/t", 0.86 },
        { "a price per mass", "0.16 /kg", 0.16 },
        { "a price per mass", "160 /t", 0.16 },
        { "a price per mass", "0.45359237 /lb", 1 },
        { "a price per volume", "3 /m3", 0.003 },
        { "a mass for each litre", "2 g", 2 },
        { "a number of layers", "1 layer", 1 },
        { "a number of layers", "6 layers", 6 },
        { "a number of places", "40 places", 40 },
        { "a latitude", "41.5 N", 41.5 },
        { "a latitude", "41.5 S", -41.5 },
        { "a longitude", "30.2 W", -30.2 },
        { "a longitude", "30.2 E", 30.2 },
    };

    [Theory]
    [MemberData(nameof(PublishedFactors))]
    public void Quantity_converts_by_its_published_factor(string kindName, string text, double expected)
    {
        QuantityKind kind = QuantityKinds.All.Single(k => k.Name == kindName);

        Assert.Null(QuantityReader.Read(text, kind, out double value));
        Assert.True(Math.Abs(value - expected) <= 4 * Math.BitIncrement(Math.Abs(expected)) - 4 * Math.Abs(expected),
            $"{text}: {value:R} instead of {expected:R}");
    }

    [Fact]
    public void Every_unit_of_measure_is_tried_above()
    {
        string[] tried = [.. PublishedFactors.Select(row => $"{row.Data.Item1}|{row.Data.Item2.Split(' ')[1]}")];

        Assert.Empty(QuantityKinds.All.SelectMany(kind => kind.Units.Select(unit => $"{kind.Name}|{unit.Symbol}"))
            .Except(tried).Except(["a length|m", "a mass|kg", "a volume|m3", "a time|s", "a pressure|Pa", "a force|N",
                "a weight per volume|N/m3",
                "a speed|cm/s", "a mass per mass|g/kg", "a price per volume|/L", "a mass for each litre|mg", "a mass for each litre|kg",
                    "a number of places|place"]));
    }

    /// <summary>Whatever power of ten the unit stands for, the double is the one nearest to the decimal number.</summary>
    [Fact]
    public void Units_of_ten_convert_to_the_nearest_double()
    {
        foreach ((int digits, int exponent) in Cases(Gen.Select(Gen.Int[-999_999_999, 999_999_999], Gen.Int[-12, 6]), 500))
        {
            string number = string.Create(CultureInfo.InvariantCulture, $"{digits}e{exponent}");
            double metres = double.Parse(number, CultureInfo.InvariantCulture);

            Assert.Equal(metres, Read($"{digits}e{exponent + 3} mm", QuantityKinds.Length));
            Assert.Equal(metres, Read($"{digits}e{exponent + 2} cm", QuantityKinds.Length));
            Assert.Equal(metres, Read($"{digits}e{exponent + 6} um", QuantityKinds.Length));
            Assert.Equal(metres, Read($"{number} m", QuantityKinds.Length));
        }
    }

    [Fact]
    public void Quantity_written_in_any_of_its_units_reads_back()
    {
        foreach (double value in Cases(Gen.Double[-1e6, 1e6], 200))
        {
            foreach (QuantityKind kind in QuantityKinds.All)
            {
                foreach (UnitOfMeasure unit in kind.Units)
                {
                    double inUnit = (value * unit.Divide / unit.Multiply) - unit.Offset;
                    string number = inUnit.ToString("R", CultureInfo.InvariantCulture);

                    Assert.InRange(Read($"{number} {unit.Symbol}", kind) - value, -1e-9 * (1 + Math.Abs(value)),
                        1e-9 * (1 + Math.Abs(value)));
                    Assert.Equal(Read($"{number} {unit.Symbol}", kind), Read(number + unit.Symbol, kind));
                }
            }
        }
    }

    [Fact]
    public void Random_text_is_read_or_refused_with_a_remedy()
    {
        Gen<string> texts = Gen.Char["0123456789.,-+eE mkgLsin/%:_'\"NaINf"].Array[0, 12].Select(letters => new string(letters));
        foreach (string text in Cases(texts, 5000))
        {
            foreach (QuantityKind kind in new[] { QuantityKinds.Length, QuantityKinds.Share, QuantityKinds.PricePerMass })
            {
                TextFault? fault = QuantityReader.Read(text, kind, out double value);

                Assert.True(double.IsFinite(value), text);
                Assert.True(fault is null || (fault.Remedy.Length > 0 && fault.Remedy.Contains(kind.UnitList, StringComparison.Ordinal)),
                    text);
                Assert.True(fault is not null || kind.Units.Any(unit => text.TrimEnd(' ').EndsWith(unit.Symbol, StringComparison.Ordinal)),
                    text);
            }
        }
    }

    [Fact]
    public void Symbols_of_a_kind_differ() =>
        Assert.All(QuantityKinds.All, kind => Assert.Equal(kind.Units.Length, kind.Units.Select(unit => unit.Symbol).Distinct().Count()));

    private static double Read(string text, QuantityKind kind)
    {
        Assert.Null(QuantityReader.Read(text, kind, out double value));
        return value;
    }

    // Fixed cases: the library's own sampling starts anew on each run.
    private static IEnumerable<T> Cases<T>(Gen<T> gen, uint count)
    {
        for (uint i = 0; i < count; i++)
        {
            yield return gen.Generate(new PCG(i, 2027), null, out _);
        }
    }
}
