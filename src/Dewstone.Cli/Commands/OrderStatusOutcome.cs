using Dewstone.Model.Diagnostics;
using Dewstone.Orders.Batches;

namespace Dewstone.Cli.Commands;

/// <summary>What <c>order status</c> found.</summary>
/// <param name="Name">Name of the order; its file's name when it could not be read.</param>
/// <param name="Folder">The order's folder.</param>
/// <param name="State">How far it is; null when it is not begun or cannot be told.</param>
/// <param name="MissingTasks">For each number of tasks, those that must run, as batch queues write them.</param>
/// <param name="Findings">What stands in the way of telling.</param>
/// <param name="ExitCode">What to end with.</param>
internal sealed record OrderStatusOutcome(
    string Name, string Folder, OrderState? State, IReadOnlyList<(int Tasks, string Missing)> MissingTasks, IReadOnlyList<Diagnostic> Findings, int ExitCode);
