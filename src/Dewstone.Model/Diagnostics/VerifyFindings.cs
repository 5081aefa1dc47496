namespace Dewstone.Model.Diagnostics;

/// <summary>Findings DW82xx: a job folder that does not verify.</summary>
public static class VerifyFindings
{
    private const string Compile = "Compile the unit again, or fetch an untouched copy of the job.";

    /// <summary>A file the manifest lists is not there.</summary>
    public static FindingKind FileMissing { get; } = new(
        "DW8201", Severity.Error, "File of the job is missing",
        "The manifest lists a file that is not in the job folder.",
        "A job without one of its dose tables prints a unit without that layer.",
        Compile);

    /// <summary>A file differs from its hash.</summary>
    public static FindingKind FileChanged { get; } = new(
        "DW8202", Severity.Error, "File of the job was changed",
        "A file's SHA-256 (FIPS 180-4) is not the one the manifest or job.json holds.",
        "What would be printed or read is not what was compiled and approved.",
        Compile);

    /// <summary>A file nobody listed.</summary>
    public static FindingKind FileUnlisted { get; } = new(
        "DW8203", Severity.Error, "File that is not of the job",
        "The job folder holds a file that its manifest does not list.",
        "A dose table that was added by hand would be printed with the others.",
        "Move the file out of the job folder.");

    /// <summary>A file that is not as its schema says.</summary>
    public static FindingKind NotBySchema { get; } = new(
        "DW8204", Severity.Error, "File is not by its schema",
        "A JSON file of the job does not fit the schema of its kind (JSON Schema 2020-12).",
        "Scripts that read it would read nonsense.",
        Compile);

    /// <summary>A fingerprint that is not of its file.</summary>
    public static FindingKind FingerprintDiffers { get; } = new(
        "DW8205", Severity.Error, "Fingerprint is not of this job",
        "The fingerprint in the manifest is not the one that job.json, or the design in it, gives.",
        "The sheet in the yard would name another job than the one that is printed.",
        Compile);

    /// <summary>Tables and totals disagree.</summary>
    public static FindingKind TotalsDiffer { get; } = new(
        "DW8206", Severity.Error, "Totals are not those of the tables",
        "Simulated again from the tables alone, the job gives another figure than the manifest claims.",
        "Water, mix, time or the solid itself would not be what was approved.",
        Compile);

    /// <summary>The core does not follow from its own description and tables.</summary>
    public static FindingKind CoreDiffers { get; } = new(
        "DW8207", Severity.Error, "Core is not that of its description and tables",
        "job.json, made again from its own description and the dose tables, comes out different: placement, timeline or model constants were changed.",
        "The job claims to be simulated with other constants or times than its description gives.",
        Compile);

    /// <summary>The sequence is not that of the tables.</summary>
    public static FindingKind SequenceDiffers { get; } = new(
        "DW8208", Severity.Error, "Sequence is not that of the tables",
        "The machine's steps, made again from the dose tables, are not those of sequence.csv.",
        "The printer would wait, move or flush otherwise than was simulated.",
        Compile);

    /// <summary>The solid is not that of the tables.</summary>
    public static FindingKind SolidDiffers { get; } = new(
        "DW8209", Severity.Error, "Predicted solid is not that of the tables",
        "Simulated again from the dose tables alone, other cells harden, or hold other water, than predicted.vti says.",
        "Pictures, checks and approval are of another solid than the one the tables print.",
        Compile);

    /// <summary>A held job.</summary>
    public static FindingKind Held { get; } = new(
        "DW8210", Severity.Error, "Job is held back from printing",
        "The job has an unreleased error about its predicted solid, and holds no dose tables.",
        "There is nothing to print, and nothing to verify it by.",
        "Mend what its findings say and compile again, or release them.");

    /// <summary>A design that is not approved.</summary>
    public static FindingKind NotApproved { get; } = new(
        "DW8211", Severity.Error, "Design is not on the approver's list",
        "The job's design fingerprint, of the unit's description and requirements, is not on the list given with --approved.",
        "The job may be sound in itself and still be of another design.",
        "Have the design approved and its fingerprint put on the list, or print the approved one.");

    /// <summary>A design approved for another job only.</summary>
    public static FindingKind OtherJobApproved { get; } = new(
        "DW8212", Severity.Error, "Approved for another job only",
        "The design is on the approver's list together with the fingerprint of another job; these doses were not approved.",
        "Other doses give another solid.",
        "Print the approved job, have this one approved, or have the design listed alone to approve any night's doses.");

    /// <summary>An approved design with doses of the night.</summary>
    public static FindingKind ApprovedDesign { get; } = new(
        "DW8213", Severity.Note, "Approved design, tonight's doses",
        "The design is on the approver's list without a job; its doses were made for tonight's mix, needles and temperatures.",
        "What differs tonight is named, so that someone can judge it.",
        "Nothing to do if what is named was measured.");

    /// <summary>A list of approvals that cannot be read.</summary>
    public static FindingKind ListLine { get; } = new(
        "DW8214", Severity.Error, "Approver's list cannot be read",
        "A line of the approver's list is not a design fingerprint, optionally followed by a job fingerprint.",
        "A line that is misread might approve what was not meant.",
        "Write one design fingerprint a line, 12 letters and digits, optionally a space and a job fingerprint; # begins a remark.",
        "7Q2D-98XK-41TB  03FA-77MW-ZZ10   # spring order, block");

    /// <summary>All of them, by code.</summary>
    public static IReadOnlyList<FindingKind> All { get; } =
    [
        FileMissing, FileChanged, FileUnlisted, NotBySchema, FingerprintDiffers, TotalsDiffer, CoreDiffers, SequenceDiffers, SolidDiffers, Held, NotApproved,
        OtherJobApproved, ApprovedDesign, ListLine,
    ];
}
