using CsCheck;
using Dewstone.Orders.Packing;

namespace Dewstone.Orders.Tests.Packing;

public sealed class PackingTests
{
    /// <summary>Items 6 x 51, 6 x 27, 6 x 26, 12 x 23 in bins of 100: first fit decreasing takes 11, sum 900 so that 9 is the least (the textbook case of Johnson et al. 1974; from memory).</summary>
    [Fact]
    public void Bins_of_100_are_filled_without_waste_where_first_fit_decreasing_takes_eleven()
    {
        PackedKind[] kinds = [.. new[] { (51, 6), (27, 6), (26, 6), (23, 12) }.Select(k => new PackedKind { Columns = k.Item1, Rows = 1, Count = k.Item2 })];

        PatternSet set = PatternSearch.Find(new BinSpace { Columns = 100, Rows = 1 }, kinds);
        BinChoice choice = BinChooser.Choose([.. set.Patterns.Select(p => new BinOffer(0, p.Counts, 1))], [.. kinds.Select(k => k.Count)], BinGoal.FewestBins)!;

        Assert.True(set.Complete);
        Assert.Equal(11, FirstFitDecreasing([.. kinds.SelectMany(k => Enumerable.Repeat(k.Columns, k.Count))], 100));
        Assert.Equal((9, 9L, true), (choice.Bins, choice.Bound, choice.Proved));
    }

    /// <summary>Nine squares of sides 18 15 14 10 9 8 7 4 1 fill a rectangle of 33 x 32 (area 1056) without a gap: Moron 1925, the perfect rectangle of order 9.</summary>
    [Fact]
    public void Nine_squares_fill_the_perfect_rectangle_of_33_by_32()
    {
        PackedKind[] kinds = Squares(18, 15, 14, 10, 9, 8, 7, 4, 1);
        BinSpace space = new() { Columns = 33, Rows = 32 };

        PatternSet set = PatternSearch.Find(space, kinds);

        BinPattern pattern = Assert.Single(set.Patterns);
        Assert.True(set.Complete);
        AssertValid(space, kinds, pattern);
        Assert.Equal(33 * 32, pattern.Places.Sum(p => p.Columns(kinds) * p.Rows(kinds)));
    }

    /// <summary>Of the rectangles of this area only 33 x 32 is filled by these nine (the perfect rectangles of order 9 are two, the other 69 x 61): the solver has to prove it.</summary>
    [Fact]
    public void Nine_squares_do_not_fit_a_rectangle_of_equal_area_of_44_by_24()
    {
        PatternSet set = PatternSearch.Find(new BinSpace { Columns = 44, Rows = 24 }, Squares(18, 15, 14, 10, 9, 8, 7, 4, 1));

        Assert.True(set.Complete);
        Assert.DoesNotContain(set.Patterns, p => p.Counts.Sum() == 9);
    }

    /// <summary>Twenty-one squares fill a square of 112, the least number of different squares that do (Duijvestijn 1978; name and year from memory).</summary>
    [Fact]
    public void Twenty_one_squares_fill_the_perfect_square_of_112()
    {
        PackedKind[] kinds = Squares(50, 42, 37, 35, 33, 29, 27, 25, 24, 19, 18, 17, 16, 15, 11, 9, 8, 7, 6, 4, 2);
        BinSpace space = new() { Columns = 112, Rows = 112 };

        BinPattern pattern = Assert.Single(PatternSearch.Find(space, kinds).Patterns);

        AssertValid(space, kinds, pattern);
        Assert.Equal(112 * 112, pattern.Places.Sum(p => p.Columns(kinds) * p.Rows(kinds)));
    }

