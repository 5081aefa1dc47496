using Dewstone.Orders.Batches;
using Dewstone.Orders.Plans;

namespace Dewstone.Orders.Gathering;

/// <summary>A bin whose job stands as it was written.</summary>
/// <param name="Planned">Its place in the plan.</param>
/// <param name="Record">What its run says of it.</param>
/// <param name="JobFingerprint">Fingerprint of its job, 12 characters.</param>
/// <param name="Totals">What it takes.</param>
public sealed record GatheredBin(PlannedBin Planned, BinRecord Record, string JobFingerprint, BinTotals Totals);
