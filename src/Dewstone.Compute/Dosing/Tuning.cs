namespace Dewstone.Compute.Dosing;

/// <summary>x.</summary>
public sealed class Tuning
{
    public double SoftLow = 0.214;
    public double SoftHigh = 1.786;
    public double Length = 1e9;
    public double DistanceCap = 0.03;
    public double InsideWeight = 1.0;
    public double Radius = 0.63;
    public double ZShift = 0.0;
    public double Alpha = 3.0;
    public double Clamp = 0.35;
    public double Momentum = 0.0;
    public int Coarse = 0;
    public int CoarseCells = 4;
    public int Fine = 16;
    public int FineCells = 6;
    public double Start = 0.0;
    public double WetPrice = 0.0;
    public double WetTop = 0.56;
    public double Water = 0.0;
}
