using Dewstone.Model.Description;
using Dewstone.Model.Lattices;
using Dewstone.Model.Quantities;
using Dewstone.Model.Results;

namespace Dewstone.Compute.Sequencing;

/// <summary>
/// Lays out what the machine does, in order: the one timeline that drives the wetting, the estimate and the sequence file.
/// </summary>
/// <remarks>
/// Every layer is spread; then, at each station that has doses in it: move, plunge, dose (all needles start together; the station lasts as long as
/// its longest pump time, rounded up to a millisecond), hold, withdraw. A layer without doses is only spread. Flushing follows the last station of
/// every N-th layer with doses, since only those leave liquid at the tips. All times are whole milliseconds, so that sums are exact.
/// A print that was stopped has its pause between the last step done and the first that is left; until then the needles were those of before.
/// While moving and withdrawn the tip is given at the top of the layer, the least it must clear.
/// </remarks>
public static class TimelineBuilder
{
    /// <summary>Builds the timeline of a job and the schedule of its doses.</summary>
    /// <param name="job">Printer, mix and needles of the job.</param>
    /// <param name="lattice">Needle positions.</param>
    /// <param name="doses">The doses as rounded; index order of the lattice.</param>
    /// <returns>The machine's steps, and when water flows where.</returns>
    public static (Timeline Timeline, DoseSchedule Schedule) Build(JobDescription job, Lattice lattice, DosePlan doses)
    {
        ArgumentNullException.ThrowIfNull(job);
        ArgumentNullException.ThrowIfNull(lattice);
        ArgumentNullException.ThrowIfNull(doses);
        var run = new Run(job, lattice, doses);
        return (run.Steps(), run.Schedule);
    }

    private sealed class Run
    {
        private readonly Printer printer;
        private readonly Lattice lattice;
        private readonly DosePlan doses;
        private readonly Stations stations;
        private readonly HeadNeedles needles;
        private readonly HeadNeedles needlesBefore;
        private readonly PrintStop? stop;
        private readonly double spreadKilograms;
        private readonly List<MachineStep> steps = [];
        private readonly double[] longestSeconds;
        private readonly long[] stationCentiMillilitres;
        private long now;
        private bool hasPaused;

        public Run(JobDescription job, Lattice lattice, DosePlan doses)
        {
            printer = job.Printer;
            this.lattice = lattice;
            this.doses = doses;
            stations = Stations.Over(printer);
            needles = HeadNeedles.Of(printer, job.Needles);
            stop = job.Stop;
            needlesBefore = stop is null ? needles : HeadNeedles.Of(printer, stop.NeedlesBefore);
            spreadKilograms = lattice.BinXMetres * lattice.BinYMetres * lattice.LayerMetres * job.LooseDensity.KilogramsPerCubicMetre;
            longestSeconds = new double[stations.Count];
            stationCentiMillilitres = new long[stations.Count];
            Schedule = new DoseSchedule
            {
                LayerSpreadSeconds = new double[lattice.Layers],
                DoseStartSeconds = new double[lattice.Count],
                PumpSeconds = new double[lattice.Count],
            };
        }

        public DoseSchedule Schedule { get; }

        public Timeline Steps()
        {
            int sinceFlush = 0;
            for (int k = 0; k < lattice.Layers; k++)
            {
                Add(k, 0, MachineAction.Spread, null, Whole(printer.Timing.Spreading), 0, spreadKilograms);
                Schedule.LayerSpreadSeconds[k] = now / 1000.0;
                if (!GatherStations(k))
                {
                    continue;
                }

                WorkStations(k);
                sinceFlush++;
                if (printer.Flush is { } flush && flush.EveryLayers > 0 && sinceFlush >= flush.EveryLayers)
                {
                    Add(k, 0, MachineAction.Flush, null, Whole(flush.Time), FlushCentiMillilitres(flush, stop?.IsDone(k + 1, 0, MachineAction.Flush) == true ? needlesBefore : needles), 0.0);
                    sinceFlush = 0;
                }
            }

            return new Timeline { Steps = steps };
        }

