using Dewstone.Jobs.Emission.Pictures.Drawing;

namespace Dewstone.Jobs.Tests.Emission.Pictures.Drawing;

public sealed class LetteringTests
{
    [Fact]
    public void Alphabet_holds_every_printable_ascii_letter_and_the_signs_of_sheets()
    {
        string wanted = string.Concat(Enumerable.Range(32, 95).Select(code => (char)code)) + "\u00b0\u00d7\u2013\u00b2\u00b3";

        Assert.Empty(wanted.Except(StrokeAlphabet.All));
    }

    [Fact]
    public void Strokes_stay_within_the_letter_and_have_two_points_or_more()
    {
        Assert.All(StrokeAlphabet.All, letter => Assert.All(StrokeAlphabet.Strokes(letter), stroke =>
        {
            Assert.True(stroke.Length >= 2, $"'{letter}'");
            Assert.All(stroke, point => Assert.True(point is { X: >= 0 and <= 8, Y: >= 0 and <= 13 }, $"'{letter}' {point}"));
        }));
    }

    [Fact]
    public void No_two_letters_look_the_same()
    {
        Assert.Equal(
            StrokeAlphabet.All.Count(),
            StrokeAlphabet.All.Select(letter => string.Join('|', StrokeAlphabet.Strokes(letter).Select(stroke => string.Join(' ', stroke)))).Distinct().Count());
    }

    [Fact]
    public void Text_lies_between_its_anchor_and_its_length()
    {
        Canvas canvas = new(200, 40);

        Lettering.Plain.Write(canvas, "Wrack 27", 20f, 28f, Ink.Line);

        int[] inked = [.. Enumerable.Range(0, canvas.Pixels.Length).Where(i => canvas.Pixels[i] != Ink.Paper).Select(i => i % 200)];
        Assert.InRange(inked.Min(), 18, 22);
        Assert.InRange(inked.Max(), 20 + Lettering.Plain.Length("Wrack 27") - 3, 20 + Lettering.Plain.Length("Wrack 27") + 3);
    }

    [Fact]
    public void Accents_fall_off_and_unknown_letters_become_boxes()
    {
        Assert.Equal(Drawn("Crepe aO'z"), Drawn("Cr\u00eape \u00e0\u00d6\u2019\u017e"));
        Assert.Equal(Drawn("\u6c34"), Drawn("\u77f3"));
        Assert.NotEqual(Drawn(""), Drawn("\u6c34"));
    }

    [Fact]
    public void Text_too_long_for_its_room_is_shortened_to_fit()
    {
        string fitted = Lettering.Plain.Fit("A name that is much longer than the room it is given", 120f);

        Assert.EndsWith("..", fitted);
        Assert.True(Lettering.Plain.Length(fitted) <= 120f);
        Assert.Equal("short", Lettering.Plain.Fit("short", 120f));
    }

    private static string Drawn(string text)
    {
        Canvas canvas = new(120, 30);
        Lettering.Plain.Write(canvas, text, 4f, 22f, Ink.Line);
        return string.Join(',', canvas.Pixels.Select(pixel => pixel.R));
    }
}
