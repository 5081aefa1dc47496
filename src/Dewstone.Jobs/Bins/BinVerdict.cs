using Dewstone.Model.Description;

namespace Dewstone.Jobs.Bins;

/// <summary>How a unit came out in its bin, held against itself as solved alone.</summary>
/// <param name="Placed">The unit.</param>
/// <param name="Binned">Where it stands.</param>
/// <param name="Overlap">Hardened cells in common over hardened cells of either, 0 to 1.</param>
/// <param name="VolumeError">Hardened volume above that of the unit alone, share of it; below 0 when less hardens.</param>
public sealed record BinVerdict(PlacedUnit Placed, BinnedUnit Binned, double Overlap, double VolumeError)
{
    /// <summary>Least overlap that is let pass, 1.</summary>
    public const double LeastOverlap = 0.995;

    /// <summary>Greatest error of the volume that is let pass, either way, share of it.</summary>
    public const double MostVolumeError = 0.005;

    /// <summary>Whether it is the unit that was designed.</summary>
    public bool Serves => Overlap >= LeastOverlap && Math.Abs(VolumeError) <= MostVolumeError;
}
