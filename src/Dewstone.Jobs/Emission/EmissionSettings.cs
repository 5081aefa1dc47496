using Dewstone.Model.Results;

namespace Dewstone.Jobs.Emission;

/// <summary>What the emitters need beside the compiled job.</summary>
public sealed record EmissionSettings
{
    /// <summary>Which needle waters which position.</summary>
    public required NeedleAddressing Addressing { get; init; }

    /// <summary>Constants of the wetting.</summary>
    public required WettingConstants Wetting { get; init; }

    /// <summary>
    /// Name of a description file as the job's files hold it: below the root, so that they do not tell from which folder the program was called.
    /// </summary>
    public required Func<string, string> NameOfFile { get; init; }

    /// <summary>Whether the raw moisture field is written too.</summary>
    public bool RawField { get; init; }

    /// <summary>Threads; no byte depends on it.</summary>
    public Parallelism Parallelism { get; init; } = new(1);
}
