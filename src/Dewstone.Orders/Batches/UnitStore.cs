using System.Collections.Concurrent;
using System.Text.Json;
using Dewstone.Jobs.Bins;
using Dewstone.Jobs.Compilation;
using Dewstone.Model.Diagnostics;
using Dewstone.Model.Results;

namespace Dewstone.Orders.Batches;

/// <summary>
/// The store of solved units: what was once solved is not solved again, by this run or any other that shares the folder. An entry that is damaged
/// or not what its name says is solved anew.
/// </summary>
/// <param name="folder">The order's folder.</param>
/// <param name="parallelism">Threads for one unit; no result depends on them.</param>
internal sealed class UnitStore(OrderFolder folder, Parallelism parallelism)
{
    private readonly ConcurrentDictionary<string, Lock> gates = new(StringComparer.Ordinal);
    private readonly ConcurrentDictionary<string, string> damaged = new(StringComparer.Ordinal);

    /// <summary>DW7039 for each damaged entry met.</summary>
    public IReadOnlyList<Diagnostic> Damaged() =>
    [
        .. damaged.Keys.Order(StringComparer.Ordinal).Select(key => BatchFindings.EntryDamaged.At($"{folder.Entry(key)} was damaged, and its unit was solved anew", "check the disk when this is said again")),
    ];

    /// <summary>The answer to a question: from the store, else solved and stored.</summary>
    /// <param name="question">The question.</param>
    /// <param name="key">Its key.</param>
    /// <param name="cancellation">Looked at within.</param>
    /// <returns>The answer, placed in the files of this run.</returns>
    /// <exception cref="IOException">The disk's fault.</exception>
    /// <exception cref="OperationCanceledException">Cancelled.</exception>
    public StoredUnit Answer(UnitQuestion question, string key, CancellationToken cancellation)
    {
        // Two workers that come to alike units at once: one solves, the other waits for it.
        lock (gates.GetOrAdd(key, _ => new Lock()))
        {
            cancellation.ThrowIfCancellationRequested();
            return (Find(question, key) ?? Solve(question, key, cancellation)).In(question.Read);
        }
    }

    /// <summary>What the store holds for a question.</summary>
    /// <returns>Its answer, not placed; null when there is no sound entry.</returns>
    public StoredUnit? Find(UnitQuestion question, string key)
    {
        if (SharedFile.TryRead(folder.Entry(key)) is not { } bytes)
        {
            return null;
        }

        try
        {
            if (StoredUnitBytes.Read(bytes, key, question.Job.Unit) is { } found)
            {
                return found;
            }
        }
        catch (Exception damage) when (damage is JsonException or InvalidDataException or InvalidOperationException or ArgumentException or KeyNotFoundException or FormatException)
        {
            // Sound by its hash and yet not what it must be: told and solved anew like any other damage.
        }

        damaged.TryAdd(key, key);
        return null;
    }

    private StoredUnit Solve(UnitQuestion question, string key, CancellationToken cancellation)
    {
        CompileOptions options = new() { CellsPerVoxel = question.Cells, ToolVersion = question.ToolVersion };
        UnitResult result = UnitSolver.Solve(question.Read with { Diagnostics = [] }, question.Wish, question.Covered, options, parallelism, null, cancellation);
        StoredUnit unit = StoredUnit.Of(result);
        SharedFile.Write(folder.Entry(key), StoredUnitBytes.Write(key, unit));
        return unit;
    }
}
