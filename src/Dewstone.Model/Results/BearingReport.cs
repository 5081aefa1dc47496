namespace Dewstone.Model.Results;

/// <summary>Whether the seabed bears the unit.</summary>
public sealed record BearingReport
{
    /// <summary>Pressure under the unit in still water, Pa.</summary>
    public required double PressurePascals { get; init; }

    /// <summary>How far the sea's greatest moment moves the load from the middle, m.</summary>
    public required double EccentricityMetres { get; init; }

    /// <summary>Width that still bears, m.</summary>
    public required double EffectiveWidthMetres { get; init; }

    /// <summary>What the seabed bears by each method, Pa.</summary>
    public required IReadOnlyList<NamedAmount> CapacityPascals { get; init; }

    /// <summary>Name of the method judged by.</summary>
    public required string Method { get; init; }

    /// <summary>Factor of safety, 1.</summary>
    public required double Factor { get; init; }

    /// <summary>How far it settles before the seabed gives way, m; null where the site does not say how stiff the seabed is.</summary>
    public double? SettlementMetres { get; init; }

    /// <summary>How deep it sinks until the seabed bears it in still water, m.</summary>
    public required double SinkageMetres { get; init; }
}
