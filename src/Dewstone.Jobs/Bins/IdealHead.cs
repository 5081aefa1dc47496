using Dewstone.Compute.Sequencing;
using Dewstone.Model.Description;
using Dewstone.Model.Quantities;

namespace Dewstone.Jobs.Bins;

/// <summary>
/// The printer a unit is solved for when it is not yet known where in the bin it will stand: as the real one, but with a head that covers the bin in one
/// station, needles that give what they are asked for in the finest step, and water for all of them at once.
/// </summary>
public static class IdealHead
{
    /// <summary>The finest step: doses are kept in hundredths of a millilitre.</summary>
    public const double StepMillilitres = 0.01;

    /// <summary>The ideal form of a printer.</summary>
    /// <param name="printer">The real one.</param>
    /// <returns>The ideal one; its own ideal form is itself.</returns>
    public static Printer Of(Printer printer)
    {
        ArgumentNullException.ThrowIfNull(printer);
        Raster raster = Raster.Over(printer);
        int columns = Math.Max(1, raster.Columns), rows = Math.Max(1, raster.Rows);
        double flow = Math.Max(printer.Supply.Flow.MillilitresPerSecond, (double)columns * rows * printer.Needle.Flow.MillilitresPerSecond);
        return printer with
        {
            Head = printer.Head with { Columns = columns, Rows = rows },
            Needle = printer.Needle with { Step = Volume.FromMillilitres(StepMillilitres) },
            Supply = printer.Supply with { Flow = FlowRate.FromMillilitresPerSecond(flow) },
        };
    }
}
