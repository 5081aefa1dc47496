using Dewstone.Model.Lattices;
using Dewstone.Model.Results;
using Dewstone.Reading.Tables;

namespace Dewstone.Reading.Tests.Tables;

public sealed class DoseTableReaderTests
{
    private static readonly Lattice Positions = new()
    {
        Columns = 2,
        Rows = 1,
        Layers = 1,
        FirstColumn = 0,
        FirstRow = 0,
        PitchMetres = 0.05,
        LayerMetres = 0.05,
        OriginXMetres = 0.0,
        OriginYMetres = 0.0,
        TipDepthMetres = 0.025,
        BinXMetres = 0.1,
        BinYMetres = 0.05,
        UnderLayers = 0,
    };

    [Fact]
    public void Row_waters_the_position_it_names()
    {
        DosePlan plan = Read(1, "5,12.35");
        Assert.Equal([0, 5], plan.Steps);
        Assert.Equal([0, 1235], plan.CentiMillilitres);
    }

    [Theory]
    [InlineData(1, "5,-2.79", "line 2 takes water away")]
    [InlineData(1, "-5,2.79", "line 2 takes water away")]
    [InlineData(1, "5,much", "line 2 has no dose_ml that is a number")]
    [InlineData(2, "5,2.79", "line 2 names a layer the job does not have")]
    public void Row_that_cannot_be_is_refused(int layer, string rest, string why) =>
        Assert.Equal(why, Assert.Throws<InvalidDataException>(() => Read(layer, rest)).Message);

    private static DosePlan Read(int layer, string rest)
    {
        DosePlan plan = new() { Lattice = Positions, Steps = new int[2], CentiMillilitres = new int[2] };
        var tip = Positions.Tip(1, 0, 0);
        DoseTableReader.Read($"layer,x_mm,y_mm,steps,dose_ml\n{layer},{tip.X * 1000.0},{tip.Y * 1000.0},{rest}\n", plan);
        return plan;
    }
}