        // Longest pump time and water of each station in a layer; false when the layer has no dose.
        private bool GatherStations(int k)
        {
            Array.Clear(longestSeconds);
            Array.Clear(stationCentiMillilitres);
            bool any = false;
            for (int j = 0; j < lattice.Rows; j++)
            {
                for (int i = 0; i < lattice.Columns; i++)
                {
                    int index = lattice.Index(i, j, k);
                    if (doses.CentiMillilitres[index] == 0)
                    {
                        continue;
                    }

                    any = true;
                    StationSeat seat = stations.Seat(lattice, i, j);
                    double seconds = doses.Millilitres(index) / NeedlesAt(k, seat.Station).FlowMillilitresPerSecond(seat.Column, seat.Row);
                    Schedule.PumpSeconds[index] = seconds;
                    longestSeconds[seat.Station - 1] = Math.Max(longestSeconds[seat.Station - 1], seconds);
                    stationCentiMillilitres[seat.Station - 1] += doses.CentiMillilitres[index];
                }
            }

            return any;
        }

        private void WorkStations(int k)
        {
            var starts = new double[stations.Count];
            for (int station = 1; station <= stations.Count; station++)
            {
                if (stationCentiMillilitres[station - 1] == 0)
                {
                    continue;
                }

                Point3 plunged = stations.HeadTip(lattice, station, k);
                Point3 clear = plunged with { Z = (k + 1) * lattice.LayerMetres };
                Add(k, station, MachineAction.Move, clear, Whole(printer.Timing.Move));
                Add(k, station, MachineAction.Plunge, plunged, Whole(printer.Timing.Plunge));
                starts[station - 1] = now / 1000.0;
                Add(k, station, MachineAction.Dose, plunged, WholeUp(longestSeconds[station - 1]), stationCentiMillilitres[station - 1]);
                Add(k, station, MachineAction.Hold, plunged, Whole(printer.Timing.Hold));
                Add(k, station, MachineAction.Withdraw, clear, Whole(printer.Timing.Withdraw));
            }

            for (int j = 0; j < lattice.Rows; j++)
            {
                for (int i = 0; i < lattice.Columns; i++)
                {
                    int index = lattice.Index(i, j, k);
                    if (doses.CentiMillilitres[index] != 0)
                    {
                        Schedule.DoseStartSeconds[index] = starts[stations.Seat(lattice, i, j).Station - 1];
                    }
                }
            }
        }

        private HeadNeedles NeedlesAt(int k, int station) => stop?.IsDone(k + 1, station) == true ? needlesBefore : needles;

        // All needles that are not blocked run at their flow, as far as the supply goes.
        private long FlushCentiMillilitres(Flush flush, HeadNeedles needles)
        {
            double flow = 0.0;
            for (int row = 1; row <= needles.Rows; row++)
            {
                for (int column = 1; column <= needles.Columns; column++)
                {
                    flow += needles.IsBlocked(column, row) ? 0.0 : needles.FlowMillilitresPerSecond(column, row);
                }
            }

            double limited = Math.Min(flow, printer.Supply.Flow.MillilitresPerSecond);
            return (long)Math.Floor(limited * (Whole(flush.Time) / 1000.0) * 100.0 + 0.5);
        }

        private void Add(int k, int station, MachineAction action, Point3? tip, long milliseconds, long centiMillilitres = 0, double kilograms = 0.0)
        {
            if (stop is { PauseMilliseconds: > 0 } && !hasPaused && !stop.IsDone(k + 1, station, action))
            {
                hasPaused = true;
                Add(stop.Station > 0 ? stop.AfterLayer : stop.AfterLayer - 1, 0, MachineAction.Pause, null, stop.PauseMilliseconds);
                Schedule.ResumedSeconds = now / 1000.0;
            }

            steps.Add(new MachineStep
            {
                Number = steps.Count + 1,
                Layer = k + 1,
                Station = station,
                Action = action,
                HeadTip = tip,
                StartMilliseconds = now,
                Milliseconds = milliseconds,
                CentiMillilitres = centiMillilitres,
                MixKilograms = kilograms,
            });
            now += milliseconds;
        }

        private static long Whole(Duration duration) => (long)Math.Floor(duration.Seconds * 1000.0 + 0.5);

        // Up, so that no pump is cut short; a millionth of a millisecond is what a division may blur.
        private static long WholeUp(double seconds) => (long)Math.Ceiling(seconds * 1000.0 - 1e-6);
    }
}
