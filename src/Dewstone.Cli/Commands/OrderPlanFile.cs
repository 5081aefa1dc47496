using Dewstone.Model.Diagnostics;
using Dewstone.Orders.Batches;
using Dewstone.Orders.Plans;
using Dewstone.Reading;

namespace Dewstone.Cli.Commands;

/// <summary>The plan that stands in the folder of an order.</summary>
internal static class OrderPlanFile
{
    /// <summary>Reads it.</summary>
    /// <param name="reading">The order it must be of.</param>
    /// <param name="folder">The order's folder.</param>
    /// <param name="findings">Takes what is wrong with it.</param>
    /// <returns>The plan; null when it is missing, or with a finding.</returns>
    public static OrderPlan? Read(OrderReading reading, OrderFolder folder, DiagnosticBag findings)
    {
        if (SharedFile.TryRead(folder.Plan) is not { } bytes)
        {
            return null;
        }

        (OrderPlan? plan, Diagnostic? finding) = PlanJson.Read(bytes, folder.Plan, reading.Hash);
        finding ??= plan is null ? null : PlanFit.Check(reading, plan);
        if (finding is not null)
        {
            findings.Add(finding);
            return null;
        }

        return plan;
    }
}
