using Dewstone.Model.Quantities;

namespace Dewstone.Model.Description;

/// <summary>Everything one job is made from, after it was decided who wins: command line, then tonight, then order, then unit.</summary>
public sealed record JobDescription
{
    /// <summary>The reef unit; of a bin job a stand-in, named as the bin, whose outer box holds the boxes of all its units.</summary>
    public required ReefUnit Unit { get; init; }

    /// <summary>The units of a bin job, by mark; empty for a single unit.</summary>
    public IReadOnlyList<BinnedUnit> Bin { get; init; } = [];

    /// <summary>The dry mix, as in its file.</summary>
    public required DryMix Mix { get; init; }

    /// <summary>The printer.</summary>
    public required Printer Printer { get; init; }

    /// <summary>Its needles; null when no needles file is named.</summary>
    public NeedleTable? Needles { get; init; }

    /// <summary>The site; null when none is named.</summary>
    public Site? Site { get; init; }

    /// <summary>The night; null when none is named.</summary>
    public Tonight? Tonight { get; init; }

    /// <summary>The stop after which the rest is printed; null for a print in one go.</summary>
    public PrintStop? Stop { get; init; }

    /// <summary>Bed temperature in force: tonight's, else 20 degC.</summary>
    public Temperature BedTemperature => Tonight?.BedTemperature ?? new Temperature(20.0);

    /// <summary>Curing temperature in force: tonight's, else 15 degC.</summary>
    public Temperature CuringTemperature => Tonight?.CuringTemperature ?? new Temperature(15.0);

    /// <summary>Loose density in force: tonight's, else the mix's.</summary>
    public Density LooseDensity => Tonight?.LooseDensity ?? Mix.LooseDensity;
}
