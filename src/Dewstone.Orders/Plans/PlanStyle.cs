using Dewstone.Jobs.Emission.Report;

namespace Dewstone.Orders.Plans;

/// <summary>Style of the plan's drawings.</summary>
internal static class PlanStyle
{
    /// <summary>The rules, with those of all drawings.</summary>
    public static string Text { get; } = $$"""
        {{DrawingStyle.Text}}
        .small { font-size: 10px; }
        .mark { font-size: 14px; font-weight: 600; }
        .shift { fill: var(--faint); opacity: 0.35; }
        .print { fill: var(--missing); stroke: var(--paper); stroke-width: 0.3; }
        .set { fill: var(--elsewhere); stroke: var(--quiet); stroke-width: 0.6; }
        .ready { fill: none; stroke: var(--line); stroke-width: 1; }
        .dig { fill: var(--excess); stroke: var(--paper); stroke-width: 0.3; }
        .due { stroke: var(--excess); stroke-width: 2; fill: none; }
        .bin { fill: none; stroke: var(--line); stroke-width: 2.4; }
        .foot { fill: none; stroke: var(--quiet); stroke-width: 1; stroke-dasharray: 4 3; }
        .needle { fill: var(--water); opacity: 0.55; }
        """;
}
