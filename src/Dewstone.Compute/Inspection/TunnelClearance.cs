namespace Dewstone.Compute.Inspection;

/// <summary>Clear opening of a tunnel, wanted and predicted: diameter of the largest ball that gets through.</summary>
/// <param name="Name">Name of the tunnel.</param>
/// <param name="WantedMetres">In the wanted solid, metres.</param>
/// <param name="PredictedMetres">In the hardened solid, metres; 0 when it is closed.</param>
public sealed record TunnelClearance(string Name, double WantedMetres, double PredictedMetres)
{
    /// <summary>What is lost, metres; below 0 when it is wider than wanted.</summary>
    public double LossMetres => WantedMetres - PredictedMetres;
}
