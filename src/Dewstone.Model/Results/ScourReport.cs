namespace Dewstone.Model.Results;

/// <summary>Whether the sea moves the sand around the unit.</summary>
/// <param name="ThresholdPascals">Stress at which grains begin to move, Pa.</param>
/// <param name="StressPascals">Greatest stress of waves and current on the bed, the unit left out, Pa.</param>
/// <param name="KeuleganCarpenter">Speed times period over width, 1.</param>
/// <param name="PileDepthMetres">Scour beside a round pile as wide as the unit, m: an order of size.</param>
public sealed record ScourReport(double ThresholdPascals, double StressPascals, double KeuleganCarpenter, double PileDepthMetres)
{
    /// <summary>Whether sand moves already without the unit.</summary>
    public bool Moves => StressPascals > ThresholdPascals;
}
