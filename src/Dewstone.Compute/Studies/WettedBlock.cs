using Dewstone.Compute.Numerics;
using Dewstone.Compute.Wetting;
using Dewstone.Model.Lattices;
using Dewstone.Model.Quantities;
using Dewstone.Model.Results;

namespace Dewstone.Compute.Studies;

/// <summary>A test block as it sets.</summary>
/// <param name="moisture">What the water did.</param>
/// <param name="corner">Lower corner of the block, printer frame, metres; it is not turned.</param>
/// <param name="bed">The loose mix.</param>
internal sealed class WettedBlock(MoistureResult moisture, Point3 corner, BedProperties bed)
{
    private readonly Lazy<float[]> level = new(() => HardenedSurface.Of(moisture, bed.Law, new Parallelism(1)).Level);

    /// <summary>The cells.</summary>
    public CellGrid Grid => moisture.Grid;

    /// <summary>1 where it set; index order of the cells.</summary>
    public byte[] Hardened => moisture.Hardened;

    /// <summary>Level field of the hardened surface, 0 on it; index order of the cells.</summary>
    public float[] Level => level.Value;

    /// <summary>Corner of the cells in the unit frame, metres.</summary>
    public Point3 Origin => Grid.Origin - corner;
}
