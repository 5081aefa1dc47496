using System.CommandLine;
using Dewstone.Cli.Rendering;
using Dewstone.Model.Quantities;
using Dewstone.Model.Results;
using Dewstone.Reading.Quantities;

namespace Dewstone.Cli.Commands;

/// <summary><c>dewstone resume</c>: go on or scrap after a stop, and the job for the rest.</summary>
internal static class ResumeCommand
{
    private const int MostCount = 100_000;
    private const double MostPauseSeconds = 30.0 * 86_400.0;

    public static Command Create(Surroundings world)
    {
        Argument<string> job = new("JOB") { Description = "Job folder that was being printed." };
        Option<int?> after = WholeNumber.Option("--after", "Layers that are done, counted from the lowest.", 0, MostCount);
        after.Required = true;
        Option<int?> station = WholeNumber.Option("--station", "Stations of the next layer that are done too.", 1, MostCount);
        Option<string?> runLog = JobOptions.File("--run-log", "What was really delivered (CSV: layer,station,column,row,delivered_ml).");
        Option<string?> needles = JobOptions.File("--needles", "Needles file (CSV) from now on, for instance with needles that died.");
        Option<double> pause = Pause();
        Option<string?> output = new("--output", "-o") { Description = "Folder that gets the new job (default: beside the old one).", HelpName = "DIR" };
        Option<Acceptance[]> accept = JobOptions.Accept();
        SharedOptions shared = new();
        Command command = new("resume", "Say whether to go on after a stop, and write the job for the rest.") { job, after, station, runLog, needles, pause, output, accept };
        shared.AddTo(command);
        command.SetAction(async (parse, cancellation) =>
        {
            ResumeRequest request = new()
            {
                Job = parse.GetRequiredValue(job),
                AfterLayer = parse.GetValue(after)!.Value,
                Station = parse.GetValue(station),
                RunLog = parse.GetValue(runLog),
                Needles = parse.GetValue(needles),
                PauseMilliseconds = (long)Math.Floor(parse.GetValue(pause) * 1000.0 + 0.5),
                OutputFolder = parse.GetValue(output),
                Accept = parse.GetValue(accept) ?? [],
                Parallelism = shared.Threads(parse, world),
            };
            bool quiet = parse.GetValue(shared.Quiet);
            ResumeOutcome outcome = await ProgressDisplay.RunAsync(
                world, quiet, Path.GetFileName(Path.TrimEndingDirectorySeparator(request.Job)), progress => new ResumeRunner(request).Run(progress, cancellation)).ConfigureAwait(false);
            string text = parse.GetValue(shared.Json) ? ResumeJson.Of(outcome) : ResumeText.Of(outcome, world.Colour, quiet);
            await world.Output.WriteAsync(text).ConfigureAwait(false);
            return outcome.ExitCode;
        });
        return command;
    }

    private static Option<double> Pause() => new("--pause")
    {
        Description = "How long the machine stands, such as \"25 min\".",
        HelpName = "DURATION",
        Required = true,
        CustomParser = result =>
        {
            if (!DurationText.TryRead(result.Tokens[^1].Value, out Duration duration, out string fault))
            {
                result.AddError($"--pause: {fault}.");
            }
            else if (duration.Seconds > MostPauseSeconds)
            {
                result.AddError($"--pause: {result.Tokens[^1].Value} is above 30 d; scrap the bin.");
            }

            return duration.Seconds;
        },
    };
}
