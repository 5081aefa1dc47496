using System.Diagnostics;
using Dewstone.Tests;

namespace Dewstone.Cli.Tests.Commands;

/// <summary>How time and memory of an order grow with its units: reported, not asserted.</summary>
public sealed class OrderGrowthTests(ITestOutputHelper output)
{
    [Theory]
    [Trait("Category", "Soak")]
    [InlineData(50)]
    [InlineData(250)]
    [InlineData(1000)]
    public async Task Tiny_units_compile_and_their_time_and_memory_are_told(int units)
    {
        Assert.SkipUnless(OperatingSystem.IsLinux(), "the greatest memory of a process is read as Linux tells it");
        using TinyOrder order = new(units);
        string folder = order.Plan(order.In("out"));
        Stopwatch clock = Stopwatch.StartNew();
        using Process process = RealProgram.Start([], "order", "compile", order.File, "-o", order.In("out"), "--cells", "4", "--quiet", "--threads", "2");
        Task<string> said = process.StandardOutput.ReadToEndAsync(TestContext.Current.CancellationToken);
        long peak = 0;
        TimeSpan processor = default;
        while (!process.HasExited)
        {
            process.Refresh();
            try
            {
                (peak, processor) = (Math.Max(peak, process.WorkingSet64), process.TotalProcessorTime);
            }
            catch (InvalidOperationException)
            {
                // It has just ended.
            }

            await Task.Delay(50, TestContext.Current.CancellationToken);
        }

        Assert.Equal(ExitCode.Done, process.ExitCode);
        Assert.Contains($"{units} of {units} units solved", await said, StringComparison.Ordinal);
        long bytes = new DirectoryInfo(folder).EnumerateFiles("*", SearchOption.AllDirectories).Sum(file => file.Length);
        output.WriteLine(
            $"{units} units: {clock.Elapsed.TotalSeconds:0.0} s, {processor.TotalSeconds:0.0} s of processor, {1000.0 * processor.TotalSeconds / units:0} ms a unit, {peak >> 20} MB, {bytes >> 20} MB on disk");
    }
}
