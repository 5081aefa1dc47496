namespace Dewstone.Model.Diagnostics;

/// <summary>Findings DW304x: the joint that a stop leaves.</summary>
public static class JointFindings
{
    /// <summary>A layer whose water stands still before the next is dosed.</summary>
    public static FindingKind ColdJoint { get; } = new(
        "DW3040", Severity.Warning, "Cold joint",
        "The stop lasted so long that the water of the layer below no longer moved when the layer above got its first dose.",
        "No water crosses such a joint, and the cement below has begun to set: the two layers may not bind. The strength across it is not computed.",
        "Have it judged by licensed practice before the unit is lifted; lay slings so that the joint is not pulled; or scrap the bin.",
        Source: "common practice, no source");

    /// <summary>A requirement that the stop has broken.</summary>
    public static FindingKind RequirementLost { get; } = new(
        "DW3041", Severity.Error, "Requirement lost by the stop",
        "A requirement that the job met before the stop is met no longer, even with the rest of the doses as good as they could be made.",
        "What comes out of the bin would not be what was designed.",
        "Scrap the bin and print anew, or have it judged and release the finding.");

    /// <summary>A layer watered in two goes with more than its window between.</summary>
    public static FindingKind SplitLayer { get; } = new(
        "DW3042", Severity.Warning, "Layer watered in two goes",
        "Part of a layer was watered before the stop and the rest is watered after the window of the first part. What the first part wetted has set by then and is a wall to the water of the second.",
        "A cold joint stands upright in the layer: no water crosses it, and the two parts may not bind. The strength across it is not computed.",
        "Have it judged by licensed practice before the unit is lifted; lay slings so that the joint is not pulled; or scrap the bin.",
        Source: "common practice, no source");

    /// <summary>Whose rest the job is.</summary>
    public static FindingKind Resumed { get; } = new(
        "DW3043", Severity.Note, "Job prints the rest of another",
        "The dose tables and the sequence hold only what is left after a stop; what was delivered before stands in tables of its own. Solid, estimate and report are of the whole unit.",
        "Printed into an empty bin it would make a part of a unit.",
        "Put it on the machine that stopped, over the same bin.");

    /// <summary>Doses of the rest that were changed.</summary>
    public static FindingKind Redosed { get; } = new(
        "DW3044", Severity.Note, "Rest of the doses found anew",
        "The doses that were left no longer served after the stop, so they were corrected again with the delivered ones held fixed.",
        "The dose tables of the rest differ from those of the job that was stopped.",
        "Nothing to do.");

    /// <summary>All of them, by code.</summary>
    public static IReadOnlyList<FindingKind> All { get; } = [ColdJoint, RequirementLost, SplitLayer, Resumed, Redosed];
}
