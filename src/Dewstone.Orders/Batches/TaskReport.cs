namespace Dewstone.Orders.Batches;

/// <summary>What one task has to say; <c>tasks/task-I-of-N.json</c>, written when it ends.</summary>
/// <param name="Task">Task, from 0.</param>
/// <param name="Tasks">Number of tasks.</param>
/// <param name="OrderSha256">SHA-256 of the order's file it worked on.</param>
/// <param name="Bins">Names of its bins, in the order of the plan.</param>
/// <param name="Failed">Marks of its units that failed.</param>
/// <param name="ExitCode">What it ended with.</param>
public sealed record TaskReport(int Task, int Tasks, string OrderSha256, IReadOnlyList<string> Bins, IReadOnlyList<string> Failed, int ExitCode);
