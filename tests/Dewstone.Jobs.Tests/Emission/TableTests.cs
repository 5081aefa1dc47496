using System.Text;
using Dewstone.Jobs.Emission;
using Dewstone.Jobs.Emission.Tables;
using Dewstone.Model.Description;

namespace Dewstone.Jobs.Tests.Emission;

public sealed class TableTests
{
    [Fact]
    public void Dose_tables_are_written_for_layers_with_water_only()
    {
        IReadOnlyList<EmittedFile> tables = DoseTableEmitter.Emit(Samples.Doses(), needles: null, Samples.OneStation);

        Assert.Equal(["doses/layer-002.csv", "doses/layer-003.csv"], tables.Select(table => table.RelativePath));
    }

    [Fact]
    public void Dose_table_text_is_exact()
    {
        // Positions 1 and 2 of row 1 in a window that begins at column 2, row 1 of a 50 mm raster: x = 25 + (2 + i) 50, y = 25 + (1 + 1) 50;
        // the tip of layer 2 hangs 25 mm below its top at 100 mm.
        EmittedFile table = DoseTableEmitter.Emit(Samples.Doses(), needles: null, Samples.OneStation)[0];

        Assert.Equal(
            """
            layer,station,column,row,board,channel,x_mm,y_mm,z_mm,dose_ml,steps
            2,1,2,2,,,175.0,125.0,75.0,28.11,281
            2,1,3,2,,,225.0,125.0,75.0,28.22,282

            """,
            Text(table));
    }

    [Fact]
    public void Dose_table_names_board_and_channel_and_quotes_them_when_it_must()
    {
        NeedleTable needles = new()
        {
            Needles =
            [
                new NeedleState { Column = 2, Row = 2, Board = "B1", Channel = "7" },
                new NeedleState { Column = 3, Row = 2, Board = "left, \"old\"", Channel = "8" },
            ],
        };

        string[] lines = Text(DoseTableEmitter.Emit(Samples.Doses(), needles, Samples.OneStation)[0]).Split('\n');

        Assert.Equal("2,1,2,2,B1,7,175.0,125.0,75.0,28.11,281", lines[1]);
        Assert.Equal("2,1,3,2,\"left, \"\"old\"\"\",8,225.0,125.0,75.0,28.22,282", lines[2]);
    }

    [Fact]
    public void Dose_table_rows_go_by_station_then_row_then_column()
    {
        // The second station comes first along x here.
        EmittedFile table = DoseTableEmitter.Emit(Samples.Doses(), needles: null, (i, j, _) => new NeedleAddress(i == 1 ? 2 : 1, i, j))[0];

        Assert.Equal(["2,1,2,1", "2,2,1,1"], Text(table).Split('\n')[1..3].Select(line => string.Join(',', line.Split(',')[..4])));
    }

    [Fact]
    public void Sequence_text_is_exact()
    {
        string[] lines = Text(SequenceEmitter.Emit(Samples.Job().Timeline)).Split('\n');

        Assert.Equal(
            [
                "step,layer,station,action,x_mm,y_mm,z_mm,seconds,volume_ml,mass_kg",
                "1,1,,spread,,,,50.000,,20.400",
                "2,2,,spread,,,,50.000,,20.400",
                "3,2,1,move,25.0,25.0,75.0,6.000,,",
                "4,2,1,plunge,25.0,25.0,75.0,4.000,,",
                "5,2,1,dose,25.0,25.0,75.0,7.055,56.33,",
                "6,2,1,hold,25.0,25.0,75.0,1.000,,",
                "7,2,1,withdraw,25.0,25.0,75.0,4.000,,",
                "8,2,,flush,,,,2.000,768.00,",
                "9,3,,spread,,,,50.000,,20.400",
            ],
            lines[..10]);
    }

    [Theory]
    [InlineData(0.0, "0.0")]
    [InlineData(0.02540, "25.4")]
    [InlineData(0.01905, "19.1")]
    [InlineData(1.23454999, "1234.6")]
    [InlineData(-0.00005, "-0.1")]
    [InlineData(0.1 + 0.2, "300.0")]
    public void Millimetres_are_whole_micrometres_rounded_half_away_from_zero(double metres, string expected)
    {
        CsvText csv = new("h");
        csv.Millimetres(metres).EndRow();

        Assert.Equal($"h\n{expected}\n", Encoding.UTF8.GetString(csv.ToBytes()));
    }

    [Theory]
    [InlineData(5, 2, "0.05")]
    [InlineData(-5, 2, "-0.05")]
    [InlineData(123456789012345678, 3, "123456789012345.678")]
    public void Fixed_numbers_keep_their_zeros(long units, int places, string expected)
    {
        CsvText csv = new("h");
        csv.Fixed(units, places).EndRow();

        Assert.Equal($"h\n{expected}\n", Encoding.UTF8.GetString(csv.ToBytes()));
    }

    private static string Text(EmittedFile file) => Encoding.UTF8.GetString(file.Bytes.Span);
}
