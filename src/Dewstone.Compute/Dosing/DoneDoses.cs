using Dewstone.Compute.Sequencing;
using Dewstone.Model.Description;
using Dewstone.Model.Lattices;

namespace Dewstone.Compute.Dosing;

/// <summary>Which doses of a print were given before its stop.</summary>
public static class DoneDoses
{
    /// <summary>Marks them.</summary>
    /// <param name="job">Printer and stop; without a stop none is done.</param>
    /// <param name="lattice">Needle positions.</param>
    /// <returns>True where the machine has been; index order of the lattice.</returns>
    public static bool[] Of(JobDescription job, Lattice lattice)
    {
        ArgumentNullException.ThrowIfNull(job);
        ArgumentNullException.ThrowIfNull(lattice);
        var done = new bool[lattice.Count];
        if (job.Stop is { } stop)
        {
            Stations stations = Stations.Over(job.Printer);
            int perLayer = lattice.Columns * lattice.Rows;
            for (int index = 0; index < done.Length; index++)
            {
                int station = stations.Seat(lattice, index % lattice.Columns, index / lattice.Columns % lattice.Rows).Station;
                done[index] = stop.IsDone(index / perLayer + 1, station);
            }
        }

        return done;
    }
}
