using Dewstone.Model.Diagnostics;
using Dewstone.Orders.Plans;

namespace Dewstone.Cli.Rendering;

/// <summary>The JSON document of <c>order plan --json</c>: findings and, when there is one, the plan as in <c>plan.json</c>; its schema is <c>schemas/plan.schema.json</c>.</summary>
internal static class PlanReportJson
{
    /// <summary>The document.</summary>
    /// <param name="result">What planning gave.</param>
    /// <param name="findings">All findings.</param>
    /// <param name="exitCode">What the program ends with.</param>
    /// <returns>Indented JSON with a line feed at its end.</returns>
    public static string Of(PlanningResult result, IReadOnlyList<Diagnostic> findings, int exitCode) => JsonText.Of("plan", exitCode, json =>
    {
        FindingJson.Write(json, findings);
        if (result.Plan is { } plan)
        {
            PlanJson.WriteMembers(json, plan, result.Figures);
        }
    });
}
