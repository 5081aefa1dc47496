namespace Dewstone.Model.Results;

/// <summary>What the machine does in one step of its sequence.</summary>
public enum MachineAction
{
    /// <summary>Spreads a layer of dry mix.</summary>
    Spread,

    /// <summary>Moves the head to a station.</summary>
    Move,

    /// <summary>Plunges the needles.</summary>
    Plunge,

    /// <summary>Injects the doses of a station; all needles start together.</summary>
    Dose,

    /// <summary>Waits.</summary>
    Hold,

    /// <summary>Withdraws the needles.</summary>
    Withdraw,

    /// <summary>Flushes the needles.</summary>
    Flush,

    /// <summary>Stands still; only between the two parts of a print that was stopped.</summary>
    Pause,
}
