using System.Runtime.CompilerServices;
using BenchmarkDotNet.Configs;
using BenchmarkDotNet.Jobs;
using BenchmarkDotNet.Running;
using BenchmarkDotNet.Toolchains.InProcess.Emit;
using Dewstone.Benchmarks.Short;

namespace Dewstone.Benchmarks;

internal static class Program
{
    private static void Main(string[] args)
    {
        if (args is ["--table", "short", ..])
        {
            ShortTable.Print(args[2..]);
            return;
        }

        if (args is ["--table", "correction", ..])
        {
            CorrectionTable.Print(args[2..]);
            return;
        }

        if (args is ["--table", "registration", ..])
        {
            RegistrationTable.Print(args[2..]);
            return;
        }

        if (args is ["--table", "scaling", ..])
        {
            ScalingTable.Print(args[2..]);
            return;
        }

        if (args is ["--table", "inspection", ..])
        {
            InspectionTable.Print(args[2..]);
            return;
        }

        if (args is [ScalingPoint.Word, _, _, _])
        {
            ScalingPoint.Print(args[1..]);
            return;
        }

        if (args is ["--table", "needles"])
        {
            DeadNeedleTable.Print();
            return;
        }

        Benchmark(args);
    }

    // In process: a project generated under .artifacts would inherit this repository's locked restore and fail on it. Apart from Main, so that
    // the tables load nothing of it.
    [MethodImpl(MethodImplOptions.NoInlining)]
    private static void Benchmark(string[] args) =>
        BenchmarkSwitcher.FromAssembly(typeof(Program).Assembly)
            .Run(args, DefaultConfig.Instance.AddJob(
                Job.Default.WithToolchain(InProcessEmitToolchain.Instance).WithWarmupCount(1).WithIterationCount(5)));
}
