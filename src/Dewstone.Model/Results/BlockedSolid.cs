namespace Dewstone.Model.Results;

/// <summary>The wanted solid that lies in voxels of blocked needles, before neighbours bring what they can.</summary>
/// <param name="Needles">Blocked needles over the wanted solid.</param>
/// <param name="Litres">Wanted solid in their voxels, litres.</param>
/// <param name="Share">The same as a share of the wanted solid, 0 to 1: of the water wanted, too.</param>
public sealed record BlockedSolid(int Needles, double Litres, double Share);
