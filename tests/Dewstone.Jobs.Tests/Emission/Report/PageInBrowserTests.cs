using System.Diagnostics;
using Dewstone.Jobs.Tests.Emission.Pictures;
using Dewstone.Jobs.Tests.Folders;

namespace Dewstone.Jobs.Tests.Emission.Report;

/// <summary>The page in a real browser, where there is one: its scripts run, and say what they drew.</summary>
public sealed class PageInBrowserTests : IDisposable
{
    private static readonly string[] Names = ["chromium", "chromium-browser"];

    private readonly TemporaryFolder folder = new();

    public void Dispose() => folder.Dispose();

    [Fact]
    public async Task Viewer_and_plates_draw()
    {
        string? browser = Find();
        Assert.SkipWhen(browser is null, "no chromium on the path");
        SamplePage page = SamplePage.Of(SampleJob.Ball() with { Estimate = Samples.Job().Estimate });
        string file = Path.Combine(folder.Path, "report.html");
        await File.WriteAllBytesAsync(file, page.File.Bytes, TestContext.Current.CancellationToken);

        string dom = await DumpAsync(browser!, file);

        // Without scripts the page would come back as it is.
        Assert.DoesNotContain("data-drawn", page.Text.Replace("dataset.drawn", "", StringComparison.Ordinal));
        Assert.Contains("data-drawn=\"3\"", dom); // the plates' figure: layer 3 of 4 is shown
        Assert.DoesNotContain("data-fault", dom);
        Assert.SkipWhen(!dom.Contains("class=\"hand turning\""), "this browser has no WebGL 2");
        string triangles = (string)page.Part("hand").Attribute("data-triangles")!;
        Assert.Contains($"data-drawn=\"{triangles}\"", dom);
    }

    private static string? Find() => (Environment.GetEnvironmentVariable("PATH") ?? "").Split(Path.PathSeparator)
        .SelectMany(path => Names.Select(name => Path.Combine(path, name))).FirstOrDefault(File.Exists);

    private async Task<string> DumpAsync(string browser, string file)
    {
        ProcessStartInfo start = new(browser,
        [
            "--headless=new", "--no-sandbox", "--use-gl=angle", "--use-angle=swiftshader", "--enable-unsafe-swiftshader", "--no-first-run",
            "--disable-background-networking", "--disable-component-update", "--disable-sync", "--disable-quic",
            $"--user-data-dir={Path.Combine(folder.Path, "profile")}", "--virtual-time-budget=20000", "--window-size=1000,3000", "--dump-dom",
            new Uri(file).AbsoluteUri,
        ])
        { RedirectStandardOutput = true, RedirectStandardError = true, UseShellExecute = false };
        using Process process = Process.Start(start)!;
        Task<string> output = process.StandardOutput.ReadToEndAsync(TestContext.Current.CancellationToken);
        Task<string> error = process.StandardError.ReadToEndAsync(TestContext.Current.CancellationToken);
        await process.WaitForExitAsync(TestContext.Current.CancellationToken);
        await error;
        return await output;
    }
}
