using Dewstone.Model.Quantities;

namespace Dewstone.Model.Results;

/// <summary>What a mix on a printer can hold, from test blocks wetted by computation with corrected doses.</summary>
public sealed record LimitsCard
{
    /// <summary>Share of a drawn hole that counts as wide, 1.</summary>
    public const double WideShare = 0.75;

    /// <summary>Name of the mix.</summary>
    public required string Mix { get; init; }

    /// <summary>Name of the printer.</summary>
    public required string Printer { get; init; }

    /// <summary>Pitch of the needles, metres.</summary>
    public required double PitchMetres { get; init; }

    /// <summary>Layer height, metres.</summary>
    public required double LayerMetres { get; init; }

    /// <summary>Bed temperature in force.</summary>
    public required Temperature BedTemperature { get; init; }

    /// <summary>Density of the bed as spread, in force.</summary>
    public required Density LooseDensity { get; init; }

    /// <summary>How long water moves at that temperature, s.</summary>
    public required double WindowSeconds { get; init; }

    /// <summary>Cells a voxel side on which the blocks were judged.</summary>
    public required int CellsPerVoxel { get; init; }

    /// <summary>Step of hole diameters, metres.</summary>
    public required double HoleStepMetres { get; init; }

    /// <summary>Step of wall thicknesses, metres.</summary>
    public required double WallStepMetres { get; init; }

    /// <summary>The doses.</summary>
    public required DoseWindow Window { get; init; }

    /// <summary>Straight layers, then shifted ones where the head can.</summary>
    public required IReadOnlyList<LayeringLimits> Layerings { get; init; }
}
