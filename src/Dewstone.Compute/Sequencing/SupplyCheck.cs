using Dewstone.Model.Description;
using Dewstone.Model.Diagnostics;
using Dewstone.Model.Lattices;
using Dewstone.Model.Results;

namespace Dewstone.Compute.Sequencing;

/// <summary>Holds the water a job draws against what the printer's supply gives: peak flow of a station, and the tank.</summary>
public static class SupplyCheck
{
    /// <summary>Checks a job's doses and timeline; before wetting, since an error here means that the doses would not come as planned.</summary>
    /// <param name="job">Printer and needles of the job.</param>
    /// <param name="lattice">Needle positions.</param>
    /// <param name="doses">The doses as rounded.</param>
    /// <param name="timeline">The machine's steps.</param>
    /// <returns>Findings DW4010 and DW4011.</returns>
    public static IReadOnlyList<Diagnostic> Check(JobDescription job, Lattice lattice, DosePlan doses, Timeline timeline)
    {
        ArgumentNullException.ThrowIfNull(job);
        ArgumentNullException.ThrowIfNull(lattice);
        ArgumentNullException.ThrowIfNull(doses);
        ArgumentNullException.ThrowIfNull(timeline);
        var findings = new List<Diagnostic>();
        (double peak, int layer, int station) = PeakFlow(job, lattice, doses);
        double supply = job.Printer.Supply.Flow.MillilitresPerSecond;
        // The needles' flows are added one by one; a millionth of the supply is rounding.
        if (peak > supply * (1.0 + 1e-6))
        {
            findings.Add(PrinterFindings.FlowAboveSupply.At(
                $"layer {layer}, station {station} draws {peak / 1000.0:0.###} L/s when all its needles run; the supply gives {supply / 1000.0:0.###} L/s",
                "lower needle.flow, fit a stronger supply, or use a head that reaches fewer positions at once",
                new KeyPath(DescriptionKind.Printer, "supply.flow")));
        }

        long drawn = 0;
        foreach (MachineStep step in timeline.Steps)
        {
            drawn += step.CentiMillilitres;
        }

        double tankLitres = job.Printer.Supply.Tank.Litres;
        double drawnLitres = drawn / 100_000.0;
        if (drawnLitres > tankLitres)
        {
            findings.Add(PrinterFindings.TankTooSmall.At(
                $"the job draws {drawnLitres:0.#} L of liquid, flushing included; the tank holds {tankLitres:0.#} L",
                "top up during a spreading, or fit a larger tank",
                new KeyPath(DescriptionKind.Printer, "supply.tank")));
        }

        return findings;
    }

    // Largest sum of the flows of all needles that dose at one station of one layer; the first such place.
    private static (double MillilitresPerSecond, int Layer, int Station) PeakFlow(JobDescription job, Lattice lattice, DosePlan doses)
    {
        Stations stations = Stations.Over(job.Printer);
        HeadNeedles needles = HeadNeedles.Of(job.Printer, job.Needles);
        var flows = new double[stations.Count];
        (double Peak, int Layer, int Station) best = (0.0, 0, 0);
        for (int k = 0; k < lattice.Layers; k++)
        {
            Array.Clear(flows);
            for (int j = 0; j < lattice.Rows; j++)
            {
                for (int i = 0; i < lattice.Columns; i++)
                {
                    if (doses.CentiMillilitres[lattice.Index(i, j, k)] != 0)
                    {
                        StationSeat seat = stations.Seat(lattice, i, j);
                        flows[seat.Station - 1] += needles.FlowMillilitresPerSecond(seat.Column, seat.Row);
                    }
                }
            }

            for (int station = 1; station <= flows.Length; station++)
            {
                if (flows[station - 1] > best.Peak)
                {
                    best = (flows[station - 1], k + 1, station);
                }
            }
        }

        return best;
    }
}
