namespace Dewstone.Compute.Dosing;

/// <summary>x.</summary>
public sealed class Tuning
{
    public double SoftLow { get; set; } = 0.214;
    public double SoftHigh { get; set; } = 1.786;
    public double Length { get; set; } = 1e9;
    public double DistanceCap { get; set; } = 0.03;
    public double InsideWeight { get; set; } = 1.0;
    public double Radius { get; set; } = 0.63;
    public double ZShift { get; set; } = 0.0;
    public double Alpha { get; set; } = 3.0;
    public double Clamp { get; set; } = 0.35;
    public double Momentum { get; set; } = 0.0;
    public int Coarse { get; set; } = 0;
    public int CoarseCells { get; set; } = 4;
    public int Fine { get; set; } = 16;
    public int FineCells { get; set; } = 6;
    public double Start { get; set; } = 0.0;
    public double WetPrice { get; set; } = 0.0;
    public double WetTop { get; set; } = 0.56;
    public double Water { get; set; } = 0.0;
}
