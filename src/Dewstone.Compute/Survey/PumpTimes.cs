using Dewstone.Model.Diagnostics;
using Dewstone.Model.Results;

namespace Dewstone.Compute.Survey;

/// <summary>Pump times that do not fit the doses, and faults that the machine noticed itself.</summary>
internal static class PumpTimes
{
    private const double Off = 0.25;

    /// <summary>Checks.</summary>
    /// <param name="book">The log.</param>
    /// <returns>DW3079, then DW3080, one a needle.</returns>
    public static IReadOnlyList<Diagnostic> Check(RunLogBook book)
    {
        List<Diagnostic> slow = [], marked = [];
        foreach (LoggedPosition[] doses in book.All.GroupBy(p => p.Place.Needle).OrderBy(n => n.Key).Select(n => n.ToArray()))
        {
            (int column, int row) = doses[0].Place.Needle;
            double[] flows = [.. doses.SelectMany(p => p.Rows).Where(r => r is { CentiMillilitres: > 0, PumpSeconds: > 0.0 }).Select(r => r.CentiMillilitres / 100.0 / r.PumpSeconds!.Value).Order()];
            double wanted = book.Flow((column, row));
            if (flows.Length > 0 && flows[flows.Length / 2] is var median && Math.Abs(median - wanted) > Off * wanted)
            {
                slow.Add(book.Find(
                    SurveyFindings.FlowOff, doses.First(p => p.Rows.Count > 0), FormattableString.Invariant($"needle {column},{row} ran at {median:0.00} mL/s, {wanted:0.00} mL/s is its flow"), "clean it and measure its flow"));
            }

            LoggedPosition[] faulty = [.. doses.Where(p => !p.IsExplained && p.Rows.Any(r => r.State == RunState.Fault) && Math.Abs(p.Delivered - p.Planned) <= p.Allowance)];
            if (faulty.Length > 0)
            {
                marked.Add(book.Find(
                    SurveyFindings.MachineFault, faulty[0], $"needle {column},{row}: {faulty.Length} doses marked faulty with the volume as planned, first in layer {faulty[0].Place.Layer}, station {faulty[0].Place.Station}",
                    "look up what the machine noticed"));
            }
        }

        return [.. slow, .. marked];
    }
}
