using Dewstone.Model.Quantities;

namespace Dewstone.Model.Description;

/// <summary>When water stops moving and where the mix sets.</summary>
public sealed record Hardening
{
    /// <summary>Least water/cement by mass that sets, 1.</summary>
    public required double WaterCement { get; init; }

    /// <summary>Time from the first dose of a layer after which its water no longer moves, at the reference temperature.</summary>
    public required Duration Window { get; init; }

    /// <summary>Reference temperature of the window.</summary>
    public Temperature At { get; init; } = new(20.0);

    /// <summary>Activation energy over the gas constant, kelvin; equivalent-age form of ASTM C1074.</summary>
    public double ActivationKelvin { get; init; } = 5000.0;
}
