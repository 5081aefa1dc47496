using Dewstone.Model.Results;

namespace Dewstone.Model.Description;

/// <summary>Where and for how long a print was stopped: what lies before it has been delivered and cannot be changed.</summary>
public sealed record PrintStop
{
    /// <summary>Fingerprint of the job that was being printed.</summary>
    public required string JobFingerprint { get; init; }

    /// <summary>Layers that are done, from the lowest.</summary>
    public required int AfterLayer { get; init; }

    /// <summary>Stations of the next layer that are done too, from the first; 0 when that layer is not even spread.</summary>
    public int Station { get; init; }

    /// <summary>How long the machine stood, milliseconds.</summary>
    public required long PauseMilliseconds { get; init; }

    /// <summary>The needles until the stop; null when no table was named.</summary>
    public NeedleTable? NeedlesBefore { get; init; }

    /// <summary>How long the machine stood, s.</summary>
    public double PauseSeconds => PauseMilliseconds / 1000.0;

    /// <summary>Whether a dose was given before the stop.</summary>
    /// <param name="layer">Its layer, from 1.</param>
    /// <param name="station">Its station, from 1.</param>
    /// <returns>True when it was.</returns>
    public bool IsDone(int layer, int station) => layer <= AfterLayer || (layer == AfterLayer + 1 && station <= Station);

    /// <summary>Whether a step of the machine was made before the stop.</summary>
    /// <param name="layer">Its layer, from 1.</param>
    /// <param name="station">Its station; 0 where the head is parked.</param>
    /// <param name="action">What the machine does.</param>
    /// <returns>True when it was; the pause itself was not.</returns>
    public bool IsDone(int layer, int station, MachineAction action) => action != MachineAction.Pause
        && (station > 0 ? IsDone(layer, station) : layer <= AfterLayer || (layer == AfterLayer + 1 && Station > 0 && action == MachineAction.Spread));
}
