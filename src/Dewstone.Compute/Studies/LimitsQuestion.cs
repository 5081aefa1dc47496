using Dewstone.Model.Description;

namespace Dewstone.Compute.Studies;

/// <summary>What a limits card is asked for.</summary>
public sealed record LimitsQuestion
{
    /// <summary>The mix.</summary>
    public required DryMix Mix { get; init; }

    /// <summary>The printer.</summary>
    public required Printer Printer { get; init; }

    /// <summary>Its needles; null when no needles file is named.</summary>
    public NeedleTable? Needles { get; init; }

    /// <summary>The night; null when none is named.</summary>
    public Tonight? Tonight { get; init; }

    /// <summary>Greatest water/cement allowed, 1, above that at which the mix sets.</summary>
    public double WaterCementLimit { get; init; } = DoseWindowStudy.DefaultWaterCement;

    /// <summary>Cells a voxel side, 2 to 32, even where the head can shift layers.</summary>
    public int Cells { get; init; } = 8;
}
