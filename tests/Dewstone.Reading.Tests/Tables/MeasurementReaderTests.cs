using Dewstone.Model.Description;
using Dewstone.Model.Diagnostics;
using Dewstone.Model.Measurements;
using Dewstone.Model.Quantities;
using Dewstone.Reading.Tables;

namespace Dewstone.Reading.Tests.Tables;

public sealed class MeasurementReaderTests
{
    private const string Needles = "column,row,asked_ml,weighed_g,water_temperature_c,air_pressure_hpa\n";
    private const string Balls = "dose_ml,diameter_x_mm,diameter_y_mm,diameter_z_mm,wet_mass_g,dry_mass_g,bed_temperature_c\n";
    private const string Pairs = "dose_ml,spacing_mm,length_mm,waist_mm,bed_temperature_c\n";

    [Fact]
    public void Weighings_are_read_in_any_order_of_columns_and_with_more_of_them()
    {
        NeedleReading reading = Assert.Single(MeasurementReader.NeedleChecksText(
            "row,column,board,asked_ml,weighed_g,water_temperature_c,air_pressure_hpa,run\r\n4,3,B2,20,19.93,20.5,1013,spring\r\n\r\n", "a").Value!);
        Assert.Equal(
            new NeedleReading { Column = 3, Row = 4, AskedMillilitres = 20, WeighedGrams = 19.93, WaterCelsius = 20.5, AirHectopascals = 1013, Board = "B2", Line = 2 }, reading);
    }

    [Fact]
    public void First_line_tells_the_kind_of_measurement()
    {
        Assert.Single(MeasurementReader.MixDataText("specimen,time_s,uptake_g,area_cm2\nA,60,3.2,50\n", "a").Value!.Absorption);
        BallReading ball = Assert.Single(MeasurementReader.MixDataText(Balls + "20,60,62,61,230,200,20\n", "a").Value!.Balls);
        Assert.Equal(Math.Cbrt(60.0 * 62.0 * 61.0), ball.DiameterMillimetres, 1e-12);
        Assert.Single(MeasurementReader.MixDataText(Pairs + "20,50,110,55,20\n", "a").Value!.Pairs);
        Assert.Single(MeasurementReader.MixDataText("container_ml,mass_g\n1000,1702\n", "a").Value!.Densities);
    }

    [Theory]
    [InlineData("DW8320", 1, 1, "")]
    [InlineData("DW8320", 1, 1, "column;row;asked_ml;weighed_g\n1;1;20;19,9\n")]
    [InlineData("DW8320", 1, 12, "column,row,asked,weighed_g,water_temperature_c,air_pressure_hpa\n1,1,20,19.93,20.5,1013\n", "DW8320")]
    [InlineData("DW8320", 1, 12, "column,row,aksed_ml,weighed_g,water_temperature_c,air_pressure_hpa\n1,1,20,19.93,20.5,1013\n", "DW8320")]
    [InlineData("DW8320", 1, 68, "column,row,asked_ml,weighed_g,water_temperature_c,air_pressure_hpa,row\n1,1,20,19.93,20.5,1013,1\n")]
    [InlineData("DW8321", 2, 1, Needles + "1,1,20,19,93,20.5,1013\n")]
    [InlineData("DW8321", 3, 1, Needles + "1,1,20,19.93,20.5,1013\n1,1,20\n")]
    [InlineData("DW8322", 2, 5, Needles + "1,1,20 mL,19.93,20.5,1013\n")]
    [InlineData("DW8322", 2, 8, Needles + "1,1,20,-19.93,20.5,1013\n")]
    [InlineData("DW8322", 2, 3, Needles + "1,1.5,20,19.93,20.5,1013\n")]
    [InlineData("DW8322", 2, 14, Needles + "1,1,20,19.93,293.5,1013\n")]
    [InlineData("DW8322", 2, 8, Needles + "1,1,20,NaN,20.5,1013\n")]
    [InlineData("DW8323", 2, 8, Needles + "1,1,20,,20.5,1013\n")]
    [InlineData("DW8324", 1, 1, Needles)]
    public void Bad_weighings_are_found_at_their_cell(string code, int line, int column, string text, string? also = null)
    {
        FileReading<IReadOnlyList<NeedleReading>> reading = MeasurementReader.NeedleChecksText(text, "a.csv");
        Assert.Null(reading.Value);
        Assert.Equal(new[] { code, also }.OfType<string>(), reading.Diagnostics.Select(found => found.Code));
        Assert.Contains(new SourceLocation("a.csv", line, column), reading.Diagnostics.Select(found => found.Location));
        Assert.All(reading.Diagnostics, found => Assert.NotEmpty(found.Remedy));
    }

    [Theory]
    [InlineData(Balls + "20,62,61,60,190,233,20\n")]
    [InlineData(Balls + "20,62,61,6,230,200,20\n")]
    [InlineData(Pairs + "20,110,50,55,20\n")]
    [InlineData(Pairs + "20,50,110,115,20\n")]
    public void Row_that_contradicts_itself_is_found(string text)
    {
        Diagnostic found = Assert.Single(MeasurementReader.MixDataText(text, "a.csv").Diagnostics);
        Assert.Equal(("DW8325", new SourceLocation("a.csv", 2, 1)), (found.Code, found.Location));
    }

    [Fact]
    public void All_faults_are_found_in_one_go() =>
        Assert.Equal(["2:1", "3:5", "4:8"], MeasurementReader.NeedleChecksText(Needles + "1,2\n1,1,x,1,20,1013\n1,1,20,,20,1013\n", "a").Diagnostics
            .Select(found => $"{found.Location!.Line}:{found.Location.Column}"));

    [Fact]
    public void Missing_unit_is_named_in_the_remedy() =>
        Assert.Contains("`asked_ml`", MeasurementReader.NeedleChecksText(Needles.Replace("asked_ml", "asked", StringComparison.Ordinal), "a").Diagnostics
            .Single(found => found.Message.Contains("`asked`", StringComparison.Ordinal)).Remedy, StringComparison.Ordinal);

    [Fact]
    public void Needles_file_that_was_written_is_read_back()
    {
        NeedleTable table = new()
        {
            Needles =
            [
                new NeedleState { Column = 1, Row = 1, Board = "B1", Channel = "7", Condition = NeedleCondition.Limited, Gain = 0.9731, OffsetMillilitres = -0.125, Flow = new FlowRate(3.6e-6), Repeatability = 0.025 },
                new NeedleState { Column = 2, Row = 1, Condition = NeedleCondition.Blocked },
            ],
        };
        FileReading<NeedleTable> back = DescriptionReader.NeedlesText(NeedleTableWriter.Write(table), "a");
        Assert.Equal(table.Needles, back.Value!.Needles);
    }
}
