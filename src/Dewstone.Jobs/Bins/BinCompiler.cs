using Dewstone.Model.Results;

namespace Dewstone.Jobs.Bins;

/// <summary>Stands solved units in one bin: one set of dose tables, wetted once, each unit held against itself as solved alone.</summary>
public static class BinCompiler
{
    /// <summary>Compiles a bin.</summary>
    /// <param name="question">The bin and its units.</param>
    /// <param name="parallelism">Threads; no result depends on them.</param>
    /// <param name="progress">Told within; may be null.</param>
    /// <param name="cancellation">Looked at within.</param>
    /// <returns>The job with each unit's verdict, or the findings that forbid it.</returns>
    /// <exception cref="OperationCanceledException">Cancelled.</exception>
    public static BinResult Compile(BinQuestion question, Parallelism parallelism, IProgress<Progress>? progress, CancellationToken cancellation) =>
        throw new NotImplementedException();
}
