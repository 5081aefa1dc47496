using System.Runtime.CompilerServices;
using BenchmarkDotNet.Configs;
using BenchmarkDotNet.Jobs;
using BenchmarkDotNet.Running;
using BenchmarkDotNet.Toolchains.InProcess.Emit;

namespace Dewstone.Benchmarks;

internal static class Program
{
    /// <summary>With this word alone the program is the bare .NET program that start-up is measured against.</summary>
    public const string BareWord = "bare";

    private static void Main(string[] args)
    {
        if (args is [BareWord])
        {
            Console.WriteLine("0.1.0");
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

        if (args is ["--table", "scaling"])
        {
            ScalingTable.Print();
            return;
        }

        if (args is ["--table", "inspection", ..])
        {
            InspectionTable.Print(args[2..]);
            return;
        }

        if (args is ["--table", "transforms"])
        {
            TransformTable.Print();
            return;
        }

        if (args is ["--table", "needles"])
        {
            DeadNeedleTable.Print();
            return;
        }

        Benchmark(args);
    }

    // In process: a project generated under .artifacts would inherit this repository's locked restore and fail on it. Apart from Main, so that a
    // bare run loads nothing of it.
    [MethodImpl(MethodImplOptions.NoInlining)]
    private static void Benchmark(string[] args) =>
        BenchmarkSwitcher.FromAssembly(typeof(Program).Assembly)
            .Run(args, DefaultConfig.Instance.AddJob(Job.Default.WithToolchain(InProcessEmitToolchain.Instance)));
}
