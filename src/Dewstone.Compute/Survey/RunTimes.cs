using Dewstone.Model.Lattices;
using Dewstone.Model.Results;

namespace Dewstone.Compute.Survey;

/// <summary>When water flowed where, from the times of a run log.</summary>
/// <remarks>
/// The machine's clock is laid on the plan's by the first dose. A station starts when the first of its needles does. A layer lies spread as long before its
/// first dose as planned, but never before the last dose of the layer below was begun; where the log says otherwise (layers out of order), the layer's doses
/// begin when it lies spread. A position dosed twice is taken at its first time.
/// </remarks>
internal static class RunTimes
{
    /// <summary>Lays out the times.</summary>
    /// <param name="book">The log, which has times.</param>
    /// <param name="delivered">Doses as run.</param>
    /// <returns>The times of all doses that are given.</returns>
    public static DoseSchedule Of(RunLogBook book, DosePlan delivered)
    {
        Lattice lattice = delivered.Lattice;
        DoseSchedule planned = book.Question.Schedule;
        LoggedPosition[] logged = [.. book.All.Where(p => p is { Index: >= 0, Delivered: > 0 })];
        Dictionary<(int Layer, int Station), double> starts = logged.GroupBy(p => p.Place.Block).ToDictionary(b => b.Key, b => b.Min(p => p.Rows[0].StartedSeconds!.Value));
        LoggedPosition? zero = logged.Where(p => p.Planned > 0).MinBy(p => p.Rows[0].StartedSeconds);
        double shift = zero is null ? 0.0 : planned.DoseStartSeconds[zero.Index] - zero.Rows[0].StartedSeconds!.Value;
        double[] start = [.. planned.DoseStartSeconds], pump = new double[lattice.Count], spread = new double[lattice.Layers];
        foreach (LoggedPosition position in logged)
        {
            start[position.Index] = starts[position.Place.Block] + shift;
        }

        int perLayer = lattice.Columns * lattice.Rows;
        double lastStart = double.NegativeInfinity;
        for (int k = 0; k < lattice.Layers; k++)
        {
            double first = double.PositiveInfinity, plannedFirst = double.PositiveInfinity;
            for (int i = k * perLayer; i < (k + 1) * perLayer; i++)
            {
                first = delivered.CentiMillilitres[i] > 0 ? Math.Min(first, start[i]) : first;
                plannedFirst = book.Question.Planned.CentiMillilitres[i] > 0 ? Math.Min(plannedFirst, planned.DoseStartSeconds[i]) : plannedFirst;
            }

            double below = k == 0 ? planned.LayerSpreadSeconds[0] : Math.Max(spread[k - 1], lastStart);
            double ahead = double.IsInfinity(plannedFirst) ? 0.0 : plannedFirst - planned.LayerSpreadSeconds[k];
            spread[k] = k == 0 ? Math.Min(planned.LayerSpreadSeconds[0], first) : double.IsInfinity(first) ? below : Math.Max(below, first - ahead);
            for (int i = k * perLayer; i < (k + 1) * perLayer; i++)
            {
                if (delivered.CentiMillilitres[i] > 0)
                {
                    start[i] = Math.Max(start[i], spread[k]);
                    lastStart = Math.Max(lastStart, start[i]);
                }
            }
        }

        Pump(book, delivered, planned, pump);
        return new DoseSchedule { LayerSpreadSeconds = spread, DoseStartSeconds = start, PumpSeconds = pump };
    }

    // As logged; else the dose over the needle's flow; doses given before a stop as planned.
    private static void Pump(RunLogBook book, DosePlan delivered, DoseSchedule planned, double[] pump)
    {
        for (int i = 0; i < pump.Length; i++)
        {
            pump[i] = delivered.CentiMillilitres[i] > 0 ? planned.PumpSeconds[i] : 0.0;
        }

        foreach (LoggedPosition position in book.All.Where(p => p is { Index: >= 0, Delivered: > 0 }))
        {
            double? seconds = position.Rows.Count == 1 ? position.Rows[0].PumpSeconds : null;
            pump[position.Index] = seconds is > 0.0 and { } logged ? logged : position.Delivered / 100.0 / book.Flow(position.Place.Needle);
        }
    }
}
