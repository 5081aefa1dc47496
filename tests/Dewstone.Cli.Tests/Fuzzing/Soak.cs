using System.Globalization;

namespace Dewstone.Cli.Tests.Fuzzing;

/// <summary>Long runs: as many cases as asked for by DEWSTONE_FUZZ_SHARE (a share of all, 1 unless set), another seed each time unless DEWSTONE_FUZZ_SEED says one.</summary>
internal static class Soak
{
    /// <summary>Seed, told in every message of a failure.</summary>
    public static ulong Seed { get; } = ulong.TryParse(Environment.GetEnvironmentVariable("DEWSTONE_FUZZ_SEED"), out ulong seed) ? seed : (ulong)DateTime.UtcNow.Ticks;

    /// <summary>Cases of a run that has so many in all.</summary>
    public static uint Cases(uint all) =>
        (uint)(all * (double.TryParse(Environment.GetEnvironmentVariable("DEWSTONE_FUZZ_SHARE"), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out double share) ? share : 1.0));
}
