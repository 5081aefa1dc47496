using Dewstone.Compute.Sequencing;
using Dewstone.Model.Description;
using Dewstone.Model.Diagnostics;
using Dewstone.Model.Lattices;
using Dewstone.Model.Results;

namespace Dewstone.Jobs.Resuming;

/// <summary>What was really delivered before a stop.</summary>
internal static class DeliveredDoses
{
    /// <summary>Takes a run log into the doses of a job.</summary>
    /// <param name="job">Printer and stop.</param>
    /// <param name="planned">Doses of the tables.</param>
    /// <param name="log">What was delivered; null for what the tables say.</param>
    /// <param name="file">The log's file, for findings.</param>
    /// <param name="findings">Takes DW8303 and DW8304.</param>
    /// <returns>The doses; those after the stop are as planned.</returns>
    public static DosePlan Of(JobDescription job, DosePlan planned, IReadOnlyList<DeliveredDose>? log, string file, DiagnosticBag findings)
    {
        if (log is null)
        {
            return planned;
        }

        Dictionary<(int Layer, int Station, int Column, int Row), int> positions = Positions(job, planned);
        DosePlan delivered = new() { Lattice = planned.Lattice, Steps = [.. planned.Steps], CentiMillilitres = [.. planned.CentiMillilitres] };
        int doses = positions.Count;
        foreach (DeliveredDose row in log)
        {
            if (!positions.Remove((row.Layer, row.Station, row.Column, row.Row), out int index))
            {
                findings.Add(RunLogFindings.NoSuchDose.At(
                    $"layer {row.Layer}, station {row.Station}, needle {row.Column},{row.Row} has no dose before the stop in this job, or has a row already",
                    "check the job, --after and --station", location: new SourceLocation(file, row.Line, 1)));
                continue;
            }

            delivered.CentiMillilitres[index] = row.CentiMillilitres;
            delivered.Steps[index] = row.CentiMillilitres == 0 ? 0 : planned.Steps[index];
        }

        if (positions.Count > 0)
        {
            findings.Add(RunLogFindings.Partial.At(
                $"{positions.Count} of {doses} doses before the stop have no row in the run log and are taken as tabled", "nothing to do when the log holds only what differed",
                location: new SourceLocation(file, 1, 1)));
        }

        return delivered;
    }

    private static Dictionary<(int Layer, int Station, int Column, int Row), int> Positions(JobDescription job, DosePlan planned)
    {
        Lattice lattice = planned.Lattice;
        Stations stations = Stations.Over(job.Printer);
        Dictionary<(int Layer, int Station, int Column, int Row), int> positions = [];
        for (int index = 0; index < lattice.Count; index++)
        {
            int layer = index / (lattice.Columns * lattice.Rows) + 1;
            StationSeat seat = stations.Seat(lattice, index % lattice.Columns, index / lattice.Columns % lattice.Rows);
            if (planned.CentiMillilitres[index] > 0 && job.Stop!.IsDone(layer, seat.Station))
            {
                positions.Add((layer, seat.Station, seat.Column, seat.Row), index);
            }
        }

        return positions;
    }
}
