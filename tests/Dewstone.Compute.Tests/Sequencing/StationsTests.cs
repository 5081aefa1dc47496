using Dewstone.Compute.Dosing;
using Dewstone.Compute.Sequencing;
using Dewstone.Model.Description;
using Dewstone.Model.Lattices;
using Dewstone.Model.Quantities;

namespace Dewstone.Compute.Tests.Sequencing;

public sealed class StationsTests
{
    private static Printer WithHead(int columns, int rows)
    {
        Printer yard = Samples.YardPrinter();
        return yard with { Head = yard.Head with { Columns = columns, Rows = rows } };
    }

    [Fact]
    public void Head_as_large_as_the_raster_needs_one_station()
    {
        Stations stations = Stations.Over(Samples.YardPrinter());

        Assert.Equal(1, stations.Count);
    }

    [Fact]
    public void Stations_are_numbered_row_by_row_from_one()
    {
        Printer printer = WithHead(12, 8);
        Lattice lattice = Placer.Place(Samples.Job(Samples.Box(1.2, 1.2, 0.5), printer: printer), 2).Lattice!;
        Stations stations = Stations.Over(printer);

        Assert.Equal((2, 3), (stations.Across, stations.Deep));
        Assert.Equal(new StationSeat(1, 1, 1), stations.Seat(lattice, 0, 0));
        Assert.Equal(new StationSeat(2, 1, 1), stations.Seat(lattice, 12, 0));
        Assert.Equal(new StationSeat(3, 12, 1), stations.Seat(lattice, 11, 8));
        Assert.Equal(new StationSeat(6, 12, 8), stations.Seat(lattice, 23, 23));
    }

    [Fact]
    public void Last_station_is_pushed_back_so_that_the_head_stays_over_the_bin()
    {
        Printer printer = WithHead(10, 24);
        Lattice lattice = Placer.Place(Samples.Job(Samples.Box(1.2, 1.2, 0.5), printer: printer), 2).Lattice!;
        Stations stations = Stations.Over(printer);

        // 24 columns by a head of 10: blocks 0-9, 10-19 and 20-23; the third stands over 14-23, so column 20 is its seventh needle.
        Assert.Equal(new StationSeat(3, 7, 1), stations.Seat(lattice, 20, 0));
        Assert.Equal(0.025 + 14 * 0.05, stations.HeadTip(lattice, 3, 0).X, 12);
    }

    [Theory]
    [InlineData(1, 1)]
    [InlineData(5, 7)]
    [InlineData(10, 24)]
    [InlineData(23, 11)]
    public void Every_position_is_where_its_station_and_needle_put_it(int columns, int rows)
    {
        Printer printer = WithHead(columns, rows);
        ReefUnit unit = Samples.Box(0.6, 0.6, 0.3) with { Place = new PlacementWish { ShiftedLayers = true, Shift = new Point3(0.1, -0.05, 0) } };
        Lattice lattice = Placer.Place(Samples.Job(unit, printer: printer), 2).Lattice!;
        Stations stations = Stations.Over(printer);

        for (int k = 0; k < lattice.Layers; k++)
        {
            for (int j = 0; j < lattice.Rows; j++)
            {
                for (int i = 0; i < lattice.Columns; i++)
                {
                    StationSeat seat = stations.Seat(lattice, i, j);
                    Point3 head = stations.HeadTip(lattice, seat.Station, k);
                    Point3 tip = lattice.Tip(i, j, k);
                    Assert.InRange(seat.Column, 1, columns);
                    Assert.InRange(seat.Row, 1, rows);
                    Assert.InRange(seat.Station, 1, stations.Count);
                    Assert.Equal(tip.X, head.X + (seat.Column - 1) * 0.05, 9);
                    Assert.Equal(tip.Y, head.Y + (seat.Row - 1) * 0.05, 9);
                    Assert.Equal(tip.Z, head.Z, 12);
                }
            }
        }
    }
}
