using Dewstone.Compute.Dosing;
using Dewstone.Model.Description;
using Dewstone.Model.Quantities;

namespace Dewstone.Compute.Tests.Dosing;

public sealed class PocketClosingTests
{
    private static double Closing(Func<DryMix, DryMix>? mix = null, Func<Printer, Printer>? printer = null)
    {
        DryMix estuary = Samples.EstuaryMix();
        Printer yard = Samples.YardPrinter();
        JobDescription job = Samples.Job(mix: mix is null ? estuary : mix(estuary), printer: printer is null ? yard : printer(yard));
        return PocketClosing.Millilitres(job, Placer.Place(job, 2).Lattice!);
    }

    /// <summary>
    /// In a reference run of an independent prototype of the same model (25 % cement, 1700 kg/m3, pitch and layer 50.8 mm, 600 s), 28 mL left 1.3 % of a
    /// closed voxel unset on its finest grid and 30 mL none: 0.213 to 0.229 of the voxel's volume, 26.7 to 28.6 mL on a pitch of 50 mm; its layered block
    /// of equal doses closed at about 30 mL.
    /// </summary>
    [Fact]
    public void Closing_dose_of_the_everyday_mix_lies_where_an_independent_prototype_saw_pockets_close()
    {
        double closing = Closing();

        Assert.InRange(closing, 26.7, 30.5);
    }

    /// <summary>Water that leaves no pocket in an infinite solid is at least the threshold's: 0.22 x 425 kg/m3 x 0.125 L = 11.7 mL; exact.</summary>
    [Fact]
    public void Closing_dose_falls_with_the_window_towards_the_threshold_and_never_below()
    {
        double[] doses = [.. new[] { 300.0, 600.0, 1800.0, 7200.0 }.Select(s =>
            Closing(m => m with { Hardening = m.Hardening with { Window = new Duration(s) } }))];

        Assert.Equal(doses.OrderDescending(), doses);
        Assert.True(doses[^1] > 0.22 * 425 * 0.125);
    }

    /// <summary>The wetting equation has no length but the pitch: twice the pitch with four times the time and eight times the dose is the same problem.</summary>
    [Fact]
    public void Closing_dose_scales_with_the_voxel_when_times_scale_with_its_square()
    {
        double fine = Closing();
        double coarse = Closing(
            m => m with { Hardening = m.Hardening with { Window = new Duration(4 * m.Hardening.Window.Seconds) } },
            p => p with
            {
                Grid = p.Grid with { Pitch = new Length(0.1), LayerHeight = new Length(0.1), OriginX = new Length(0.05), OriginY = new Length(0.05) },
                Needle = p.Needle with { TipDepth = new Length(0.05), Flow = new FlowRate(2 * p.Needle.Flow.CubicMetresPerSecond) },
                Timing = p.Timing with
                {
                    Spreading = new Duration(4 * p.Timing.Spreading.Seconds),
                    Move = new Duration(4 * p.Timing.Move.Seconds),
                    Plunge = new Duration(4 * p.Timing.Plunge.Seconds),
                    Hold = new Duration(4 * p.Timing.Hold.Seconds),
                    Withdraw = new Duration(4 * p.Timing.Withdraw.Seconds),
                },
                Head = p.Head with { Columns = 12, Rows = 12 },
            });

        Assert.Equal(8.0, coarse / fine, 0.02);
    }

    /// <summary>A mix that sets at once hardens only where a shot of water fills the pores: the dose nears the pore volume, 0.383947 x 125 mL.</summary>
    [Fact]
    public void Closing_dose_of_a_mix_that_sets_at_once_is_nearly_the_pores() =>
        Assert.InRange(Closing(m => m with { Hardening = m.Hardening with { Window = new Duration(5) } }), 44.0, 0.383947 * 125.0);
}
