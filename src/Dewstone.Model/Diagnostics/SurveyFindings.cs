namespace Dewstone.Model.Diagnostics;

/// <summary>Findings DW306x to DW308x: what a survey of a printed unit found, as run and as built.</summary>
public static class SurveyFindings
{
    /// <summary>Print not finished.</summary>
    public static FindingKind Unfinished { get; } = new(
        "DW3060", Severity.Error, "Print not finished",
        "The run log ends before the last dose of the job: from some station on, nothing was delivered.",
        "What stands in the bin is a part of a unit. Whether it can be gone on with depends on how long the machine has stood. By this the unit is held.",
        "Ask `dewstone resume` whether to go on; scrap the bin when its answer is no.");

    /// <summary>Layer or station run twice.</summary>
    public static FindingKind RunTwice { get; } = new(
        "DW3061", Severity.Error, "Layer or station run twice",
        "At least half of the doses of a layer, or of one station of it, stand in the run log twice: the machine ran them again.",
        "The place got about twice the water, openings there may have set shut, and what the machine did after it lost its count is uncertain. By this the unit is held.",
        "Look at the bin, find out why the machine lost its count, and have the solid as run judged before the unit is released.");

    /// <summary>Stations swapped.</summary>
    public static FindingKind StationsSwapped { get; } = new(
        "DW3062", Severity.Error, "Stations swapped",
        "In a layer, what was delivered at one station is what another station was to get, and the other way round.",
        "Water went where none was planned, and the same may have happened in layers where it is less easily seen. By this the unit is held.",
        "Check how the stations are numbered on the machine against the sequence, and have the solid as run judged.");

    /// <summary>Layer got the doses of another.</summary>
    public static FindingKind OtherLayer { get; } = new(
        "DW3063", Severity.Error, "Layer got the doses of another",
        "What was delivered in a layer is what the tables hold for another layer.",
        "Walls and openings stand at other heights than drawn. By this the unit is held.",
        "Check how layers are counted on the machine (layer 1 is the lowest spread), and have the solid as run judged.");

    /// <summary>Station without water.</summary>
    public static FindingKind StationSkipped { get; } = new(
        "DW3064", Severity.Error, "Station without water",
        "All doses of a layer at one station are missing although the print went on.",
        "A whole field of the layer stays loose; the layers above rest on loose mix. By this the unit is held.",
        "Look at valve, supply and sequence, and have the solid as run judged.");

    /// <summary>Needle stuck.</summary>
    public static FindingKind NeedleStuck { get; } = new(
        "DW3065", Severity.Warning, "Needle stuck",
        "From some layer on a needle delivered nothing more, in two layers at least.",
        "Its column stays loose there. Whether the unit can bear it is judged on the solid as run.",
        "Clean or change the needle before the next print, and mark it blocked in the needles file until then.");

    /// <summary>Board stuck.</summary>
    public static FindingKind BoardStuck { get; } = new(
        "DW3066", Severity.Warning, "Board stuck",
        "From some layer on all needles of one pump board delivered nothing more.",
        "A whole strip of the unit stays loose there. Whether the unit can bear it is judged on the solid as run.",
        "Look at the board, its cable and its supply before the next print.");

    /// <summary>Needle drifts.</summary>
    public static FindingKind NeedleDrifts { get; } = new(
        "DW3067", Severity.Warning, "Needle drifts",
        "In the course of the print a needle came to give more or less than it was asked: a straight line through delivered over asked against the layers rises or falls by 5 % at least (by the printer's own drift where that is more) and by more than four standard errors.",
        "Its first and last doses are not those planned, and the next print starts with the error of the last.",
        "Measure the needle again before the next print; tubes that tire and filters that fill are the usual causes.",
        Source: "ordinary least squares; the limits are common practice, no source");

    /// <summary>Board drifts.</summary>
    public static FindingKind BoardDrifts { get; } = new(
        "DW3068", Severity.Warning, "Board drifts",
        "In the course of the print the needles of one pump board came to give more or less than they were asked, all in the same way.",
        "One cause acts on all of them, such as a falling supply pressure or a pump that warms up.",
        "Look at the board and its supply rather than at single needles, and measure its needles again.",
        Source: "ordinary least squares; the limits are common practice, no source");

    /// <summary>Dose missing.</summary>
    public static FindingKind DoseMissing { get; } = new(
        "DW3069", Severity.Warning, "Dose missing",
        "A planned dose has no row in the run log, or the log says that nothing was delivered.",
        "The voxel gets water from its neighbours only. Whether the unit can bear it is judged on the solid as run.",
        "Check the needle before the next print.");

    /// <summary>Dose too small.</summary>
    public static FindingKind DoseShort { get; } = new(
        "DW3070", Severity.Warning, "Dose too small",
        "A dose was smaller than planned by more than its allowance: one pump step and four standard deviations of its needle's repeatability (2 % where none is known), so that a sound print of ten thousand doses raises less than one.",
        "Less sets there than planned. Whether the unit can bear it is judged on the solid as run.",
        "Check the needle before the next print.",
        Source: "common practice, no source");

