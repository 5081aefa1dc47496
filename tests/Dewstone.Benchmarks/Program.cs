using BenchmarkDotNet.Configs;
using BenchmarkDotNet.Jobs;
using BenchmarkDotNet.Running;
using BenchmarkDotNet.Toolchains.InProcess.Emit;

namespace Dewstone.Benchmarks;

internal static class Program
{
    // In process: a project generated under .artifacts would inherit this repository's locked restore and fail on it.
    private static void Main(string[] args)
    {
        if (args is ["--table", "correction"])
        {
            CorrectionTable.Print();
            return;
        }

        BenchmarkSwitcher.FromAssembly(typeof(Program).Assembly)
            .Run(args, DefaultConfig.Instance.AddJob(Job.Default.WithToolchain(InProcessEmitToolchain.Instance)));
    }
}
