using Dewstone.Model.Diagnostics;
using Dewstone.Model.Quantities;

namespace Dewstone.Model.Results;

/// <summary>Clear opening of a tunnel, or of the way into a cavity, drawn and predicted: diameter of the largest ball that gets through.</summary>
public sealed record ClearOpening
{
    /// <summary>Name of the tunnel or cavity.</summary>
    public required string Name { get; init; }

    /// <summary>Where it stands in the description.</summary>
    public required KeyPath Key { get; init; }

    /// <summary>Whether it is a tunnel; else the way into a cavity.</summary>
    public required bool IsTunnel { get; init; }

    /// <summary>Number within its scatter, from 0; -1 when it is none of a scatter.</summary>
    public int Hollow { get; init; } = -1;

    /// <summary>In the wanted solid, metres; 0 when it leads nowhere.</summary>
    public required double WantedMetres { get; init; }

    /// <summary>In the hardened solid, metres; 0 when it is closed.</summary>
    public required double PredictedMetres { get; init; }

    /// <summary>What is required, metres; null when nothing is.</summary>
    public double? RequiredMetres { get; init; }

    /// <summary>Centre of the ball at the narrowest place of the hardened solid (of the wanted one when it is closed), metres, unit frame; null when it leads nowhere.</summary>
    public Point3? Narrowest { get; init; }

    /// <summary>What is lost, metres; below 0 when it is wider than wanted.</summary>
    public double LossMetres => WantedMetres - PredictedMetres;
}