    /// <summary>Dose too large.</summary>
    public static FindingKind DoseLarge { get; } = new(
        "DW3071", Severity.Warning, "Dose too large",
        "A dose was larger than planned by more than its allowance: one pump step and four standard deviations of its needle's repeatability (2 % where none is known).",
        "More sets there than planned, and a wetter mix is weaker. Whether the unit can bear it is judged on the solid as run.",
        "Check the needle and its valve for dripping before the next print.",
        Source: "common practice, no source");

    /// <summary>Dose given twice.</summary>
    public static FindingKind DoseTwice { get; } = new(
        "DW3072", Severity.Warning, "Dose given twice",
        "A position stands in the run log more than once, and all of it together is more than planned. It is simulated as one dose at its first time.",
        "The place got about twice the water. Whether the unit can bear it is judged on the solid as run.",
        "See whether the machine repeated the dose or only its line in the log.");

    /// <summary>Dose where none was planned.</summary>
    public static FindingKind DoseUnplanned { get; } = new(
        "DW3073", Severity.Warning, "Dose where none was planned",
        "The run log names water at a position that has no dose in the job's tables.",
        "A lump may have set in an opening or beside the unit. Whether the unit can bear it is judged on the solid as run.",
        "Look there when the unit is dug out, and check the needle's valve.");

    /// <summary>Dose outside of what is predicted.</summary>
    public static FindingKind DoseBeyond { get; } = new(
        "DW3074", Severity.Error, "Dose outside of what is predicted",
        "The run log names water at a position so far from the unit that the prediction does not reach there.",
        "What set there is not known, and the machine watered what it was not told to. By this the unit is held.",
        "Check the job folder on the machine, and probe the bin there.");

    /// <summary>Stations or layers out of order.</summary>
    public static FindingKind OutOfOrder { get; } = new(
        "DW3075", Severity.Error, "Stations or layers out of order",
        "A station was watered after one that comes later in the sequence.",
        "A layer that is watered late lies under loose mix that was spread meanwhile, or the machine lost its place. By this the unit is held.",
        "Find out what the machine did, and have the solid as run judged.");

    /// <summary>Clock of the run log goes back.</summary>
    public static FindingKind ClockBack { get; } = new(
        "DW3076", Severity.Error, "Clock of the run log goes back",
        "A dose is logged as started before the one ahead of it in the log although its place in the sequence is later. The times of this log are not used.",
        "Pauses and cold joints cannot be seen then, and the solid as run is simulated with the times planned. By this the unit is held.",
        "Set the machine's clock by hand only between prints, and say from the night's notes whether it stood.");

    /// <summary>Machine stood.</summary>
    public static FindingKind Pause { get; } = new(
        "DW3077", Severity.Warning, "Machine stood",
        "Between two layers the machine stood more than two minutes longer than planned.",
        "The lower layer had more time to soak and less to join with the next. The pause is in the solid as run.",
        "Find out why, so that the next print runs through.",
        Source: "common practice, no source");

    /// <summary>Cold joint as run.</summary>
    public static FindingKind ColdJoint { get; } = new(
        "DW3078", Severity.Error, "Cold joint as run",
        "The machine stood so long that the water of a layer no longer moved when the next layer, or the rest of the same layer, got its first dose.",
        "The layers may not have bound, and the strength across the joint is not computed. By this the unit is held.",
        "Have it judged by licensed practice before the unit is lifted, or scrap it.",
        Source: "common practice, no source");

    /// <summary>Pump time does not fit the dose.</summary>
    public static FindingKind FlowOff { get; } = new(
        "DW3079", Severity.Warning, "Pump time does not fit the dose",
        "The flow of a needle, delivered over pump time as logged, lies more than a quarter off the flow it should have.",
        "A needle that takes long is clogging; one that is quick may measure what does not come out.",
        "Clean the needle and measure its flow.",
        Source: "common practice, no source");

    /// <summary>Machine logged a fault.</summary>
    public static FindingKind MachineFault { get; } = new(
        "DW3080", Severity.Warning, "Machine logged a fault",
        "The machine marked doses as faulty although their volume is as planned.",
        "The volume logged may be what was asked and not what came.",
        "Look up what the machine noticed; weigh the needle's dose.");

    /// <summary>Requirement lost in the run.</summary>
    public static FindingKind RequirementLost { get; } = new(
        "DW3081", Severity.Error, "Requirement lost in the run",
        "A requirement that the job met as planned is not met by the solid as run, or an error about the solid is found in it that the plan does not have. The verdict goes by these rules, in this order: a print that is not finished is held, since `dewstone resume` decides; a finished one with this finding, or with an error about its solid, is scrapped; one with any other error of the survey is held; else it is released.",
        "What stands in the bin is not what was designed.",
        "Scrap the unit, or have it judged; measure it when it is dug out.");

