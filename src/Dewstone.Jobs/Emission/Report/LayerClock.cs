using Dewstone.Model.Lattices;
using Dewstone.Model.Results;

namespace Dewstone.Jobs.Emission.Report;

/// <summary>When each layer should begin, so that a printer that falls behind is noticed while it prints.</summary>
internal static class LayerClock
{
    /// <summary>Writes the list.</summary>
    /// <param name="html">The page.</param>
    /// <param name="job">The job.</param>
    public static void Write(HtmlWriter html, CompiledJob job)
    {
        Lattice lattice = job.Lattice;
        int plane = lattice.Columns * lattice.Rows;
        html.Add($"""<p class="sheethead">When each layer begins, from the first spreading, and its water</p><ol class="clock">""");
        foreach (IGrouping<int, MachineStep> layer in job.Timeline.Steps.GroupBy(step => step.Layer))
        {
            ReadOnlySpan<int> doses = job.Doses.CentiMillilitres.AsSpan((layer.Key - 1) * plane, plane);
            long water = 0;
            foreach (int dose in doses)
            {
                water += dose;
            }

            html.Add($"<li><span>{layer.Key}</span>{Clock(layer.First().StartMilliseconds)}<span>{(water == 0 ? "dry" : ReportFigures.Litres(water * 1e-8))}</span></li>");
        }

        html.Add($"</ol>");
    }

    private static string Clock(long milliseconds)
    {
        long seconds = (milliseconds + 500) / 1000;
        return $"{seconds / 3600}:{seconds / 60 % 60:00}:{seconds % 60:00}";
    }
}
