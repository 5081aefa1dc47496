using System.CommandLine;
using System.Text;
using Dewstone.Cli.Rendering;
using Dewstone.Jobs.Verification;
using Dewstone.Model.Diagnostics;
using Dewstone.Reading.Files;

namespace Dewstone.Cli.Commands;

/// <summary><c>dewstone verify</c>: a job folder is what it claims to be, and what was approved.</summary>
internal static class VerifyCommand
{
    private const long MostBytes = 16L * 1024 * 1024;

    public static Command Create(Surroundings world)
    {
        Argument<string[]> jobs = new("JOB") { Description = "Job folder; one or more.", Arity = ArgumentArity.OneOrMore };
        Option<string?> list = new("--approved") { Description = "List of approved designs: a fingerprint a line, optionally that of the one approved job.", HelpName = "FILE" };
        SharedOptions shared = new();
        Command command = new("verify", "Prove that job folders are unchanged, simulate to what they claim, and were approved.") { jobs, list };
        shared.AddTo(command);
        command.SetAction(async (parse, cancellation) =>
        {
            DiagnosticBag refusals = new();
            ApprovedDesigns? approved = parse.GetValue(list) is { } file ? Read(file, refusals) : null;
            if (refusals.HasErrors)
            {
                await world.Error.WriteAsync(FindingText.Of(refusals.Items, colour: false, quiet: false)).ConfigureAwait(false);
                return ExitCode.InputAtFault;
            }

            bool quiet = parse.GetValue(shared.Quiet), json = parse.GetValue(shared.Json);
            List<VerificationResult> results = [];
            foreach (string job in parse.GetRequiredValue(jobs))
            {
                string label = Path.GetFileName(Path.TrimEndingDirectorySeparator(job));
                VerificationResult result = await ProgressDisplay.RunAsync(
                    world, quiet, label, progress => JobFolderVerification.Verify(job, approved, shared.Threads(parse, world), progress, cancellation)).ConfigureAwait(false);
                results.Add(result);
                if (!json)
                {
                    await world.Output.WriteAsync(VerificationText.Of(result, world.Colour, quiet, approved is not null)).ConfigureAwait(false);
                }
            }

            int code = ExitCode.Combine([.. results.Select(CodeOf)]);
            if (json)
            {
                await world.Output.WriteAsync(VerificationJson.Of(results, code)).ConfigureAwait(false);
            }

            return code;
        });
        return command;
    }

    private static int CodeOf(VerificationResult result) =>
        result.Verified ? ExitCode.Done : result.Findings.Any(f => f.Code == JobFolderFindings.NoSuchJob.Code) ? ExitCode.InputAtFault : ExitCode.No;

    private static ApprovedDesigns? Read(string file, DiagnosticBag findings)
    {
        string text;
        try
        {
            text = Encoding.UTF8.GetString(WholeFile.TryRead(file, MostBytes) ?? throw new UsageException($"--approved: `{file}` is larger than {MostBytes >> 20} MiB."));
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException or ArgumentException)
        {
            throw new UsageException($"--approved: `{file}` cannot be read: {fault.Message.TrimEnd('.')}.");
        }

        return ApprovedDesigns.Read(text, file, findings);
    }
}