    /// <summary>Weight out of control.</summary>
    public static FindingKind OutOfControl { get; } = new(
        "DW3082", Severity.Warning, "Weight out of control",
        "On the individuals chart of the weights a rule is broken: a point beyond three standard deviations; two of three beyond two on the same side; four of five beyond one on the same side; or eight in a row on one side of the mean. The standard deviation is the mean moving range of two over 1.128. A moving range above 3.267 times its mean counts likewise.",
        "Something changed between these units: mix, bed, needles or scale. Until it is found, the next units are not like the last.",
        "Look at what changed on that day: delivery of mix, moisture of the sand, needles, scale.",
        Source: "ISO 7870-2, Shewhart charts (from memory); rules of the Western Electric handbook as listed in NIST/SEMATECH e-Handbook, section 6.3.2");

    /// <summary>Weights off the prediction.</summary>
    public static FindingKind WeightOff { get; } = new(
        "DW3083", Severity.Warning, "Weights off the prediction",
        "The mean weight differs from the mass predicted by more than its own 95 % interval and by more than 1 %.",
        "The mix is denser or looser than the job assumes, or the needles give more or less than they are asked.",
        "Measure the loose density first, then the needles that the message names the figures for.",
        Source: "Student's t interval of a mean; the 1 % is common practice, no source");

    /// <summary>Weights drift.</summary>
    public static FindingKind WeightDrifts { get; } = new(
        "DW3084", Severity.Warning, "Weights drift",
        "A straight line through the weights in their order rises or falls by more than its 95 % interval, and by 1 % of the mean at least.",
        "Tubes that tire, mix that is reused, or sand that dries out shift the units a little every night.",
        "Measure needles and loose density before the limits are crossed.",
        Source: "ordinary least squares, Student's t; the 1 % is common practice, no source");

    /// <summary>Opening narrower than predicted.</summary>
    public static FindingKind OpeningNarrow { get; } = new(
        "DW3085", Severity.Error, "Opening narrower than predicted",
        "The largest gauge ball that went through an opening is smaller than predicted by more than the tolerance: 5 mm or one cell of the job, whichever is more. Where the unit requires a clear opening, falling below that counts even within the tolerance.",
        "Animals, divers' tools or the flow the opening was made for may not get through.",
        "Brush the opening out and gauge it again; then look for doses too large beside it.",
        Source: "common practice, no source");

    /// <summary>Wall thinner than predicted.</summary>
    public static FindingKind WallThin { get; } = new(
        "DW3086", Severity.Error, "Wall thinner than predicted",
        "A wall measured with the caliper is thinner than the least neck predicted, or than the wall required, by more than the tolerance: 5 mm or one cell of the job, whichever is more.",
        "The wall may break when the unit is lifted or in the first storm.",
        "Measure again at sound places; look for short doses there, and have the unit judged.",
        Source: "common practice, no source");

    /// <summary>Scan deviates from the prediction.</summary>
    public static FindingKind ScanDeviates { get; } = new(
        "DW3087", Severity.Warning, "Scan deviates from the prediction",
        "Where scan and prediction lie on each other, a place differs by more than 20 mm over at least 20 points, or 5 % of all points do by more than 15 mm.",
        "The unit is not what was predicted there, or loose mix still sticks to it.",
        "Look at the place and at the picture of the deviation; brush the unit and scan again before anything is concluded.",
        Source: "common practice, no source");

    /// <summary>Scan does not lie on the prediction.</summary>
    public static FindingKind ScanDoubtful { get; } = new(
        "DW3088", Severity.Error, "Scan does not lie on the prediction",
        "The scan could not be laid on the predicted surface: the typical distance of its points stayed above 15 mm, or their share that lies near it below a half.",
        "Deviations of a scan that lies wrongly mean nothing.",
        "Check that it is of this unit and in millimetres, cut away the ground and fork lift, or turn it nearly upright before it is given.",
        Source: "common practice, no source");

    /// <summary>Change of a figure that would explain the deviation.</summary>
    public static FindingKind Suggestion { get; } = new(
        "DW3089", Severity.Note, "Change of a figure that would explain the deviation",
        "The solid was predicted again with the hardening threshold or the diffusivity changed, one at a time. The best of them fits the scan better by the figures given. Nothing was changed.",
        "If it comes again with the next units, the mix is not what its file says.",
        "Do not change the mix on one scan; run the tests of `dewstone calibrate mix`.");

    /// <summary>All of them, by code.</summary>
    public static IReadOnlyList<FindingKind> All { get; } =
    [
        Unfinished, RunTwice, StationsSwapped, OtherLayer, StationSkipped, NeedleStuck, BoardStuck, NeedleDrifts, BoardDrifts, DoseMissing, DoseShort,
        DoseLarge, DoseTwice, DoseUnplanned, DoseBeyond, OutOfOrder, ClockBack, Pause, ColdJoint, FlowOff, MachineFault,
        RequirementLost, OutOfControl, WeightOff, WeightDrifts, OpeningNarrow, WallThin, ScanDeviates, ScanDoubtful, Suggestion,
    ];
}
