namespace Dewstone.Compute.Tests.Survey;

/// <summary>Needles that deliver nothing more in two layers at least. Needles 3,2 to 3,4 stand over the window at station 1 only, needles 2,2 to 2,4 at both.</summary>
public sealed class StuckNeedlesTests
{
    private static readonly SmallLog Job = Boards("", "", "");

    [Theory]
    [InlineData(4, "DW3065:29 needle 3,3 is stuck from layer 4, station 1 on: 2 doses, 20.0 mL")]
    [InlineData(2, "DW3065:5 needle 3,3 is stuck from layer 2, station 1 on: 4 doses, 40.0 mL")]
    [InlineData(5, "DW3069:41 layer 5, station 1, needle 3,3: 0.0 mL delivered, 10.0 mL planned")]
    public void Needle_is_stuck_from_two_layers_on(int from, string told) => Assert.Equal([told], Job.Told(Job.Log(p => p.Needle == (3, 3) && p.Layer >= from, 0)));

    // At both stations of the last layer it is two doses, but one layer.
    [Fact]
    public void Two_doses_of_one_layer_are_missing_not_stuck()
    {
        Assert.Equal(["DW3065:35 needle 2,3 is stuck from layer 4, station 2 on: 3 doses, 30.0 mL"], Job.Told(Job.Log(p => p.Needle == (2, 3) && p.Block.CompareTo((4, 2)) >= 0, 0)));
        Assert.StartsWith("DW3069:40 needle 2,3, 2 doses: ", Assert.Single(Job.Told(Job.Log(p => p.Needle == (2, 3) && p.Layer == 5, 0))), StringComparison.Ordinal);
    }

    [Fact]
    public void Needle_that_came_back_is_not_stuck() =>
        Assert.StartsWith("DW3069:17 needle 3,3, 2 doses: ", Assert.Single(Job.Told(Job.Log(p => p.Needle == (3, 3) && p.Layer is 3 or 4, 0))), StringComparison.Ordinal);

    [Fact]
    public void All_needles_of_a_board_are_told_as_the_board()
    {
        SmallLog job = Boards("B1", "B1", "B1");
        Assert.Equal(["DW3066:27 board B1 with 3 needles is stuck from layer 4, station 1 on: 6 doses, 60.0 mL"], job.Told(job.Log(p => p is { Column: 3, Layer: >= 4 }, 0)));
    }

    [Theory]
    [InlineData("B1", "B1", "B2", "DW3066 DW3065")]
    [InlineData("B1", "B2", "B3", "DW3065 DW3065 DW3065")]
    [InlineData("", "", "", "DW3065 DW3065 DW3065")]
    public void Two_needles_make_a_board_and_one_without_name_none(string first, string second, string third, string codes)
    {
        SmallLog job = Boards(first, second, third);
        Assert.Equal(codes.Split(' ').Order(), job.Told(job.Log(p => p is { Column: 3, Layer: >= 4 }, 0)).Select(t => t[..6]).Order());
    }

    // The third needle of the board still gave water in the layer from which the others gave none, or went on to the end.
    [Theory]
    [InlineData(5, "DW3065 DW3065 DW3069")]
    [InlineData(6, "DW3065 DW3065")]
    [InlineData(3, "DW3065 DW3066")]
    public void Board_is_stuck_when_none_of_its_needles_gives_water(int thirdFrom, string codes)
    {
        SmallLog job = Boards("B1", "B1", "B1");
        IReadOnlyList<string> told = job.Told(job.Log(p => p.Column == 3 && p.Layer >= (p.Row == 4 ? thirdFrom : 4), 0));
        Assert.Equal(codes.Split(' '), told.Select(t => t[..6]));
    }

    private static SmallLog Boards(string first, string second, string third) =>
        new()
        {
            Needles =
            [
                SmallLog.Needle(3, 2, first), SmallLog.Needle(3, 3, second), SmallLog.Needle(3, 4, third),
                .. Enumerable.Range(0, 6).Select(n => SmallLog.Needle(1 + n % 2, 2 + n / 2, "B9")),
            ],
        };
}
