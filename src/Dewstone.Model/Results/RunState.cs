namespace Dewstone.Model.Results;

/// <summary>What a machine says of a dose it logs.</summary>
public enum RunState
{
    /// <summary>Nothing out of the ordinary.</summary>
    Ok,

    /// <summary>The machine noticed a fault: pressure, a valve, a pump.</summary>
    Fault,

    /// <summary>The dose was cut short by a stop.</summary>
    Stopped,
}
