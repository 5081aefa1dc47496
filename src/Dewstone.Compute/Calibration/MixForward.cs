using Dewstone.Compute.Wetting;
using Dewstone.Model.Description;
using Dewstone.Model.Quantities;

namespace Dewstone.Compute.Calibration;

/// <summary>What figures of a mix give in the yard's tests: the wetting of the jobs in one and three dimensions, without walls and neighbours.</summary>
/// <param name="mix">The mix; its shares, grains, liquid and window hold.</param>
/// <param name="tables">What its law does.</param>
internal sealed class MixForward(DryMix mix, LawTables tables)
{
    private const double LeastPorosity = 0.01;

    /// <summary>What cannot be measured counts as this, so that a fit walks back from there: millimetres, grams.</summary>
    private const double Nothing = 1e-3;

    /// <summary>Sorptivity, mm/s^0.5.</summary>
    public double Sorptivity(MixFigures figures) => 1000.0 * Porosity(figures) * Math.Sqrt(figures.Diffusivity) * tables.SorptivityNumber;

    /// <summary>A test ball: diameter in mm, water and dry mix in g.</summary>
    public (double Diameter, double Water, double DryMass) Ball(MixFigures figures, double millilitres, double bedCelsius)
    {
        (double unit, double time, double threshold) = Units(figures, millilitres, bedCelsius);
        (double radius, double water) = tables.Ball.At(time, threshold);
        double metres = unit * radius;
        double dry = figures.LooseDensity * 4.0 / 3.0 * Math.PI * metres * metres * metres;
        return (Math.Max(Nothing, 2000.0 * metres), Math.Max(Nothing, water * millilitres * mix.Liquid.Density.KilogramsPerCubicMetre / 1000.0), Math.Max(Nothing, 1000.0 * dry));
    }

    /// <summary>A pair: length and waist, mm.</summary>
    public (double Length, double Waist) Pair(MixFigures figures, double millilitres, double spacingMillimetres, double bedCelsius)
    {
        (double unit, double time, double threshold) = Units(figures, millilitres, bedCelsius);
        (double length, double waist) = tables.Pair(spacingMillimetres / 1000.0 / unit, time, threshold);
        return (Math.Max(Nothing, 1000.0 * unit * length), Math.Max(Nothing, 1000.0 * unit * waist));
    }

    // Radius of the saturated ball in m, window in units, threshold as a saturation.
    private (double Unit, double Time, double Threshold) Units(MixFigures figures, double millilitres, double bedCelsius)
    {
        double porosity = Porosity(figures);
        double unit = Math.Cbrt(3.0 * millilitres * 1e-6 / (4.0 * Math.PI * porosity));
        BedProperties bed = BedProperties.From(mix, new Density(figures.LooseDensity), new Temperature(bedCelsius));
        double content = figures.Threshold * bed.BinderKilogramsPerCubicMetre / bed.LiquidKilogramsPerCubicMetre;
        return (unit, figures.Diffusivity * bed.WindowSeconds / (unit * unit), content / porosity);
    }

    private double Porosity(MixFigures figures) => Math.Max(LeastPorosity, mix.Porosity(new Density(figures.LooseDensity)));
}
