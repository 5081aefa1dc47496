using Dewstone.Orders.Packing;
using Dewstone.Orders.Scheduling;

namespace Dewstone.Orders.Plans;

/// <summary>Bins chosen for an order and their schedule.</summary>
/// <param name="Goal">What the bins were chosen for.</param>
/// <param name="BinsProved">Whether no choice is better in that.</param>
/// <param name="Bins">The bins.</param>
/// <param name="Tasks">One task a bin.</param>
/// <param name="Rules">What the yard allows.</param>
/// <param name="Schedule">When.</param>
internal sealed record PlanDraft(BinGoal Goal, bool BinsProved, IReadOnlyList<BinContent> Bins, BinTask[] Tasks, YardRules Rules, BinSchedule Schedule);
