namespace Dewstone.Model.Diagnostics;

/// <summary>Findings DW5xxx: strength and lifting. Errors among them hold the job back from printing.</summary>
public static class StrengthFindings
{
    /// <summary>Heavier than the unit may be.</summary>
    public static FindingKind MassAbove { get; } = new(
        "DW5001", Severity.Error, "Heavier than required",
        "The predicted mass on the hook at dig-out is above require.mass.max.",
        "Slings, crane and deck are chosen from that mass.",
        "Open the unit further, make it smaller, or raise mass.max if everything that lifts it can bear it.",
        "require: {mass: {max: 500 kg}}");

    /// <summary>Heavier than the yard can lift.</summary>
    public static FindingKind LiftAbove { get; } = new(
        "DW5002", Severity.Error, "Heavier than the yard can lift",
        "The predicted mass on the hook at dig-out is above lift.max_mass of the printer's file.",
        "It could not be taken out of the bin.",
        "Open the unit further, make it smaller, or print it where a stronger lift stands.",
        "lift: {max_mass: 500 kg}");

    /// <summary>All of them, by code.</summary>
    public static IReadOnlyList<FindingKind> All { get; } = [MassAbove, LiftAbove];
}
