using Dewstone.Model.Quantities;
using Dewstone.Model.Results;

namespace Dewstone.Compute.Tests.Seabed;

public sealed class BodyMeasureTests
{
    /// <summary>An upright box a x b x c seen from a bearing shows (a |cos| + b |sin|) c: exact for cells, since the box is made of whole ones.</summary>
    [Theory]
    [InlineData(0)]
    [InlineData(3)]
    public void Silhouette_of_a_box_equals_the_closed_form(int quarterTurns)
    {
        StandingBody body = Bodies.Of(new Size3(0.8, 0.4, 0.6), _ => true, quarterTurns)!;

        for (int i = 0; i < StandingBody.Directions; i++)
        {
            double angle = i * Math.PI / StandingBody.Directions;
            double expected = (0.8 * Math.Abs(Math.Cos(angle)) + 0.4 * Math.Sin(angle)) * 0.6;
            Assert.Equal(expected, body.SilhouetteSquareMetres[i], 1e-9);
            Assert.Equal(0.3, body.SilhouetteHeightMetres[i], 1e-9);
        }

        Assert.Equal(body.SilhouetteSquareMetres[35], body.Seen(-5.0).SquareMetres, 1e-12);
        Assert.Equal(0.8 * 0.4 * 0.6, body.CubicMetres, 1e-9);
        Assert.Equal((0.4, 0.2, 0.3), (Math.Round(body.Centre.X, 9), Math.Round(body.Centre.Y, 9), Math.Round(body.Centre.Z, 9)));
        Assert.Equal(0.32, body.PlanSquareMetres, 1e-9);
        Assert.Equal(0.32, body.ContactSquareMetres, 1e-9);
        Assert.Equal(0.32, body.FootprintSquareMetres, 1e-9);
        Assert.Equal(0.4, body.FootWidthMetres, 1e-9);
        Assert.Equal(4, body.Footprint.Count);
    }

    /// <summary>A table on four legs: it stands on the legs alone, but would turn over the outline around them; its volume is that of legs and top.</summary>
    [Fact]
    public void Table_stands_on_its_legs_and_turns_over_their_outline()
    {
        StandingBody body = Bodies.Of(new Size3(1.0, 1.0, 0.5), p => p.Z > 0.4 || (IsOuter(p.X) && IsOuter(p.Y)))!;

        Assert.Equal(4 * 0.01, body.ContactSquareMetres, 1e-9);
        Assert.Equal(1.0, body.FootprintSquareMetres, 1e-9);
        Assert.Equal(0.1 * 1.0 + 4 * 0.01 * 0.4, body.CubicMetres, 1e-9);
        // From the side: two legs of 0.1 m by 0.4 m, and the top.
        Assert.Equal(0.1 + 2 * 0.1 * 0.4, body.SilhouetteSquareMetres[0], 1e-9);

        static bool IsOuter(double v) => v is < 0.1 or > 0.9;
    }

    [Fact]
    public void Loose_piece_is_left_out_and_nothing_is_no_body()
    {
        StandingBody body = Bodies.Of(new Size3(1.0, 1.0, 1.0), p => p.Z < 0.5 || (p.X < 0.1 && p.Y < 0.1 && p.Z > 0.9))!;

        Assert.Equal(0.5, body.HeightMetres, 1e-9);
        Assert.Equal(0.5 / 0.501, body.MainShare, 1e-9);
        Assert.Null(Bodies.Of(new Size3(1.0, 1.0, 1.0), _ => false));
    }
}
