using System.CommandLine;
using Dewstone.Cli.Rendering;

namespace Dewstone.Cli.Commands;

/// <summary><c>dewstone survey</c>: a printed unit as run and as built, against as planned.</summary>
internal static class SurveyCommand
{
    public static Command Create(Surroundings world)
    {
        Argument<string> job = new("JOB") { Description = "Job folder that was printed; it is only read." };
        Option<string?> runLog = JobOptions.File("--run-log", "The machine's log (CSV: layer,station,column,row,delivered_ml, also seconds,state,started_s).");
        Option<string?> weights = JobOptions.File("--weights", "Scale weights of units of this job, in the order printed (CSV: mark,weighed_kg, also date).");
        Option<string?> gauges = JobOptions.File("--gauges", "Gauge balls and calipers (CSV: name,kind,reading_mm; kind is opening or wall).");
        Option<string?> scan = JobOptions.File("--scan", "Scan of the unit in millimetres, about upright (STL, or XYZ: a point a line).");
        Option<string?> output = new("--output", "-o") { Description = "Folder that gets NAME.survey with the findings as JSON, charts, plates and pictures.", HelpName = "DIR" };
        SharedOptions shared = new();
        Command command = new("survey", "Hold a printed unit against its job: exit 0 to release, 1 to hold or scrap (rules: dewstone explain DW3081).") { job, runLog, weights, gauges, scan, output };
        shared.AddTo(command);
        command.SetAction(async (parse, cancellation) =>
        {
            SurveyRequest request = new()
            {
                Job = parse.GetRequiredValue(job),
                RunLog = parse.GetValue(runLog),
                Weights = parse.GetValue(weights),
                Gauges = parse.GetValue(gauges),
                Scan = parse.GetValue(scan),
                OutputFolder = parse.GetValue(output),
                Parallelism = shared.Threads(parse, world),
            };
            if (request is { RunLog: null, Weights: null, Gauges: null, Scan: null })
            {
                throw new UsageException("survey needs something measured: --run-log, --weights, --gauges or --scan FILE.");
            }

            bool quiet = parse.GetValue(shared.Quiet);
            SurveyOutcome outcome = await ProgressDisplay.RunAsync(
                world, quiet, Path.GetFileName(Path.TrimEndingDirectorySeparator(request.Job)), progress => new SurveyRunner(request).Run(progress, cancellation)).ConfigureAwait(false);
            string text = parse.GetValue(shared.Json) ? SurveyJson.Of(outcome) : SurveyText.Of(outcome, world.Colour, quiet);
            await world.Output.WriteAsync(text).ConfigureAwait(false);
            return outcome.ExitCode;
        });
        return command;
    }
}
