using Dewstone.Jobs.Emission;
using Dewstone.Jobs.Emission.Pictures.Drawing;
using Dewstone.Jobs.Emission.Pictures.Plates;
using Dewstone.Model.Results;
using Dewstone.Reading.Job;
using SixLabors.ImageSharp.PixelFormats;

namespace Dewstone.Jobs.Tests.Emission;

public sealed class TrialsEmitterTests
{
    [Fact]
    public void Field_holds_the_share_of_each_cell_in_percent()
    {
        TrialsReport trials = Samples.Trials();
        EmittedFile file = TrialsEmitter.Emit(trials, new Parallelism(2)).Single(one => one.RelativePath == "trials.vti");

        Assert.True(VtiReader.TryRead(file.Bytes, out FieldImage? image, out string fault), fault);
        byte[] share = image!.Find<byte>("hardened_share")!;
        Assert.Equal((trials.Grid.Nx, trials.Grid.Ny, trials.Grid.Nz, 4.0), (image.Nx, image.Ny, image.Nz, image.Remarks["trials"]));
        Assert.Equal([0, 25, 50, 75, 100, 0], share[..6]);
        Assert.Equal(trials.HardenedTrials.Select(count => (byte)(25 * count)), share);
    }

    [Theory]
    [InlineData(0, 0)]
    [InlineData(1, 1)]
    [InlineData(9999, 99)]
    [InlineData(10000, 100)]
    [InlineData(5049, 50)]
    [InlineData(5050, 51)]
    public void Percent_keeps_none_and_all_apart_from_the_rest(int count, byte percent) => Assert.Equal(percent, Of(10000, (ushort)count).HardenedPercent(0));

    [Fact]
    public void Job_without_trials_has_none_of_their_files()
    {
        string[] Files(CompiledJob job) => [.. JobDataEmitter.Emit(job, Samples.Settings).Files.Select(file => file.RelativePath)];

        Assert.Equal(["trials.json", "trials.vti"], Files(Samples.Job() with { Trials = Samples.Trials() }).Except(Files(Samples.Job())));
    }

    /// <summary>Everywhere alike: paper where it never sets, the tone of solid where it always does, that of excess where half of the trials do.</summary>
    [Theory]
    [InlineData(0)]
    [InlineData(2)]
    [InlineData(4)]
    public void Picture_tones_cells_by_their_doubt(int count)
    {
        TrialsReport trials = Of(4, (ushort)count);
        Canvas canvas = DoubtPicture.Draw(Samples.Job(), trials);
        Rgb24 expected = count == 0 ? Ink.Paper : count == 4 ? Ink.Solid : Ink.Excess;

        // The first panel is 366 pixels wide; its middle lies off the wanted outline and the lettering.
        int alike = 0;
        for (int x = 25; x < 380; x++)
        {
            alike += canvas.Pixels[200 * canvas.Width + x].Equals(expected) ? 1 : 0;
        }

        Assert.InRange(alike, 300, 355);
    }

    private static TrialsReport Of(int trials, ushort count)
    {
        TrialsReport like = Samples.Trials();
        return new TrialsReport
        {
            Trials = trials,
            Seed = 1,
            Grid = like.Grid,
            Inputs = like.Inputs,
            Requirements = like.Requirements,
            HardenedTrials = [.. Enumerable.Repeat(count, like.Grid.Count)],
        };
    }
}
