using Dewstone.Compute.Dosing;
using Dewstone.Compute.Sequencing;
using Dewstone.Model.Description;
using Dewstone.Reading.Job;

namespace Dewstone.Jobs.Resuming;

/// <summary>Whether a job can have been stopped where it is said to have been.</summary>
public static class StopCheck
{
    /// <summary>Looks for a fault.</summary>
    /// <param name="job">The job.</param>
    /// <param name="afterLayer">Layers done.</param>
    /// <param name="station">Stations of the next layer done; null when it is not even spread.</param>
    /// <returns>What is wrong, a sentence; null when nothing is.</returns>
    public static string? Fault(EarlierJob job, int afterLayer, int? station)
    {
        ArgumentNullException.ThrowIfNull(job);
        JobCore core = job.Core;
        int layers = core.Lattice.Layers, stations = Stations.Over(core.Description.Printer).Count;
        if (core.Description.Stop is { } earlier)
        {
            return $"`{job.Folder}` is itself the rest of job {earlier.JobFingerprint}; a print is resumed once, since a second joint is not judged.";
        }

        if (afterLayer > layers || (afterLayer == layers && station is not null))
        {
            return $"--after {afterLayer}: the job has {layers} layers.";
        }

        if (afterLayer == 0 && station is null)
        {
            return "--after 0 leaves nothing done; name the stations of layer 1 that are done with --station, or print the job itself.";
        }

        if (station > stations)
        {
            return $"--station {station}: the head has {stations} {(stations == 1 ? "station" : "stations")}.";
        }

        PrintStop stop = new() { JobFingerprint = "", AfterLayer = afterLayer, Station = station ?? 0, PauseMilliseconds = 0 };
        bool[] done = DoneDoses.Of(core.Description with { Stop = stop }, core.Lattice);
        return job.Doses.CentiMillilitres.Where((dose, i) => dose > 0 && !done[i]).Any() ? null : $"--after {afterLayer}: no dose is left after that; the unit is printed.";
    }
}
