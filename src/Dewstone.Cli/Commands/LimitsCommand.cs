using System.CommandLine;
using System.Globalization;
using Dewstone.Cli.Rendering;
using Dewstone.Compute.Studies;
using Dewstone.Model.Diagnostics;
using Dewstone.Model.Results;
using Dewstone.Reading;

namespace Dewstone.Cli.Commands;

/// <summary><c>dewstone limits</c>: what a mix on a printer can hold.</summary>
internal static class LimitsCommand
{
    private const double LeastWaterCement = 0.1;
    private const double MostWaterCement = 2.0;

    public static Command Create(Surroundings world)
    {
        Option<string?> mix = JobOptions.File("--mix", "The mix.");
        Option<string?> printer = JobOptions.File("--printer", "The printer.");
        mix.Required = printer.Required = true;
        Option<string?> needles = JobOptions.File("--needles", "Needles file (CSV) to use instead of the printer's.");
        Option<string?> tonight = JobOptions.File("--tonight", "What was measured on the night.");
        Option<double?> waterCement = WaterCement();
        Option<string?> root = JobOptions.Root();
        Option<int?> cells = JobOptions.Cells();
        SharedOptions shared = new();
        Command command = new("limits", "Say what a mix on a printer can hold: smallest hole, thinnest wall, dose window.")
        {
            mix, printer, needles, tonight, waterCement, root, cells,
        };
        shared.AddTo(command);
        command.SetAction(async (parse, cancellation) =>
        {
            MixOnPrinterReading read = DescriptionReader.ReadMixOnPrinter(new ReadOptions
            {
                Mix = parse.GetValue(mix),
                Printer = parse.GetValue(printer),
                Needles = parse.GetValue(needles),
                Tonight = parse.GetValue(tonight),
                Root = parse.GetValue(root),
            });
            double limit = parse.GetValue(waterCement) ?? DoseWindowStudy.DefaultWaterCement;
            if (read.Value is { } given && limit <= given.Mix.Hardening.WaterCement)
            {
                throw new UsageException($"--water-cement {limit:0.###} is not above {given.Mix.Hardening.WaterCement:0.###}, at which {given.Mix.Name} sets.");
            }

            Parallelism parallelism = shared.Threads(parse, world);
            bool isQuiet = parse.GetValue(shared.Quiet);
            LimitsResult? result = read.Value is not { } value ? null : await ProgressDisplay.RunAsync(world, isQuiet, "limits", progress => LimitsStudy.Run(
                new LimitsQuestion
                {
                    Mix = value.Mix,
                    Printer = value.Printer,
                    Needles = value.Needles,
                    Tonight = value.Tonight,
                    WaterCementLimit = limit,
                    Cells = parse.GetValue(cells) ?? JobOptions.DefaultCells,
                },
                parallelism, progress, cancellation)).ConfigureAwait(false);
            IReadOnlyList<Diagnostic> findings = [.. read.Diagnostics, .. (result?.Findings ?? []).Select(read.Sources.Place)];
            int code = result?.Card is null ? ExitCode.InputAtFault : ExitCode.Done;
            string text = parse.GetValue(shared.Json) ? LimitsJson.Of(result?.Card, findings, code)
                : LimitsText.Of(read.Value, result?.Card, findings, world.Colour, isQuiet);
            await world.Output.WriteAsync(text).ConfigureAwait(false);
            return code;
        });
        return command;
    }

    private static Option<double?> WaterCement() => new("--water-cement")
    {
        Description = $"Greatest water/cement allowed (default {DoseWindowStudy.DefaultWaterCement:0.00}).",
        HelpName = "RATIO",
        CustomParser = result =>
        {
            string text = result.Tokens[^1].Value;
            if (double.TryParse(text, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out double value)
                && value is >= LeastWaterCement and <= MostWaterCement)
            {
                return value;
            }

            result.AddError($"--water-cement takes a number from {LeastWaterCement} to {MostWaterCement:0}, such as 0.55, not '{text}'.");
            return null;
        },
    };
}
