using Dewstone.Model.Diagnostics;

namespace Dewstone.Model.Results;

/// <summary>One requirement and how it came out.</summary>
public sealed record RequirementResult
{
    /// <summary>Id from the one catalogue, e.g. <c>mass.max</c>.</summary>
    public required string Id { get; init; }

    /// <summary>Name of the feature concerned; empty for the whole unit.</summary>
    public string Feature { get; init; } = "";

    /// <summary>The value of the description that asks for it.</summary>
    public required KeyPath Key { get; init; }

    /// <summary>Where it stands; null until resolved.</summary>
    public SourceLocation? Location { get; init; }

    /// <summary>What is measured, e.g. "mass on the hook".</summary>
    public required string Quantity { get; init; }

    /// <summary>Comparison, <c>&lt;=</c> or <c>&gt;=</c>.</summary>
    public required string Op { get; init; }

    /// <summary>Limit in <see cref="Unit"/>.</summary>
    public required double Limit { get; init; }

    /// <summary>Value found, in <see cref="Unit"/>.</summary>
    public required double Value { get; init; }

    /// <summary>Unit of limit, value and margin; "1" when dimensionless.</summary>
    public required string Unit { get; init; }

    /// <summary>Room left, in <see cref="Unit"/>; positive when met.</summary>
    public double Margin => Op == "<=" ? Limit - Value : Value - Limit;

    /// <summary>Whether it is met.</summary>
    public bool Met => Margin >= 0.0;

    /// <summary>Reason given by the user for releasing it; null when not released.</summary>
    public string? AcceptedBecause { get; init; }
}
