using Dewstone.Model.Results;

namespace Dewstone.Jobs.Emission.Surfaces;

/// <summary>Runs independent work on corners or triangles, a stretch of them at a time; each writes its own slots, so no result depends on the threads.</summary>
internal static class Stretches
{
    private const int Length = 8192;

    /// <summary>Runs the body once a stretch.</summary>
    /// <param name="items">Items in all.</param>
    /// <param name="parallelism">Threads allowed.</param>
    /// <param name="body">Called with the first item and the one after the last.</param>
    public static void Run(int items, Parallelism parallelism, Action<int, int> body) =>
        Parallel.For(
            0,
            (items + Length - 1) / Length,
            new ParallelOptions { MaxDegreeOfParallelism = parallelism.Threads },
            stretch => body(stretch * Length, Math.Min(items, (stretch + 1) * Length)));
}
