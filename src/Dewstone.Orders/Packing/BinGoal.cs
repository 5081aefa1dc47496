namespace Dewstone.Orders.Packing;

/// <summary>What a choice of bins is to be best in.</summary>
public enum BinGoal
{
    /// <summary>Fewest bins, then least printing time in all.</summary>
    FewestBins,

    /// <summary>Least printing time of the busiest printer, then fewest bins.</summary>
    LeastBusyPrinter,
}
