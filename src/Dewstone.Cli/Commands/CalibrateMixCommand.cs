using System.CommandLine;
using System.Security.Cryptography;
using System.Text;
using Dewstone.Cli.Rendering;
using Dewstone.Compute.Calibration;
using Dewstone.Jobs.Emission.Charts;
using Dewstone.Model.Description;
using Dewstone.Model.Diagnostics;
using Dewstone.Model.Measurements;
using Dewstone.Reading;
using Dewstone.Reading.Files;

namespace Dewstone.Cli.Commands;

/// <summary><c>dewstone calibrate mix</c>: the yard's tests to a mix file with its uncertainty.</summary>
internal static class CalibrateMixCommand
{
    private const string Scan = "scan";

    // The given exponent's neighbourhood: laws flatter than 2 or steeper than 8 were never seen to fit better.
    private static readonly int[] Scanned = [2, 3, 4, 5, 6, 7, 8];

    public static Command Create(Surroundings world)
    {
        Argument<string[]> data = new("DATA")
        {
            Description = "Tables (CSV) of absorption, test balls, merged pairs or loose density, told apart by their first lines; one or more.",
            Arity = ArgumentArity.OneOrMore,
        };
        Option<string?> mix = JobOptions.File("--mix", "The mix to begin from; it is not changed.");
        mix.Required = true;
        Option<string> output = CalibrateCommand.Output("Mix file (*.mix.yaml) to write.");
        Option<IReadOnlyList<int>?> exponent = Exponent();
        Option<string?> pictures = CalibrateCommand.Pictures();
        SharedOptions shared = new();
        Command command = new("mix", "Diffusivity, hardening threshold and loose density of a mix from the yard's tests.") { data, mix, output, exponent, pictures };
        shared.AddTo(command);
        command.SetAction(async (parse, cancellation) =>
        {
            string[] files = parse.GetRequiredValue(data);
            Array.ForEach(files, file => UsageException.ThrowIfOption(file, parse));

            string target = parse.GetRequiredValue(output), start = parse.GetValue(mix)!;
            FileReading<DryMix> given = DescriptionReader.ReadMix(start);
            FileReading<MixReadings>[] tables = [.. files.Select(MeasurementReader.ReadMixData)];
            List<Diagnostic> findings =
                [.. given.Diagnostics, .. tables.SelectMany(table => table.Diagnostics), .. CalibrationFiles.Overwritten(target, [start, .. files])];
            MixCalibration? found = null;
            int code = ExitCode.InputAtFault;
            if (given.Value is { } known && !findings.Exists(finding => finding.Severity == Severity.Error))
            {
                MixQuestion question = new()
                {
                    Mix = known,
                    Data = [.. tables.Select(table => table.Value!)],
                    Exponents = parse.GetValue(exponent) ?? [],
                    Reference = string.Join(", ", files.Select(file => $"{Path.GetFileName(file)} sha256 {Hash(file)}")),
                };
                found = await ProgressDisplay.RunAsync(
                    world, parse.GetValue(shared.Quiet), "calibrate", _ => MixCalibrator.Calibrate(question, cancellation)).ConfigureAwait(false);
                findings.AddRange(found.Findings.Select(finding => finding.Key is null ? finding : finding with { Location = given.Source.Find(finding.Key.Path) }));
                code = found.Mix is null ? ExitCode.No : CalibrationFiles.Write(
                    target, Encoding.UTF8.GetBytes(MixWriter.Write(found.Mix, MixFitText.Remarks(found))), parse.GetValue(pictures), () => MixCharts.Emit(found), findings);
            }

            string text = parse.GetValue(shared.Json) ? MixFitJson.Of(found, findings, code)
                : MixFitText.Of(found, findings, code == ExitCode.Done ? target : null, world.Colour, parse.GetValue(shared.Quiet));
            await world.Output.WriteAsync(text).ConfigureAwait(false);
            return code;
        });
        return command;
    }

    private static string Hash(string file) => Convert.ToHexStringLower(SHA256.HashData(WholeFile.Read(file)));

    private static Option<IReadOnlyList<int>?> Exponent() => new("--exponent")
    {
        Description = "Exponent of the wetting law to try against the given mix's, 1 to 12, or scan for 2 to 8.",
        HelpName = "N",
        CustomParser = result =>
        {
            string text = result.Tokens[^1].Value;
            if (text == Scan)
            {
                return Scanned;
            }

            if (int.TryParse(text, System.Globalization.NumberStyles.None, null, out int exponent) && exponent is >= 1 and <= 12)
            {
                return [exponent];
            }

            result.AddError($"--exponent takes a whole number from 1 to 12 or {Scan}, not '{text}'.");
            return null;
        },
    };
}
