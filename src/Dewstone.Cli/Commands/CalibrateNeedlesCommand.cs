using System.CommandLine;
using System.Text;
using Dewstone.Cli.Rendering;
using Dewstone.Compute.Calibration;
using Dewstone.Jobs.Emission.Charts;
using Dewstone.Model.Description;
using Dewstone.Model.Diagnostics;
using Dewstone.Model.Measurements;
using Dewstone.Reading;
using Dewstone.Reading.Tables;

namespace Dewstone.Cli.Commands;

/// <summary><c>dewstone calibrate needles</c>: weighings of needles to the needles file that <c>compile</c> reads.</summary>
internal static class CalibrateNeedlesCommand
{
    public static Command Create(Surroundings world)
    {
        Argument<string> data = new("DATA") { Description = "Weighings (CSV: column,row,asked_ml,weighed_g,water_temperature_c,air_pressure_hpa[,board,channel,run])." };
        Option<string?> previous = JobOptions.File("--previous", "Needles file (CSV) of the last check, for drift and for needles not weighed now.");
        Option<string> output = CalibrateCommand.Output("Needles file (CSV) to write.");
        Option<string?> pictures = CalibrateCommand.Pictures();
        SharedOptions shared = new();
        Command command = new("needles", "Gain, offset, repeatability and state of each needle from weighings.") { data, previous, output, pictures };
        shared.AddTo(command);
        command.SetAction(async (parse, _) =>
        {
            string file = parse.GetRequiredValue(data), target = parse.GetRequiredValue(output);
            FileReading<IReadOnlyList<NeedleReading>> readings = MeasurementReader.ReadNeedleChecks(file);
            List<Diagnostic> findings = [.. readings.Diagnostics];
            NeedleTable? before = null;
            if (parse.GetValue(previous) is { } old)
            {
                FileReading<NeedleTable> reading = DescriptionReader.ReadNeedles(old);
                findings.AddRange(reading.Diagnostics);
                before = reading.Value;
            }

            findings.AddRange(CalibrationFiles.Overwritten(target, [file, .. parse.GetValue(previous) is { } last ? [last] : Array.Empty<string>()]));
            HeadCalibration? head = null;
            int code = ExitCode.InputAtFault;
            if (readings.Value is { } good && !findings.Exists(finding => finding.Severity == Severity.Error))
            {
                head = NeedleCalibrator.Calibrate(good, before, file);
                findings.AddRange(head.Findings);
                code = CalibrationFiles.Write(
                    target, Encoding.UTF8.GetBytes(NeedleTableWriter.Write(head.Table)), parse.GetValue(pictures), () => [HeadChart.Emit(head)], findings);
            }

            string text = parse.GetValue(shared.Json) ? HeadJson.Of(head, findings, code)
                : HeadText.Of(head, findings, code == ExitCode.Done ? target : null, world.Colour, parse.GetValue(shared.Quiet));
            await world.Output.WriteAsync(text).ConfigureAwait(false);
            return code;
        });
        return command;
    }
}
