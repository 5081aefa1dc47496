using Dewstone.Jobs.Emission;
using Dewstone.Model.Results;

namespace Dewstone.Jobs.Bins;

/// <summary>All files of a bin's job folder: those of a job without its surfaces, the list of its units and their labels.</summary>
public static class BinFiles
{
    /// <summary>The files of a bin job.</summary>
    /// <param name="bin">A bin that was compiled to a job.</param>
    /// <param name="nameOfFile">Name of a description file as the files hold it: the same from any current folder.</param>
    /// <param name="parallelism">Threads; no byte depends on them.</param>
    /// <param name="cancellation">Looked at between files.</param>
    /// <returns>The files; the manifest is the last.</returns>
    /// <exception cref="OperationCanceledException">Cancelled.</exception>
    public static IReadOnlyList<EmittedFile> Of(
        BinResult bin, Func<string, string> nameOfFile, Parallelism parallelism, CancellationToken cancellation) =>
        throw new NotImplementedException();
}
