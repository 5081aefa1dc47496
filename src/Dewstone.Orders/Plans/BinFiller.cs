using Dewstone.Compute.Dosing;
using Dewstone.Compute.Sequencing;
using Dewstone.Model.Description;
using Dewstone.Orders.Packing;

namespace Dewstone.Orders.Plans;

/// <summary>Fills bins with the units of an order: which ways there are on each printer, and how often each is taken.</summary>
public sealed class BinFiller
{
    /// <summary>Gap where the order says none, pitches: two, so that wetting does not touch; common practice, no source.</summary>
    public const int UsualGap = 2;

    private readonly Order order;
    private readonly IReadOnlyList<LineOnPrinter?>[] byPrinter;
    private readonly List<(BinContent Content, BinOffer Offer)> ways = [];

    /// <summary>Finds the ways to fill bins.</summary>
    /// <param name="order">The order.</param>
    /// <param name="lines">Its lines on its printers; those that cannot be made on one are not among them.</param>
    public BinFiller(Order order, IReadOnlyList<LineOnPrinter> lines)
    {
        ArgumentNullException.ThrowIfNull(order);
        ArgumentNullException.ThrowIfNull(lines);
        this.order = order;
        int printers = lines.Max(line => line.Footing.Printer) + 1;
        byPrinter = [.. Enumerable.Range(0, printers).Select(printer => (IReadOnlyList<LineOnPrinter?>)[.. order.Units.Select((_, line) =>
            lines.FirstOrDefault(l => l.Footing.Printer == printer && l.Footing.Line == line))])];
        // Units share a bin when printer, mix, layering and height above the floor agree.
        foreach (IGrouping<(int, string, bool?, double), LineOnPrinter> group in lines.GroupBy(
            l => (l.Footing.Printer, l.MixHash, l.Footing.Wish.ShiftedLayers, l.Footing.Wish.Shift?.Z ?? 0.0)))
        {
            AddGroup([.. group.OrderBy(line => line.Footing.Line)]);
        }
    }

    /// <summary>Whether the ways are proved to be all.</summary>
    public bool Complete { get; private set; } = true;

    /// <summary>Whether some bin holds a unit of a line.</summary>
    /// <param name="line">Line, from 0.</param>
    /// <returns>False when it can be made nowhere.</returns>
    public bool Holds(int line) => ways.Exists(way => way.Offer.Counts[line] > 0);

    /// <summary>Chooses bins for the whole order.</summary>
    /// <param name="goal">What to be best in.</param>
    /// <returns>The bins, printer by printer, fullest first; every unit of the order stands in one. And whether no choice is better in the goal.</returns>
    public (IReadOnlyList<BinContent> Bins, bool Proved) Choose(BinGoal goal)
    {
        int[] wanted = [.. order.Units.Select(line => line.Quantity)];
        BinChoice choice = BinChooser.Choose([.. ways.Select(way => way.Offer)], wanted, goal)
            ?? throw new InvalidOperationException("A line has no bin; its caller asks first.");
        List<BinContent> bins = [];
        Dictionary<(int Way, string Left), BinContent> trimmed = [];
        foreach (int way in Enumerable.Range(0, ways.Count).OrderBy(w => ways[w].Offer.Printer).ThenByDescending(w => ways[w].Offer.Counts.Sum()).ThenBy(w => w))
        {
            for (int time = 0; time < choice.Times[way]; time++)
            {
                List<UnitSpot> spots = [.. ways[way].Content.Spots.Where(spot => wanted[spot.Line]-- > 0)];
                for (int line = 0; line < wanted.Length; line++)
                {
                    wanted[line] = Math.Max(0, wanted[line]);
                }

                if (spots.Count == ways[way].Content.Spots.Count)
                {
                    bins.Add(ways[way].Content);
                }
                else if (spots.Count > 0)
                {
                    (int, string) key = (way, string.Join(' ', spots));
                    bins.Add(trimmed.TryGetValue(key, out BinContent? known) ? known : trimmed[key] = BinContent.Of(byPrinter[ways[way].Offer.Printer], spots));
                }
            }
        }

        return (bins, Complete && choice.Proved);
    }

    private void AddGroup(LineOnPrinter[] lines)
    {
        Printer printer = lines[0].Job.Printer;
        Raster raster = Raster.Over(printer);
        BinSpace space = Space(lines[0], raster);
        PackedKind[] kinds = [.. lines.Select(line => new PackedKind
        {
            Columns = line.Footing.Columns,
            Rows = line.Footing.Rows,
            Count = order.Units[line.Footing.Line].Quantity,
            Layers = line.Footing.Layers,
            WaterKilograms = line.WaterCubicMetres * line.Job.Mix.Liquid.Density.KilogramsPerCubicMetre,
        })];
        PatternSet set = PatternSearch.Find(space, kinds);
        Complete &= set.Complete;
        int index = lines[0].Footing.Printer;
        SoundPlaces sound = new(lines, space);
        foreach (BinPattern pattern in set.Patterns)
        {
            BinContent content = BinContent.Of(byPrinter[index], sound.Stand(pattern.Places));
            int[] counts = new int[order.Units.Count];
            for (int kind = 0; kind < kinds.Length; kind++)
            {
                counts[lines[kind].Footing.Line] = pattern.Counts[kind];
            }

            ways.Add((content, new BinOffer(index, counts, content.Minutes + Change(order))));
        }
    }

    private BinSpace Space(LineOnPrinter line, Raster raster)
    {
        Printer printer = line.Job.Printer;
        int gap = order.Gap is { } asked ? (int)((Raster.Micrometres(asked) + raster.PitchMicrometres - 1) / raster.PitchMicrometres) : UsualGap;
        double layer = printer.Bin.SizeX.Metres * printer.Bin.SizeY.Metres * printer.Grid.LayerHeight.Metres * line.Job.LooseDensity.KilogramsPerCubicMetre;
        return new BinSpace
        {
            Columns = raster.Columns - raster.FirstColumn,
            Rows = raster.Rows - raster.FirstRow,
            Gap = gap,
            Wall = (gap + 1) / 2,
            LeastWall = line.Footing.Wish.ShiftedLayers == true ? Footprint.ShiftedMargin : 0,
            MostUnits = order.Crew is { } crew && crew.DigOut.Seconds > 0.0 ? (int)Math.Min(int.MaxValue, Math.Floor(crew.Hours.Seconds / crew.DigOut.Seconds)) : int.MaxValue,
            KilogramsALayer = layer,
            MostKilograms = order.Bins?.Handling.Kilograms ?? double.PositiveInfinity,
        };
    }

    /// <summary>Minutes of a change of bins, rounded up.</summary>
    /// <param name="order">The order.</param>
    /// <returns>0 when the order says nothing.</returns>
    internal static int Change(Order order) => order.Bins is { } bins ? (int)Math.Ceiling(bins.Change.Minutes - 1e-9) : 0;
}
