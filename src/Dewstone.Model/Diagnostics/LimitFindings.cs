namespace Dewstone.Model.Diagnostics;

/// <summary>Findings DW303x: what a drawing asks for beyond what the mix on the printer can hold. None of them holds the job back.</summary>
public static class LimitFindings
{
    private const string TestBlock = "test blocks wetted by computation; the bounds of what counts as open and sound are chosen, no source";

    /// <summary>An opening that a test hole of its size does not keep.</summary>
    public static FindingKind HoleTooSmall { get; } = new(
        "DW3031", Severity.Warning, "Opening smaller than this mix and printer keep open",
        "A round test hole of this width, drawn through a block at a bad place against the needles, closes when the block is dosed and wetted.",
        "Water of the needles around it meets in its middle: the opening sets shut, or only a loose plug of damp mix marks it.",
        "Make it wider, or use a printer with a finer grid. The command dewstone limits shows from which size on holes stay open.",
        "", TestBlock);

    /// <summary>A wall that a test wall of its thickness does not match.</summary>
    public static FindingKind WallTooThin { get; } = new(
        "DW3032", Severity.Warning, "Wall thinner than this mix and printer make sound",
        "A test wall of this thickness, at a bad place against the needles, is not sound when it is dosed and wetted: loose mix stays in its middle third, "
        + "or somewhere less than half of its thickness sets.",
        "Such a wall has windows or dry pockets between the needles, and breaks there at dig-out.",
        "Make it thicker, or place it so that a plane of needles runs through its middle. The command dewstone limits shows from which thickness on walls are sound.",
        "", TestBlock);

    /// <summary>A dose window narrower than what needles hold.</summary>
    public static FindingKind WindowTooNarrow { get; } = new(
        "DW3033", Severity.Warning, "Dose window narrower than the needles hold",
        "Between the dose that closes the pockets between needles and the one that reaches the greatest water/cement there is less room than two standard "
        + "deviations of a needle's dose: 2 x sqrt(repeatability squared + drift squared) x dose.",
        "More than one needle in twenty will leave dry pockets or water its voxel above the limit, although the computed solid looks sound.",
        "Check and recalibrate the needles more often, so that they drift less; or allow a higher water/cement, use a mix whose water spreads further, or a finer grid.",
        "needle: {repeatability: 2 %, drift: 5 %, ...}", "two standard deviations: common practice, no source");

    /// <summary>A requirement met as computed that trials often miss.</summary>
    public static FindingKind Doubtful { get; } = new(
        "DW3035", Severity.Warning, "Requirement that the uncertain mix and needles put in doubt",
        "The job as computed meets this requirement. Of the trials asked for with --trials, with density, diffusivity, threshold, bed temperature and needles "
        + "drawn from what is known of their spread, so many miss it that fewer than 90 in 100 prints may meet it: the lower end of the 95 % interval is below 90 %.",
        "The print may well come out otherwise than the computed solid, although nothing goes wrong.",
        "Narrow the input that the message names: calibrate the mix, measure the bed on the night, check the needles. Or leave more room to the limit. More "
        + "trials narrow the interval, not the spread.",
        "uncertainty: {diffusivity: 20 %, threshold: 5 %, loose_density: 2 %}",
        "interval: Wilson 1927, JASA 22:209; trials: McKay, Beckman, Conover 1979, Technometrics 21:239; the 90 % is chosen, no source");

    /// <summary>All of them, by code.</summary>
    public static IReadOnlyList<FindingKind> All { get; } = [HoleTooSmall, WallTooThin, WindowTooNarrow, Doubtful];
}
