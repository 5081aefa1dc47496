using Dewstone.Compute.Dosing;
using Dewstone.Compute.Strength;
using Dewstone.Model.Description;
using Dewstone.Model.Lattices;
using Dewstone.Model.Results;

namespace Dewstone.Orders.Plans;

/// <summary>What the plan knows of a line of the order on one printer: its description as written, stood on the grid and dosed plainly.</summary>
public sealed record LineOnPrinter
{
    /// <summary>How it stands.</summary>
    public required Footing Footing { get; init; }

    /// <summary>Unit, mix and the real printer with its needles.</summary>
    public required JobDescription Job { get; init; }

    /// <summary>SHA-256 of the mix's file.</summary>
    public required string MixHash { get; init; }

    /// <summary>Where it stands when it stands alone.</summary>
    public required UnitPlacement Placement { get; init; }

    /// <summary>The positions its box touches there.</summary>
    public required Footprint Footprint { get; init; }

    /// <summary>Doses of the first dosing.</summary>
    public required DosePlan Doses { get; init; }

    /// <summary>Volume of the wanted solid, cubic metres; what is taken to harden.</summary>
    public required double SolidCubicMetres { get; init; }

    /// <summary>Ages at the water/cement of the first dosing.</summary>
    public required PlannedAges Ages { get; init; }

    /// <summary>Water of one unit, cubic metres.</summary>
    public double WaterCubicMetres => Doses.TotalCentiMillilitres / 1e8;
}
