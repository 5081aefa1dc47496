using Dewstone.Model.Results;

namespace Dewstone.Compute.Numerics;

/// <summary>
/// Runs independent pieces of work on the threads allowed. Each piece writes its own slots, so no result depends on the threads.
/// </summary>
internal static class Chunks
{
    /// <summary>
    /// Runs the body once for each stretch of at most <paramref name="length"/> items; the stretches depend on the items only.
    /// </summary>
    /// <param name="items">Items in all, 0 or more.</param>
    /// <param name="length">Items a stretch, 1 or more.</param>
    /// <param name="parallelism">Threads allowed.</param>
    /// <param name="body">Called with the first item and the one after the last.</param>
    public static void Run(int items, int length, Parallelism parallelism, Action<int, int> body)
    {
        int chunks = (items + length - 1) / length;
        if (parallelism.Threads <= 1 || chunks <= 1)
        {
            for (int chunk = 0; chunk < chunks; chunk++)
            {
                body(chunk * length, Math.Min(items, (chunk + 1) * length));
            }

            return;
        }

        Parallel.For(
            0,
            chunks,
            new ParallelOptions { MaxDegreeOfParallelism = parallelism.Threads },
            chunk => body(chunk * length, Math.Min(items, (chunk + 1) * length)));
    }
}
