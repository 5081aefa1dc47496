using Dewstone.Jobs.Emission.Report;

namespace Dewstone.Orders.SitePlans;

/// <summary>Style of a drawing that stands in a file of its own.</summary>
internal static class DrawingStyle
{
    /// <summary>The rules, the inks of the report among them.</summary>
    public static string Text { get; } = $$"""
        {{ReportInks.Rules}}
        text { font: 12px "Helvetica Neue", Helvetica, Arial, "Liberation Sans", sans-serif; fill: var(--line); }
        .name { font-size: 20px; font-weight: 600; }
        .quiet { fill: var(--quiet); }
        .mark { font-size: 11px; }
        .paper { fill: var(--paper); }
        .rule { stroke: var(--faint); stroke-width: 1; fill: none; }
        .unit { fill: var(--elsewhere); stroke: var(--line); stroke-width: 1; }
        .anchor { stroke: var(--excess); stroke-width: 2; fill: none; }
        .arrow { stroke: var(--line); stroke-width: 1.4; fill: none; }
        .head { fill: var(--line); }
        """;
}
