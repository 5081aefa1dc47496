using Dewstone.Compute.Sequencing;
using Dewstone.Jobs.Bins;
using Dewstone.Model.Description;
using Dewstone.Model.Quantities;

namespace Dewstone.Jobs.Tests.Bins;

public sealed class IdealHeadTests
{
    [Fact]
    public void Ideal_head_covers_the_bin_in_one_station_and_is_its_own_ideal()
    {
        Printer small = Samples.Printer with
        {
            Head = Samples.Printer.Head with { Columns = 6, Rows = 4 },
            Supply = Samples.Printer.Supply with { Flow = FlowRate.FromMillilitresPerSecond(100.0) },
        };

        Printer ideal = IdealHead.Of(small);

        Assert.Equal(4, Stations.Over(small).Count);
        Assert.Equal(1, Stations.Over(ideal).Count);
        // 12 by 8 positions at 4 mL/s each draw 384 mL/s at once.
        Assert.Equal(384.0, ideal.Supply.Flow.MillilitresPerSecond, 9);
        Assert.Equal(ideal, IdealHead.Of(ideal));
        Assert.Equal(small.Grid, ideal.Grid);
        Assert.Equal(small.Timing, ideal.Timing);
    }

    [Fact]
    public void Bits_of_cells_are_those_that_were_packed()
    {
        byte[] flags = [1, 0, 0, 1, 1, 0, 1, 0, 0, 1, 1];

        CellBits bits = CellBits.Of(flags), again = new(bits.Packed.ToArray(), flags.Length);

        Assert.Equal(2, bits.Packed.Length);
        Assert.All(Enumerable.Range(0, flags.Length), cell => Assert.Equal(flags[cell] != 0, again[cell]));
        Assert.Throws<ArgumentException>(() => new CellBits(new byte[3], flags.Length));
    }
}
