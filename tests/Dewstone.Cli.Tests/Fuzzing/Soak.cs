using System.Globalization;

namespace Dewstone.Cli.Tests.Fuzzing;

/// <summary>
/// Long runs: as many cases as asked for by DEWSTONE_FUZZ_SHARE (a share of all, 1 unless set), another seed each time unless DEWSTONE_FUZZ_SEED says one.
/// With DEWSTONE_FUZZ_CASE only the case of that number is run, to look into it.
/// </summary>
internal static class Soak
{
    /// <summary>Seed, told in every message of a failure.</summary>
    public static ulong Seed { get; } = ulong.TryParse(Environment.GetEnvironmentVariable("DEWSTONE_FUZZ_SEED"), out ulong seed) ? seed : (ulong)DateTime.UtcNow.Ticks;

    private static uint? Only { get; } = uint.TryParse(Environment.GetEnvironmentVariable("DEWSTONE_FUZZ_CASE"), CultureInfo.InvariantCulture, out uint number) ? number : null;

    /// <summary>Cases of a run that has so many in all: how many, and the number of the first.</summary>
    public static (uint Count, uint First) Cases(uint all) => Only is { } only
        ? (1, only)
        : ((uint)(all * (double.TryParse(Environment.GetEnvironmentVariable("DEWSTONE_FUZZ_SHARE"), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out double share) ? share : 1.0)), 0);
}