    [Fact]
    public void Seeded_kinds_are_packed_apart_by_the_gap_within_the_bin_and_the_mass()
    {
        Gen<(int Columns, int Rows, int Gap, int Wall, (int W, int D, int Count)[] Kinds)> gen = Gen.Select(
            Gen.Int[8, 30], Gen.Int[8, 30], Gen.Int[0, 3], Gen.Int[0, 2], Gen.Select(Gen.Int[1, 9], Gen.Int[1, 9], Gen.Int[1, 6]).Array[1, 3]);
        for (uint i = 0; i < 25; i++)
        {
            var (columns, rows, gap, wall, drawn) = gen.Generate(new PCG(i, 17), null, out _);
            BinSpace space = new() { Columns = columns, Rows = rows, Gap = gap, Wall = wall, MostUnits = 7, KilogramsALayer = 10, MostKilograms = 90 };
            PackedKind[] kinds = [.. drawn.Select((d, k) => new PackedKind { Columns = d.W, Rows = d.D, Count = d.Count, Layers = 3 + k, WaterKilograms = 8 })];

            PatternSet set = PatternSearch.Find(space, kinds);

            Assert.All(set.Patterns, pattern => AssertValid(space, kinds, pattern));
            Assert.Equal(set.Patterns.Select(p => string.Join(' ', p.Places)), PatternSearch.Find(space, kinds).Patterns.Select(p => string.Join(' ', p.Places)));
        }
    }

    [Fact]
    public void Turning_the_bin_and_all_footprints_leaves_the_counts_that_fit()
    {
        PackedKind[] kinds = [new PackedKind { Columns = 9, Rows = 5, Count = 6 }, new PackedKind { Columns = 4, Rows = 7, Count = 3 }];
        PackedKind[] turned = [.. kinds.Select(k => k with { Columns = k.Rows, Rows = k.Columns })];

        PatternSet set = PatternSearch.Find(new BinSpace { Columns = 24, Rows = 16, Gap = 2 }, kinds);
        PatternSet other = PatternSearch.Find(new BinSpace { Columns = 16, Rows = 24, Gap = 2 }, turned);

        Assert.True(set.Complete && other.Complete);
        Assert.Equal(set.Patterns.Select(p => string.Join(',', p.Counts)).Order(), other.Patterns.Select(p => string.Join(',', p.Counts)).Order());
    }

    [Fact]
    public void The_least_busy_printer_is_served_by_both_printers_and_the_fewest_bins_by_the_larger()
    {
        BinOffer[] offers = [new(0, [4, 0], 60), new(1, [2, 0], 40)];

        Assert.Equal([5, 0], BinChooser.Choose(offers, [20, 0], BinGoal.FewestBins)!.Times);
        // 20 units: three bins of four (180 min) and four of two (160 min); 240 and 200 min are the neighbours.
        BinChoice balanced = BinChooser.Choose(offers, [20, 0], BinGoal.LeastBusyPrinter)!;
        Assert.Equal([3, 4], balanced.Times);
        Assert.Equal(180, balanced.Bound);
        Assert.Null(BinChooser.Choose(offers, [20, 1], BinGoal.FewestBins));
    }

    internal static void AssertValid(BinSpace space, IReadOnlyList<PackedKind> kinds, BinPattern pattern)
    {
        Assert.Equal(pattern.Counts, Enumerable.Range(0, kinds.Count).Select(kind => pattern.Places.Count(p => p.Kind == kind)));
        Assert.True(pattern.Counts.Sum() <= space.MostUnits && space.Kilograms(kinds, pattern.Counts) <= space.MostKilograms);
        for (int a = 0; a < pattern.Places.Count; a++)
        {
            PackedPlace one = pattern.Places[a];
            Assert.InRange(one.Column, 0, space.Columns - one.Columns(kinds));
            Assert.InRange(one.Row, 0, space.Rows - one.Rows(kinds));
            for (int b = a + 1; b < pattern.Places.Count; b++)
            {
                PackedPlace other = pattern.Places[b];
                int betweenColumns = Math.Max(other.Column - one.Column - one.Columns(kinds), one.Column - other.Column - other.Columns(kinds));
                int betweenRows = Math.Max(other.Row - one.Row - one.Rows(kinds), one.Row - other.Row - other.Rows(kinds));
                Assert.True(Math.Max(betweenColumns, betweenRows) >= space.Gap, $"{one} and {other}");
            }
        }
    }

    private static PackedKind[] Squares(params int[] sides) => [.. sides.Select(side => new PackedKind { Columns = side, Rows = side, Count = 1 })];

    private static int FirstFitDecreasing(int[] sizes, int capacity)
    {
        List<int> bins = [];
        foreach (int size in sizes.OrderDescending())
        {
            int into = bins.FindIndex(left => left >= size);
            if (into < 0)
            {
                bins.Add(capacity - size);
            }
            else
            {
                bins[into] -= size;
            }
        }

        return bins.Count;
    }
}
