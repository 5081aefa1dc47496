using Dewstone.Compute.Wetting;
using Dewstone.Model.Description;
using Dewstone.Model.Quantities;

namespace Dewstone.Compute.Calibration;

/// <summary>The wetting of two equal doses side by side, far from everything else: an eighth of it in cells, by the stepper of the jobs, kept for all times.</summary>
/// <remarks>
/// Length and time units as in <see cref="BallHistory"/>. The first cell's faces at x, y, z = 0 are mirrors; the dose lies on the x axis at half the
/// spacing, a whole number of cells away, and begins as a saturated ball.
/// </remarks>
internal sealed class PairHistory
{
    private const int CellsPerUnit = 12;
    private const double FirstTime = 0.05;
    private const double TimeRatio = 1.15;
    private const double LastTime = 500.0;
    private const double Porosity = 0.5;

    private readonly SaturationLaw law;
    private readonly TransportStepper field;
    private readonly List<(double[] Along, double[] Waist)> snapshots = [];
    private readonly double cell;
    private readonly int halfCells;
    private double time;

    /// <summary>Two saturated balls.</summary>
    /// <param name="law">The law.</param>
    /// <param name="spacing">Distance between the doses, units.</param>
    /// <param name="halfCells">Cells to half that distance, from <see cref="HalfCells"/>.</param>
    public PairHistory(SaturationLaw law, double spacing, int halfCells)
    {
        (this.law, this.halfCells) = (law, halfCells);
        cell = 0.5 * spacing / halfCells;
        int reach = (int)Math.Ceiling((law.IsPower ? 3.2 + 4.0 / law.Exponent : 4.5) / cell);
        WettingLaw unit = law.IsPower
            ? new PowerLaw { AtSaturation = new Diffusivity(1.0), Exponent = law.Exponent }
            : new ExponentialLaw { AtSaturation = new Diffusivity(1.0), Exponent = law.Exponent };

        // The stepper wants a porosity below 1: half, so that a full cell holds 0.5.
        field = new TransportStepper(halfCells + reach, reach, reach, cell, cell, MoisturePotential.Of(unit, Porosity), 1);
        Pour(halfCells);
    }

    /// <summary>Cells to half a spacing, so that a change of units does not change the grid.</summary>
    /// <param name="spacing">Distance between the doses, units.</param>
    /// <returns>1 or more.</returns>
    public static int HalfCells(double spacing) => Math.Max(1, (int)Math.Round(0.5 * spacing * CellsPerUnit));

    /// <summary>Size of the part at or above a threshold.</summary>
    /// <param name="at">Time, units.</param>
    /// <param name="threshold">Saturation, above 0.</param>
    /// <returns>Whole length along the line of the doses, and width midway between them, units; 0 where nothing reaches the threshold.</returns>
    public (double Length, double Waist) At(double at, double threshold)
    {
        double place = Math.Log(Math.Clamp(at, FirstTime, LastTime) / FirstTime) / Math.Log(TimeRatio);
        int before = (int)place;
        while (snapshots.Count <= before + 1)
        {
            March(FirstTime * Math.Pow(TimeRatio, snapshots.Count));
            snapshots.Add((Line(field.Nx, 1), Line(field.Ny, field.RowStride)));
        }

        int power = law.FrontPower(threshold);
        double share = place - before;
        double Between(Func<(double[] Along, double[] Waist), double[]> line)
        {
            double early = FrontPlace.Of(line(snapshots[before]), threshold, power), late = FrontPlace.Of(line(snapshots[before + 1]), threshold, power);
            return early + share * (late - early);
        }

        // The lines of cells run half a cell beside the axes, where a round body is a little shorter.
        double along = Between(lines => lines.Along) - halfCells, waist = Between(lines => lines.Waist);
        double length = along > -halfCells ? halfCells + Math.Sign(along) * Math.Sqrt(along * along + 0.5) : 0.0;
        return (2.0 * cell * length, waist > 0.0 ? 2.0 * cell * Math.Sqrt(waist * waist + 0.25) : 0.0);
    }

    private double[] Line(int cells, int stride)
    {
        double[] line = new double[cells];
        for (int i = 0; i < cells; i++)
        {
            line[i] = field.Content[i * stride] / Porosity;
        }

        return line;
    }

    private void March(double until)
    {
        while (time < until)
        {
            double step = Math.Min(field.StableStepSeconds(), until - time);
            field.Step(step);
            time += step;
        }
    }

    // Shell by shell from the dose, as the jobs do; where the balls would overlap they grow outwards instead.
    private void Pour(int centre)
    {
        int plane = field.Nx * field.Ny;
        int[] nearest = [.. Enumerable.Range(0, plane * field.Nz).OrderBy(Square)];
        double rest = Math.PI / 3.0 / (cell * cell * cell);
        for (int first = 0; rest > 0.0;)
        {
            int end = first;
            while (end < nearest.Length && Square(nearest[end]) == Square(nearest[first]))
            {
                end++;
            }

            float content = (float)(Porosity * Math.Min(1.0, rest / (end - first)));
            for (; first < end; first++, rest--)
            {
                int z = nearest[first] / plane, y = nearest[first] / field.Nx % field.Ny;
                field.Content[(z * field.Ny + y) * field.RowStride + nearest[first] % field.Nx] = content;
                field.Touch(y, z, content);
            }
        }

        int Square(int index)
        {
            int x = 2 * (index % field.Nx - centre) + 1, y = 2 * (index / field.Nx % field.Ny) + 1, z = 2 * (index / plane) + 1;
            return x * x + y * y + z * z;
        }
    }
}
