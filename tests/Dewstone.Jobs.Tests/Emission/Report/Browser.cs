using PuppeteerSharp;

namespace Dewstone.Jobs.Tests.Emission.Report;

/// <summary>The system's own Chromium, driven over its debugging socket; nothing is downloaded. One for all tests of a class.</summary>
public sealed class Browser : IAsyncLifetime
{
    private static readonly string[] Names = ["chromium", "chromium-browser"];

    // No background traffic; WebGL 2 by the processor where there is no graphics card.
    private static readonly string[] Switches =
    [
        "--no-sandbox", "--no-first-run", "--disable-background-networking", "--disable-component-update", "--disable-sync", "--disable-quic",
        "--use-gl=angle", "--use-angle=swiftshader", "--enable-unsafe-swiftshader",
    ];

    private IBrowser? browser;

    /// <inheritdoc/>
    public async ValueTask InitializeAsync()
    {
        if (Find() is { } program)
        {
            browser = await Puppeteer.LaunchAsync(new LaunchOptions { ExecutablePath = program, Args = Switches, Headless = true });
        }
    }

    /// <inheritdoc/>
    public async ValueTask DisposeAsync()
    {
        if (browser is not null)
        {
            await browser.DisposeAsync();
        }
    }

    /// <summary>Opens a file of the disk; skips the test when there is no browser.</summary>
    /// <param name="file">Path of the page.</param>
    /// <param name="width">Width of the window, CSS pixels.</param>
    /// <param name="onPaper">Shown as it is printed.</param>
    /// <param name="dark">Whether the user prefers a dark page.</param>
    /// <returns>The page with all it said and asked for.</returns>
    internal async Task<OpenPage> OpenAsync(string file, int width, bool onPaper = false, bool dark = false)
    {
        Assert.SkipWhen(browser is null, "no chromium on the path");
        IPage page = await browser!.NewPageAsync();
        OpenPage open = new(page);
        await page.SetViewportAsync(new ViewPortOptions { Width = width, Height = 900 });
        await open.ShowAsync(onPaper, dark);
        await open.WatchAsync();
        await page.GoToAsync(new Uri(file).AbsoluteUri);
        return open;
    }

    private static string? Find() => (Environment.GetEnvironmentVariable("PATH") ?? "").Split(Path.PathSeparator)
        .SelectMany(path => Names.Select(name => Path.Combine(path, name))).FirstOrDefault(File.Exists);
}
