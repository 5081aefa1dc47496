using Dewstone.Model.Lattices;

namespace Dewstone.Model.Results;

/// <summary>What the water did: final moisture and hardened cells; index order of the grid.</summary>
public sealed class MoistureResult
{
    /// <summary>The cells.</summary>
    public required CellGrid Grid { get; init; }

    /// <summary>Volumetric water content when each layer froze, 1.</summary>
    public required float[] VolumetricWaterContent { get; init; }

    /// <summary>1 where water/cement reached the threshold, else 0.</summary>
    public required byte[] Hardened { get; init; }

    /// <summary>Binder mass per volume of bed, kg/m3; water/cement = content x liquid density / this.</summary>
    public required double BinderKilogramsPerCubicMetre { get; init; }

    /// <summary>Liquid density, kg/m3.</summary>
    public required double LiquidKilogramsPerCubicMetre { get; init; }

    /// <summary>Pore volume per volume of bed, 1.</summary>
    public required double Porosity { get; init; }

    /// <summary>Volumetric water content at which it sets, 1.</summary>
    public required double ThresholdContent { get; init; }

    /// <summary>Water injected, cubic metres.</summary>
    public required double InjectedCubicMetres { get; init; }

    /// <summary>Water the bed did not take (pores full), cubic metres.</summary>
    public required double RefusedCubicMetres { get; init; }

    /// <summary>Water in the field at the end, cubic metres, summed in double precision in a fixed order.</summary>
    public required double FieldCubicMetres { get; init; }

    /// <summary>Positions (flat lattice index) whose dose was partly refused, with the refused volume in cubic metres, by index.</summary>
    public required IReadOnlyList<RefusedDose> Refused { get; init; }

    /// <summary>Largest content seen anywhere at any time, 1.</summary>
    public required double LargestContent { get; init; }

    /// <summary>Whether water reached a side of the window that is no bin wall: the window was too small and the water was held back there.</summary>
    public bool TouchedWindowEdge { get; init; }

    /// <summary>Time steps taken.</summary>
    public required int TimeSteps { get; init; }

    /// <summary>Cell updates done.</summary>
    public required long CellUpdates { get; init; }

    /// <summary>Water/cement of a cell, 1.</summary>
    /// <param name="index">Flat cell index.</param>
    /// <returns>The ratio by mass.</returns>
    public double WaterCement(int index) => VolumetricWaterContent[index] * LiquidKilogramsPerCubicMetre / BinderKilogramsPerCubicMetre;
}
