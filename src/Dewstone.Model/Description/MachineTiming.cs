using Dewstone.Model.Quantities;

namespace Dewstone.Model.Description;

/// <summary>Times of the machine's actions.</summary>
public sealed record MachineTiming
{
    /// <summary>Preparing a job, once.</summary>
    public Duration Setup { get; init; }

    /// <summary>Spreading one layer.</summary>
    public required Duration Spreading { get; init; }

    /// <summary>Moving the head to a station.</summary>
    public required Duration Move { get; init; }

    /// <summary>Plunging the needles.</summary>
    public required Duration Plunge { get; init; }

    /// <summary>Waiting after the dose.</summary>
    public required Duration Hold { get; init; }

    /// <summary>Withdrawing the needles.</summary>
    public required Duration Withdraw { get; init; }
}
