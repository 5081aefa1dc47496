using System.Globalization;

namespace Dewstone.Cli;

/// <summary>Processors this process may use: what the system's affinity and control group leave it, and no more than a batch queue granted.</summary>
internal static class ProcessorAllowance
{
    /// <summary>Variable in which a queue says how many processors it granted a task.</summary>
    public const string Granted = "SLURM_CPUS_PER_TASK";

    /// <summary>The allowance.</summary>
    /// <param name="processors">What the runtime sees; it heeds affinity and control groups.</param>
    /// <param name="granted">What the queue says; null when there is none.</param>
    /// <returns>Processors, 1 or more.</returns>
    public static int Of(int processors, string? granted) =>
        Math.Max(1, int.TryParse(granted, NumberStyles.None, CultureInfo.InvariantCulture, out int most) && most > 0 ? Math.Min(processors, most) : processors);
}
