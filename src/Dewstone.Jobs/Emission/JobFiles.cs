using Dewstone.Compute.Sequencing;
using Dewstone.Compute.Wetting;
using Dewstone.Model.Results;

namespace Dewstone.Jobs.Emission;

/// <summary>All files of a job folder: data, pictures, surfaces, report, and the manifest that lists them.</summary>
public static class JobFiles
{
    /// <summary>The files of a job.</summary>
    /// <param name="job">The compiled job.</param>
    /// <param name="nameOfFile">Name of a description file as the files hold it: the same from any current folder.</param>
    /// <param name="rawField">Whether the raw moisture field is written too.</param>
    /// <param name="parallelism">Threads; no byte depends on them.</param>
    /// <param name="cancellation">Looked at between files.</param>
    /// <returns>The files by path; the manifest is the last.</returns>
    /// <exception cref="OperationCanceledException">Cancelled.</exception>
    public static IReadOnlyList<EmittedFile> Of(
        CompiledJob job, Func<string, string> nameOfFile, bool rawField, Parallelism parallelism, CancellationToken cancellation)
    {
        using FilesInMaking making = new(parallelism, cancellation);
        return [.. making.AsMade(job, nameOfFile, rawField).OrderBy(file => file.RelativePath == ManifestEmitter.Path).ThenBy(file => file.RelativePath, StringComparer.Ordinal)];
    }

    /// <summary>What the emitters need beside the job.</summary>
    internal static EmissionSettings Settings(CompiledJob job, Func<string, string> nameOfFile, bool rawField, Parallelism parallelism)
    {
        Stations stations = Stations.Over(job.Description.Printer);
        BedProperties bed = BedProperties.From(job.Description.Mix, job.Description.LooseDensity, job.Description.BedTemperature);
        return new EmissionSettings
        {
            Addressing = (i, j, _) =>
            {
                StationSeat seat = stations.Seat(job.Lattice, i, j);
                return new NeedleAddress(seat.Station, seat.Column, seat.Row);
            },
            Wetting = new WettingConstants
            {
                WindowSeconds = bed.WindowSeconds,
                ShotsPerDose = WettingSolver.ShotsPerStation,
                StepShare = WettingSolver.StepShare,
                StepsPerSetting = WettingSolver.StepsPerChoice,
                LastStepStretch = WettingSolver.LastStepStretch,
            },
            NameOfFile = nameOfFile,
            RawField = rawField,
            Parallelism = parallelism,
        };
    }
}
