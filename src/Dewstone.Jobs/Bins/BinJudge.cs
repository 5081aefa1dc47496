using Dewstone.Model.Lattices;

namespace Dewstone.Jobs.Bins;

/// <summary>Holds what hardens in a bin against each unit as solved alone, cell by cell. A cell counts for the unit whose box is nearest.</summary>
internal static class BinJudge
{
    /// <summary>Judges a bin.</summary>
    /// <param name="grid">Its cells; as many a pitch and a layer as the units were solved on.</param>
    /// <param name="hardened">What hardens, 1 or 0 a cell.</param>
    /// <param name="columns">Which unit stands where.</param>
    /// <param name="units">The units.</param>
    /// <returns>Their verdicts, in their order.</returns>
    public static IReadOnlyList<BinVerdict> Judge(CellGrid grid, byte[] hardened, BinColumns columns, IReadOnlyList<StandingUnit> units)
    {
        long[] both = new long[units.Count], here = new long[units.Count], alone = new long[units.Count];
        int plane = grid.Nx * grid.Ny;
        for (int z = 0; z < grid.Nz; z++)
        {
            for (int column = 0; column < plane; column++)
            {
                int unit = columns.Owner[column];
                SolvedUnit solved = units[unit].Placed.Solved;
                bool now = hardened[z * plane + column] != 0;
                bool before = columns.Source[column] >= 0 && z < solved.Cells.Nz && solved.Hardened[z * solved.Cells.Nx * solved.Cells.Ny + columns.Source[column]];
                here[unit] += now ? 1 : 0;
                alone[unit] += before ? 1 : 0;
                both[unit] += now && before ? 1 : 0;
            }
        }

        return
        [
            .. units.Select((unit, i) => new BinVerdict(
                unit.Placed, unit.Binned, Ratio(both[i], here[i] + alone[i] - both[i]), Ratio(here[i] - alone[i], alone[i]))),
        ];
    }

    private static double Ratio(long part, long whole) => whole == 0 ? 0.0 : (double)part / whole;
}
