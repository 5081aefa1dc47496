using Dewstone.Jobs.Tests.Emission.Pictures;
using Dewstone.Jobs.Tests.Folders;
using Dewstone.Model.Diagnostics;
using Dewstone.Model.Quantities;
using Dewstone.Model.Results;
using PuppeteerSharp.Input;

namespace Dewstone.Jobs.Tests.Emission.Report;

/// <summary>The page in a real browser, where there is one: its scripts run, say what they drew, and answer to hand and keys.</summary>
public sealed class PageInBrowserTests(Browser browser) : IClassFixture<Browser>, IDisposable
{
    private const int ScreenWidth = 1000;

    // Between the margins of A4: 210 - 2 x 13 by 297 - 2 x 14 mm, 96 CSS pixels an inch.
    private const int PaperWidth = 695, PaperHeight = 1016;

    private readonly TemporaryFolder folder = new();

    private static CompiledJob Block => SampleJob.Block() with { Estimate = Samples.Job().Estimate };

    public void Dispose() => folder.Dispose();

    private async Task<OpenPage> OpenAsync(CompiledJob job, int width, bool onPaper = false, bool dark = false)
    {
        string file = Path.Combine(folder.Path, "report.html");
        await File.WriteAllBytesAsync(file, SamplePage.Of(job).File.Bytes, TestContext.Current.CancellationToken);
        OpenPage open = await browser.OpenAsync(file, width, onPaper, dark);
        await open.UntilAsync("document.querySelector('#plate').dataset.drawn !== undefined || document.querySelector('#plate').dataset.fault !== undefined");
        return open;
    }

