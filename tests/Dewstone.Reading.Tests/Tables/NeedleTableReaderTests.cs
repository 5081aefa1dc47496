using Dewstone.Model.Description;
using Dewstone.Model.Diagnostics;
using Dewstone.Reading.Tables;

namespace Dewstone.Reading.Tests.Tables;

public sealed class NeedleTableReaderTests
{
    private static readonly Head Head = new() { Columns = 24, Rows = 12 };

    [Fact]
    public void Rows_are_read_in_SI_units_with_empty_cells_left_open()
    {
        NeedleTable table = Read("3,4,B,17,limited,0.98,-0.05,3.6,2.5\n1,2,,,blocked,1,0,,\n").Value!;

        Assert.Equal(
            ["Board = \"B\"", "Channel = \"17\"", "Column = 3", "Condition = Limited", "Flow CubicMetresPerSecond = 3.6E-06",
                "Gain = 0.98", "OffsetMillilitres = -0.05",
                "Repeatability = 0.025", "Row = 4"],
            RecordText.Lines(table.Needles[0]));
        Assert.Equal(
            ["Board = \"\"", "Channel = \"\"", "Column = 1", "Condition = Blocked", "Flow = none", "Gain = 1", "OffsetMillilitres = 0",
                "Repeatability = none", "Row = 2"],
            RecordText.Lines(table.Needles[1]));
    }

    [Theory]
    [InlineData("1,1,A,1,ok,1,0,4", "DW1041", 2, 1)]
    [InlineData("1,1,A,1,ok,1,0,4,2,9", "DW1041", 2, 1)]
    [InlineData("0,1,A,1,ok,1,0,4,2", "DW1042", 2, 1)]
    [InlineData("1.5,1,A,1,ok,1,0,4,2", "DW1042", 2, 1)]
    [InlineData("1,,A,1,ok,1,0,4,2", "DW1042", 2, 3)]
    [InlineData("1,1,A,1,fine,1,0,4,2", "DW1042", 2, 9)]
    [InlineData("1,1,A,1,OK,1,0,4,2", "DW1042", 2, 9)]
    [InlineData("1,1,A,1,ok,,0,4,2", "DW1042", 2, 12)]
    [InlineData("1,1,A,1,ok,20,0,4,2", "DW1042", 2, 12)]
    [InlineData("1,1,A,1,ok,NaN,0,4,2", "DW1042", 2, 12)]
    [InlineData("1,1,A,1,ok,1 mL,0,4,2", "DW1042", 2, 12)]
    [InlineData("1,1,A,1,ok,1,0,4,200", "DW1042", 2, 18)]
    [InlineData("1,1,A,1,ok,1,0,1e999,2", "DW1042", 2, 16)]
    [InlineData("1,1,\"A\n\",1,ok,1,0,4,2", "DW1041", 2, 1, "DW1041")]
    [InlineData("1,1,A,1,ok,1,0,4,2\n1,1,A,2,ok,1,0,4,2", "DW1043", 3, 1)]
    [InlineData("25,1,A,1,ok,1,0,4,2", "DW1044", 2, 1)]
    [InlineData("1,13,A,1,ok,1,0,4,2", "DW1044", 2, 3)]
    public void Bad_row_is_found_at_its_cell(string rows, string code, int line, int column, string? also = null)
    {
        FileReading<NeedleTable> reading = Read(rows + "\n");

        Assert.Null(reading.Value);
        Assert.Equal(new[] { code, also }.OfType<string>(), reading.Diagnostics.Select(finding => finding.Code));
        Assert.Equal(new SourceLocation("a.csv", line, column), reading.Diagnostics[0].Location);
        Assert.NotEmpty(reading.Diagnostics[0].Remedy);
    }

    [Theory]
    [InlineData("")]
    [InlineData("1,1,A,1,ok,1,0,4,2\n")]
    [InlineData("column;row;board;channel;state;gain;offset_ml;flow_ml_s;repeatability_percent\n")]
    [InlineData("row,column,board,channel,state,gain,offset_ml,flow_ml_s,repeatability_percent\n")]
    public void First_line_that_does_not_name_the_columns_is_found(string text)
    {
        Diagnostic found = Assert.Single(DescriptionReader.NeedlesText(text, "a.csv").Diagnostics);

        Assert.Equal(("DW1040", new SourceLocation("a.csv", 1, 1)), (found.Code, found.Location));
    }

    [Fact]
    public void All_bad_cells_are_found_in_one_go() =>
        Assert.Equal(["2:1", "2:9", "3:12"],
            Read("x,1,A,1,y,1,0,4,2\n1,1,A,1,ok,z,0,4,2\n").Diagnostics.Select(found => $"{found.Location!.Line}:{found.Location.Column}"));

    [Fact]
    public void Blank_lines_and_line_ends_of_other_systems_do_no_harm() =>
        Assert.Equal(2, Read("1,1,A,1,ok,1,0,4,2\r\n\r\n1,2,A,1,ok,1,0,4,2\r\n").Value?.Needles.Count);

    private static FileReading<NeedleTable> Read(string rows) =>
        DescriptionReader.NeedlesText(NeedleTableReader.Header + "\n" + rows, "a.csv", Head);
}
