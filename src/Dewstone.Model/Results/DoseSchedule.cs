namespace Dewstone.Model.Results;

/// <summary>When water flows where, taken from the timeline: what the wetting needs of the machine. Times in seconds from the first spreading.</summary>
public sealed class DoseSchedule
{
    /// <summary>When each layer lies spread (end of its spreading), s; one a layer, lowest first.</summary>
    public required double[] LayerSpreadSeconds { get; init; }

    /// <summary>When the station of a position starts to dose, s; index order of the lattice; meaningless where the dose is 0.</summary>
    public required double[] DoseStartSeconds { get; init; }

    /// <summary>How long the pump of a position runs, s: its delivered volume over its needle's flow; index order of the lattice; 0 where the dose is 0.</summary>
    public required double[] PumpSeconds { get; init; }

    /// <summary>When the machine went on after a stop, s; null when it never stood.</summary>
    public double? ResumedSeconds { get; set; }
}
