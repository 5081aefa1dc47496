namespace Dewstone.Model.Description;

/// <summary>How the figures of a mix were got.</summary>
public enum MixOriginKind
{
    /// <summary>Assumed; to be replaced by a calibration.</summary>
    Assumed,

    /// <summary>Fitted to measurements.</summary>
    Calibration,

    /// <summary>Taken from a handbook.</summary>
    Handbook,
}
