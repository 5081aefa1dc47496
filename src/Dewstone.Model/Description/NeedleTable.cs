namespace Dewstone.Model.Description;

/// <summary>State of each needle of the head, as calibrated.</summary>
public sealed record NeedleTable
{
    /// <summary>Rows in the order of the file; a needle without a row counts as ok with gain 1 and offset 0.</summary>
    public required IReadOnlyList<NeedleState> Needles { get; init; }
}
