namespace Dewstone.Model.Diagnostics;

/// <summary>Findings DW305x: what calibrations say of needles and mixes. Warnings and notes: the figures are written, and how far to trust them is said.</summary>
public static class CalibrationFindings
{
    /// <summary>Blocked needle.</summary>
    public static FindingKind Blocked { get; } = new(
        "DW3050", Severity.Warning, "Needle blocked",
        "A needle gave less than half of what was asked, over all its readings. The needles file calls it blocked, and compile will not use it.",
        "A blocked needle leaves a column of loose mix through the whole unit.",
        "Clean or change the needle and weigh it again.",
        "3,7,20,1.2,20.5,1013",
        "common practice, no source");

    /// <summary>Limited needle.</summary>
    public static FindingKind Limited { get; } = new(
        "DW3051", Severity.Warning, "Needle limited",
        "A needle has fewer than three good readings, scatters by more than 5 % of the dose, gives more than 15 % too much or too little at its middle dose, or "
            + "has moved by more than 5 % since the last check. The needles file calls it limited: it is used, and placement puts little of a unit below it.",
        "Its doses are corrected by figures that are uncertain, or that do not hold for long.",
        "Clean it where it gives less than before, look at its tube where it gives more, and weigh it again.",
        "",
        "common practice, no source");

    /// <summary>Needle that moved.</summary>
    public static FindingKind Drifted { get; } = new(
        "DW3052", Severity.Note, "Needle has moved since the last check",
        "What a needle gives at its middle dose differs from the last needles file by more than the 95 % interval of the new readings, and by 1 % or more.",
        "Tubes of pumps give less with age; a needle that silts up too. A steady trend tells when to change them.",
        "Nothing to do tonight: the new figures hold. Compare a few checks, and weigh more often if the needles move.",
        "",
        "common practice, no source");

    /// <summary>A figure the data say nothing of.</summary>
    public static FindingKind Untold { get; } = new(
        "DW3053", Severity.Warning, "These data do not tell a figure",
        "The measurements do not depend on a figure of the mix, or so little that one standard deviation would be half of a diffusivity, a "
            + "fifth of a threshold or a tenth of a density. It was kept as the given mix "
            + "has it, and so was its assumed spread.",
        "A fitted figure that nothing supports looks measured and is not.",
        "Add the test that tells it: absorption on a column tells the diffusivity, test balls over a wide range of doses down to the smallest tell the threshold, "
            + "a container of loose mix tells the loose density.",
        "balls of one dose only");

    /// <summary>Two figures that cannot be told apart.</summary>
    public static FindingKind Entangled { get; } = new(
        "DW3054", Severity.Warning, "These data hardly tell two figures apart",
        "The errors of two fitted figures go together with a correlation beyond 0.9: the measurements fix a combination of both well and each by itself badly.",
        "Used together, as trials do, they are right; one of them quoted alone, or carried to another window or density, is not.",
        "Add the test that parts them: absorption on a column fixes the diffusivity by itself; the smallest doses the printer gives are the most sensitive to the "
            + "threshold.",
        "balls from 20 to 40 mL only");

    /// <summary>The law does not fit.</summary>
    public static FindingKind LackOfFit { get; } = new(
        "DW3055", Severity.Warning, "The wetting law does not fit these data",
        "Measurements of one kind miss the fitted law by more than their repeats scatter (F test at 1 %), or, without repeats, by more than twice what such a "
            + "measurement is usually good for.",
        "The law bends otherwise than the bed does; between and beyond the doses tried, predictions will be off by as much as the residuals are, and the stated "
            + "intervals, which take the law as true, are too narrow.",
        "Look at the residuals for a trend. Try --exponent scan, or another law in the mix named with --mix; check that all buckets had the same mix, density and "
            + "temperature.",
        "",
        "F test of lack of fit: Draper and Smith 1998, Applied Regression Analysis, chapter 2 (from memory); the usual errors: common practice, no source");

    /// <summary>One measurement decides.</summary>
    public static FindingKind LeaveOneOut { get; } = new(
        "DW3056", Severity.Warning, "One measurement decides the fit",
        "Left out of the fit, a measurement is predicted wrong by more than chance allows: 1 % over all measurements together.",
        "Either it is a slip, or it is the only one that tests the law where it lies.",
        "Look at that row of the yard's sheet and repeat the test at that dose or spacing.",
        "",
        "common practice, no source");

    /// <summary>Uptake not straight in the root of time.</summary>
    public static FindingKind NotRootTime { get; } = new(
        "DW3057", Severity.Warning, "Uptake does not follow the root of time",
        "The uptake of a column against the root of time has a correlation below 0.98.",
        "The column was shorter than the front, tilted, uneven, or the first readings were late; its sorptivity means little.",
        "Leave readings out that came after the front reached the top, pack a new column evenly, and repeat the test.",
        "",
        "ASTM C1585 (the limit from memory)");

    /// <summary>Residual content.</summary>
    public static FindingKind ResidualContent { get; } = new(
        "DW3058", Severity.Error, "Mix with a residual content",
        "The given mix has a residual water content above 0; the fit only knows laws without one.",
        "A bed that holds water fast before it passes any on wets in another way, and would be fitted wrongly.",
        "Set wetting.residual to 0 in the mix named with --mix.",
        "wetting: {law: power, diffusivity: 3.2e-6 m2/s, exponent: 4, residual: 2 %}");

    /// <summary>No fit.</summary>
    public static FindingKind NoFit { get; } = new(
        "DW3059", Severity.Error, "No figures of a mix fit these data",
        "The fit ended where balls would not set at all, at a density without pores, or at a figure outside what a mix file may hold.",
        "The measurements are of another mix, another window, or in other units than the first line says.",
        "Check units, window and mix; begin from a mix whose figures are nearer.",
        "diameters written in cm");

    /// <summary>All of them, by code.</summary>
    public static IReadOnlyList<FindingKind> All { get; } =
        [Blocked, Limited, Drifted, Untold, Entangled, LackOfFit, LeaveOneOut, NotRootTime, ResidualContent, NoFit];
}
