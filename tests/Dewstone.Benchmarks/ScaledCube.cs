using Dewstone.Compute.Tests.Dosing;
using Dewstone.Model.Description;
using Dewstone.Model.Quantities;

namespace Dewstone.Benchmarks;

/// <summary>
/// The crossed cube in another size on the same pitch: outer box, rounding, tunnels and hollows all scaled. The bin holds some spare pitches, the head covers it, and
/// water is never short.
/// </summary>
internal static class ScaledCube
{
    /// <summary>Scales.</summary>
    /// <param name="scale">Size over 18 pitches.</param>
    /// <returns>The job.</returns>
    public static JobDescription Of(double scale)
    {
        JobDescription cube = Targets.Cube();
        double pitch = cube.Printer.Grid.Pitch.Metres;
        int side = (int)Math.Round(18 * scale);
        Length Scaled(Length length) => new(length.Metres * scale);
        Point3 Moved(Point3 point) => new(point.X * scale, point.Y * scale, point.Z * scale);
        return cube with
        {
            Unit = cube.Unit with
            {
                OuterBox = new Size3(side * pitch, side * pitch, side * pitch),
                Rounding = Scaled(cube.Unit.Rounding),
                Tunnels =
                [
                    .. cube.Unit.Tunnels.Cast<AxisTunnel>().Select(tunnel => tunnel with
                    {
                        At = Moved(tunnel.At),
                        Section = tunnel.Section is RectangularSection section
                            ? new RectangularSection(Scaled(section.Width), Scaled(section.Height), Scaled(section.Rounding))
                            : throw new InvalidOperationException("The cube's tunnels are rectangular."),
                    }),
                ],
                Cavities =
                [
                    .. cube.Unit.Cavities.Cast<FormedCavity>().Select(cavity => cavity with
                    {
                        Form = cavity.Form is SphereForm ball
                            ? new SphereForm { Centre = Moved(ball.Centre), Diameter = Scaled(ball.Diameter) }
                            : throw new InvalidOperationException("The cube's hollows are round."),
                    }),
                ],
            },
            Printer = cube.Printer with
            {
                Bin = new Bin(new Length((side + 6) * pitch), new Length((side + 6) * pitch), new Length((side + 4) * pitch)),
                Head = cube.Printer.Head with { Columns = side + 6, Rows = side + 6 },
                Supply = new Supply(FlowRate.FromMillilitresPerSecond(1e6), new Volume(1e3)),
            },
        };
    }
}