    private static async Task NeedGraphicsAsync(OpenPage open)
    {
        bool has = await open.AskAsync<bool>("!!document.createElement('canvas').getContext('webgl2')");
        Assert.SkipUnless(has, "this browser has no WebGL 2");
        await open.UntilAsync("document.querySelector('.hand canvas').dataset.drawn !== undefined");
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public async Task Page_draws_complains_of_nothing_and_fetches_nothing(bool dark)
    {
        await using OpenPage open = await OpenAsync(Block, ScreenWidth, dark: dark);
        await NeedGraphicsAsync(open);

        Assert.Equal(
            await open.AskAsync<string>("document.querySelector('#hand').dataset.predicted.split(' ')[1]"),
            await open.AskAsync<string>("document.querySelector('.hand canvas').dataset.drawn"));
        Assert.Equal(0, await open.AskAsync<int>("document.querySelectorAll('[data-fault]').length"));
        Assert.Empty(open.Complaints);
        Assert.EndsWith("/report.html", Assert.Single(open.Requests), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Plates_turn_by_button_key_and_click_and_a_click_in_the_plan_moves_the_sections()
    {
        await using OpenPage open = await OpenAsync(Block, ScreenWidth);
        Task<int> Layer() => open.AskAsync<int>("+document.querySelector('#plate').dataset.drawn");
        int first = await Layer();
        string plan = await open.LookAsync(".view-plan"), section = await open.LookAsync(".view-a");

        await open.Page.ClickAsync("#plate button[data-step='1']");
        Assert.Equal(first + 1, await Layer());
        Assert.NotEqual(plan, await open.LookAsync(".view-plan"));

        await open.Page.FocusAsync("#plate");
        await open.Page.Keyboard.PressAsync("ArrowLeft");
        await open.Page.Keyboard.PressAsync("ArrowLeft");
        Assert.Equal(first - 1, await Layer());
        await open.Page.Keyboard.PressAsync("ArrowRight");
        Assert.Equal(plan, await open.LookAsync(".view-plan"));

        await ClickAsync(open, ".view-plan", 0.3, 0.8);
        Assert.NotEqual(section, await open.LookAsync(".view-a"));
        await ClickAsync(open, ".view-b", 0.5, 0.97);
        Assert.Equal(1, await Layer());
        Assert.StartsWith("layer 1 of", await open.AskAsync<string>("document.querySelector('.where').textContent"), StringComparison.Ordinal);
        Assert.Empty(open.Complaints);
    }

    [Fact]
    public async Task Contact_sheet_shows_every_layer_and_a_click_on_one_turns_to_it()
    {
        await using OpenPage open = await OpenAsync(Block, ScreenWidth);
        int layers = await open.AskAsync<int>("JSON.parse(document.querySelector('#plate').dataset.geometry).lattice[2]");
        Assert.Equal(layers, await open.AskAsync<int>("document.querySelectorAll('.leaf canvas').length"));
        Assert.NotEqual(await open.LookAsync(".leaf[data-layer='1'] canvas"), await open.LookAsync(".leaf[data-layer='5'] canvas"));

        await ClickAsync(open, ".leaf:nth-child(5)", 0.5, 0.5);
        Assert.Equal(5, await open.AskAsync<int>("+document.querySelector('#plate').dataset.drawn"));
        Assert.Equal("5", await open.AskAsync<string>("[...document.querySelectorAll('.leaf[aria-current=true]')].map(leaf => leaf.dataset.layer).join()"));
    }

    /// <summary>The ball is declared a piece apart by hand: its skin is the one around such a piece's centre.</summary>
    [Fact]
    public async Task Viewer_switches_between_predicted_wanted_and_voids_and_pieces_apart()
    {
        CompiledJob job = SampleJob.Ball();
        Size3 box = job.Placement.UnitBox;
        SolidPiece all = new(1e-3, 2.0, new Point3(box.X / 2.0, box.Y / 2.0, box.Z / 2.0), box);
        InspectionReport found = SampleInspection.Report with { LoosePieces = new LoosePiecesReport([all], 0, 0.0, 1e-6) };
        await using OpenPage open = await OpenAsync(job with { Inspection = found, Estimate = Samples.Job().Estimate }, ScreenWidth);
        await NeedGraphicsAsync(open);
        const string Canvas = ".hand canvas";
        string predicted = await open.LookAsync(Canvas);
        await open.Page.ClickAsync("#hand input[name='apart']");
        string without = await open.LookAsync(Canvas);
        await open.Page.ClickAsync("#hand input[value='wanted']");
        string wanted = await open.LookAsync(Canvas);
        await open.Page.ClickAsync("#hand input[value='voids']");
        string voids = await open.LookAsync(Canvas);
        await open.Page.ClickAsync("#hand input[name='ghost']");

        Assert.Equal(5, new HashSet<string>([predicted, without, wanted, voids, await open.LookAsync(Canvas)]).Count);
        Assert.Empty(open.Complaints);
    }

    [Fact]
    public async Task Unit_turns_by_hand_and_keys_and_changes_its_tint()
    {
        await using OpenPage open = await OpenAsync(Block, ScreenWidth);
        await NeedGraphicsAsync(open);
        string still = await open.LookAsync(".hand canvas");
        Assert.Equal(still, await open.LookAsync(".hand canvas"));

        await open.Page.FocusAsync(".hand canvas");
        await open.Page.Keyboard.PressAsync("ArrowRight");
        string turned = await open.LookAsync(".hand canvas");
        Assert.NotEqual(still, turned);

        (double x, double y) = await PlaceAsync(open, ".hand canvas", 0.5, 0.5);
        await open.Page.Mouse.MoveAsync((decimal)x, (decimal)y);
        await open.Page.Mouse.DownAsync();
        await open.Page.Mouse.MoveAsync((decimal)x + 60, (decimal)y + 20, new MoveOptions { Steps = 3 });
        await open.Page.Mouse.UpAsync();
        string dragged = await open.LookAsync(".hand canvas");
        Assert.NotEqual(turned, dragged);

        await open.Page.ClickAsync("#hand input[value='water']");
        Assert.NotEqual(dragged, await open.LookAsync(".hand canvas"));
        Assert.Empty(open.Complaints);
    }

    [Fact]
    public async Task Dark_page_is_dark_on_the_screen_and_white_on_paper()
    {
        await using OpenPage open = await OpenAsync(Block, ScreenWidth, dark: true);
        const string Ground = "getComputedStyle(document.body).backgroundColor";

        Assert.Equal("rgb(22, 25, 28)", await open.AskAsync<string>(Ground));
        await open.ShowAsync(onPaper: true, dark: true);
        Assert.Equal("rgb(255, 255, 255)", await open.AskAsync<string>(Ground));
        Assert.Equal("rgb(38, 43, 48)", await open.AskAsync<string>("getComputedStyle(document.body).color"));
    }

    [Fact]
    public async Task Narrow_page_does_not_run_over_its_side()
    {
        await using OpenPage open = await OpenAsync(Block, 420);

        Assert.Equal(420, await open.AskAsync<int>("document.documentElement.scrollWidth"));
    }

    /// <summary>Two released findings with messages as long as the checks write them, and a reason each.</summary>
    [Fact]
    public async Task Shop_sheet_is_one_page_of_paper_also_with_two_released_findings()
    {
        string place = string.Concat(Enumerable.Repeat("; 0.05 kg, 131 x 69 x 44 mm at (579, 628, 888) mm", 3));
        Diagnostic Released(string code) => Samples.SolidError with
        {
            Code = code,
            Message = $"2.993 kg of loose mix cannot be got out with a tool 25 mm across; at most 2 kg is required{place}; and 1211 more",
            AcceptedBecause = "the loose mix in the grooves is brushed out by hand at dig-out, agreed with the designer",
        };
        await using OpenPage open = await OpenAsync(Block with { Findings = [Released("DW3023"), Released("DW5001")] }, PaperWidth, onPaper: true);

        Assert.Equal(2, await open.AskAsync<int>("document.querySelectorAll('#sheet .stack tbody tr').length"));
        Assert.InRange(await open.AskAsync<double>("document.querySelector('#sheet').getBoundingClientRect().height"), 500, PaperHeight);
    }

    [Fact]
    public async Task Dig_out_sheet_is_one_page_of_paper()
    {
        await using OpenPage open = await OpenAsync(StrongJob.Of(Block), PaperWidth, onPaper: true);
        Assert.InRange(await open.AskAsync<double>("document.querySelector('#lift').getBoundingClientRect().height"), 500, PaperHeight);
    }

    private static async Task ClickAsync(OpenPage open, string selector, double across, double down)
    {
        (double x, double y) = await PlaceAsync(open, selector, across, down);
        await open.Page.Mouse.ClickAsync((decimal)x, (decimal)y);
    }

    // A point of a part that is scrolled into view, pixels of the window.
    private static async Task<(double X, double Y)> PlaceAsync(OpenPage open, string selector, double across, double down)
    {
        double[] box = await open.AskAsync<double[]>(
            $"(part => {{ part.scrollIntoView({{ block: 'center' }}); const b = part.getBoundingClientRect(); return [b.x, b.y, b.width, b.height]; }})(document.querySelector('{selector}'))");
        return (box[0] + across * box[2], box[1] + down * box[3]);
    }
}
