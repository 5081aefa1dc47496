using Dewstone.Model.Lattices;

namespace Dewstone.Model.Results;

/// <summary>What each needle position gets: pump steps and the volume they deliver; index order of the lattice.</summary>
public sealed class DosePlan
{
    /// <summary>The positions.</summary>
    public required Lattice Lattice { get; init; }

    /// <summary>Pump steps; 0 for none.</summary>
    public required int[] Steps { get; init; }

    /// <summary>Delivered volume in hundredths of a millilitre: gain x (steps x pump step) + offset, rounded half away from zero; 0 for none. This is the truth.</summary>
    public required int[] CentiMillilitres { get; init; }

    /// <summary>Delivered volume of a position, millilitres.</summary>
    /// <param name="index">Flat index.</param>
    /// <returns>Millilitres.</returns>
    public double Millilitres(int index) => CentiMillilitres[index] / 100.0;

    /// <summary>Sum of all doses, exact, in hundredths of a millilitre.</summary>
    public long TotalCentiMillilitres
    {
        get
        {
            long sum = 0;
            foreach (int dose in CentiMillilitres)
            {
                sum += dose;
            }

            return sum;
        }
    }
}
