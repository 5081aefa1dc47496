namespace Dewstone.Model.Results;

/// <summary>Why a unit stands elsewhere on the needle grid than in the middle, straight and without a turn.</summary>
[Flags]
public enum RegistrationReasons
{
    /// <summary>Nothing was gained by moving it, or nothing was free.</summary>
    None = 0,

    /// <summary>Turned, because it fits the bin only so.</summary>
    TurnedToFit = 1,

    /// <summary>Turned or moved by whole pitches, so that less of the wanted solid lies under blocked or limited needles.</summary>
    AvoidsNeedles = 2,

    /// <summary>Moved within a voxel, because the corrected doses then come nearer to the wanted solid.</summary>
    ShiftMatchesBetter = 4,

    /// <summary>Every other layer shifted, because the corrected doses then come nearer to the wanted solid.</summary>
    ShiftedLayersMatchBetter = 8,
}
