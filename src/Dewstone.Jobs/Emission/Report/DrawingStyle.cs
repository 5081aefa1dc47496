namespace Dewstone.Jobs.Emission.Report;

/// <summary>What all drawings that stand in files of their own have in common: the inks of the report and the lettering.</summary>
internal static class DrawingStyle
{
    /// <summary>The rules.</summary>
    public static string Text { get; } = $$"""
        {{ReportInks.Rules}}
        text { font: 12px "Helvetica Neue", Helvetica, Arial, "Liberation Sans", sans-serif; fill: var(--line); }
        .name { font-size: 20px; font-weight: 600; }
        .quiet { fill: var(--quiet); }
        .paper { fill: var(--paper); }
        .rule { stroke: var(--faint); stroke-width: 1; fill: none; }
        .unit { fill: var(--elsewhere); stroke: var(--line); stroke-width: 1.2; }
        .arrow { stroke: var(--line); stroke-width: 1.5; fill: none; }
        .head { fill: var(--line); }
        @media print { .paper { fill: #fff; } }

        """;
}
