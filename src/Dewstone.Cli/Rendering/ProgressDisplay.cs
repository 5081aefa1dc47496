using Spectre.Console;

namespace Dewstone.Cli.Rendering;

/// <summary>Shows how far a run is: a bar on a terminal, a plain line a stage elsewhere (with a figure at each quarter of it), nothing when asked to be quiet.</summary>
internal static class ProgressDisplay
{
    /// <summary>Runs work with a display.</summary>
    /// <typeparam name="T">What the work gives.</typeparam>
    /// <param name="world">Where to show it.</param>
    /// <param name="quiet">Show nothing.</param>
    /// <param name="label">What is worked on.</param>
    /// <param name="work">The work; it reports from any thread.</param>
    /// <returns>What the work gave.</returns>
    public static Task<T> RunAsync<T>(Surroundings world, bool quiet, string label, Func<IProgress<Model.Results.Progress>, T> work)
    {
        if (quiet)
        {
            return Task.Run(() => work(new Silent()));
        }

        return world.ErrorIsTerminal ? WithBarAsync(world, label, work) : Task.Run(() => work(new PlainLines(world.Error, label)));
    }

    private static async Task<T> WithBarAsync<T>(Surroundings world, string label, Func<IProgress<Model.Results.Progress>, T> work)
    {
        IAnsiConsole console = AnsiConsole.Create(new AnsiConsoleSettings { Out = new AnsiConsoleOutput(world.Terminal ?? world.Error) });
        T? result = default;
        await console.Progress()
            .AutoClear(true)
            .Columns(new TaskDescriptionColumn(), new ProgressBarColumn { CompletedStyle = Style.Parse("default"), RemainingStyle = Style.Parse("grey") }, new PercentageColumn())
            .StartAsync(async context =>
            {
                ProgressTask bar = context.AddTask(Markup.Escape(PlainText.Of(label)), maxValue: 1.0);
                result = await Task.Run(() => work(new Bar(bar, PlainText.Of(label)))).ConfigureAwait(false);
            }).ConfigureAwait(false);
        return result!;
    }

    private sealed class Silent : IProgress<Model.Results.Progress>
    {
        public void Report(Model.Results.Progress value)
        {
            // Quiet on purpose.
        }
    }

    private sealed class PlainLines(TextWriter error, string label) : IProgress<Model.Results.Progress>
    {
        private readonly Lock gate = new();
        private string stage = "";
        private int quarters;

        public void Report(Model.Results.Progress value)
        {
            lock (gate)
            {
                int passed = (int)(4.0 * value.Done);
                if (value.Stage != stage)
                {
                    (stage, quarters) = (value.Stage, passed);
                    error.WriteLine(value.Detail.Length == 0 ? $"{label}: {stage}" : $"{label}: {stage}, {value.Detail}");
                }
                else if (passed > quarters && value.Detail.Length > 0)
                {
                    quarters = passed;
                    error.WriteLine($"{label}: {stage}, {value.Detail}");
                }
            }
        }
    }

    private sealed class Bar(ProgressTask bar, string label) : IProgress<Model.Results.Progress>
    {
        public void Report(Model.Results.Progress value)
        {
            string detail = value.Detail.Length == 0 ? value.Stage : $"{value.Stage} {value.Detail}";
            bar.Description = Markup.Escape($"{label}: {detail}");
            bar.Value = value.Done;
        }
    }
}
