using Dewstone.Model.Quantities;

namespace Dewstone.Model.Description;

/// <summary>What the predicted solid is held against; null members are not asked for.</summary>
public sealed record Requirements
{
    /// <summary>Greatest mass on the hook at dig-out.</summary>
    public Mass? MaxMass { get; init; }

    /// <summary>Least neck.</summary>
    public Length? MinWall { get; init; }

    /// <summary>Band of water/cement.</summary>
    public WaterCementBand? WaterCement { get; init; }

    /// <summary>Least overlap of predicted and target solid (intersection over union), 0 to 1.</summary>
    public double? MinShapeMatch { get; init; }

    /// <summary>Greatest number of loose pieces.</summary>
    public int? MaxLoosePieces { get; init; }

    /// <summary>Greatest mass of mix that cannot be got out.</summary>
    public Mass? MaxTrappedMix { get; init; }
}
