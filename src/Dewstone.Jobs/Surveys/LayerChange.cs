using Dewstone.Model.Lattices;

namespace Dewstone.Jobs.Surveys;

/// <summary>What differs in a layer between the solid as planned and as run.</summary>
/// <param name="Layer">Layer, from 1.</param>
/// <param name="LostLitres">Planned to set and did not, L.</param>
/// <param name="GainedLitres">Set and was not planned to, L.</param>
public readonly record struct LayerChange(int Layer, double LostLitres, double GainedLitres)
{
    /// <summary>Both together, L.</summary>
    public double Litres => LostLitres + GainedLitres;

    /// <summary>Compares two solids on the same cells.</summary>
    /// <param name="grid">The cells.</param>
    /// <param name="planned">1 where it sets as planned.</param>
    /// <param name="asRun">1 where it sets as run.</param>
    /// <returns>One a layer, from the lowest.</returns>
    internal static IReadOnlyList<LayerChange> Between(CellGrid grid, byte[] planned, byte[] asRun)
    {
        int perLayer = grid.Nx * grid.Ny * grid.CellsPerLayer;
        LayerChange[] changes = new LayerChange[grid.Nz / grid.CellsPerLayer];
        for (int k = 0; k < changes.Length; k++)
        {
            int lost = 0, gained = 0;
            for (int i = k * perLayer; i < (k + 1) * perLayer; i++)
            {
                lost += planned[i] & ~asRun[i];
                gained += asRun[i] & ~planned[i];
            }

            changes[k] = new LayerChange(k + 1, lost * grid.CellCubicMetres * 1000.0, gained * grid.CellCubicMetres * 1000.0);
        }

        return changes;
    }
}
