namespace Dewstone.Jobs.Emission;

/// <summary>Looks up which needle waters a position of the lattice.</summary>
/// <param name="i">Position along x, from 0.</param>
/// <param name="j">Position along y, from 0.</param>
/// <param name="k">Layer, from 0.</param>
/// <returns>Station and needle.</returns>
public delegate NeedleAddress NeedleAddressing(int i, int j, int k);
