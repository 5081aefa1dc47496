namespace Dewstone.Orders.Scheduling;

/// <summary>Mix in the silo at the start, its capacity and the deliveries by time, whole kilograms.</summary>
/// <param name="OnHand">In it at minute 0.</param>
/// <param name="Silo">Capacity, for deliveries: mix that comes back from bins is kept beside when it is full.</param>
/// <param name="Deliveries">By time.</param>
public sealed record SiloStock(int OnHand, int Silo, IReadOnlyList<StockDelivery> Deliveries)
{
    /// <summary>Follows the stock through a schedule. Of a delivery only what fits is taken; at one minute deliveries and returns come before what is spread.</summary>
    /// <param name="moves">What is spread (below 0) and comes back (above 0), when.</param>
    /// <returns>Least level, and what of each delivery was turned away.</returns>
    public (long Least, IReadOnlyList<int> TurnedAway) Follow(IEnumerable<(int At, int Kilograms)> moves)
    {
        var turned = new int[Deliveries.Count];
        long level = OnHand, least = OnHand;
        foreach ((int _, int kilograms, int delivery) in Deliveries.Select((d, index) => (d.At, d.Kilograms, Index: index))
            .Concat(moves.Select(move => (move.At, move.Kilograms, Index: -1))).OrderBy(m => m.At).ThenBy(m => m.Kilograms < 0).ThenBy(m => m.Index))
        {
            long taken = delivery < 0 ? kilograms : Math.Clamp(Silo - level, 0, kilograms);
            if (delivery >= 0)
            {
                turned[delivery] = (int)(kilograms - taken);
            }

            level += taken;
            least = Math.Min(least, level);
        }

        return (least, turned);
    }
}
