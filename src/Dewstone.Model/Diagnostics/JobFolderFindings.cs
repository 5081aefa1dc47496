namespace Dewstone.Model.Diagnostics;

/// <summary>Findings DW81xx: job folders.</summary>
public static class JobFolderFindings
{
    /// <summary>The output cannot be created.</summary>
    public static readonly FindingKind CannotCreate = new(
        "DW8101", Severity.Error, "Job folder cannot be created",
        "The folder named with -o cannot be made or written to: no permission, a read-only disk, or a path of which a part is a file.",
        "Nothing was written, and an older job of that name still stands as it was.",
        "Name another folder with -o, or have the permission of this one changed.",
        Example: "dewstone compile wrack-block.unit.yaml -o notes.txt");

    /// <summary>Something that is none of our job folders has the name.</summary>
    public static readonly FindingKind NotAJobFolder = new(
        "DW8102", Severity.Error, "Something else has the job's name",
        "Where the job folder would stand there is a file, a link, or a folder whose manifest.json does not name it a job folder.",
        "A job folder is replaced as a whole. What was not written by this program is never removed.",
        "Move it away, or name another folder with -o.");

    /// <summary>The disk is full.</summary>
    public static readonly FindingKind DiskFull = new(
        "DW8103", Severity.Error, "No room for the job folder",
        "The disk, or your share of it, ran full while the job folder was written.",
        "A job with missing dose tables would print a unit with missing layers, so it was taken back as a whole. An older job of that name still stands.",
        "Free some space and run the same command again.");

    /// <summary>The store failed in some other way.</summary>
    public static readonly FindingKind StoreFault = new(
        "DW8104", Severity.Error, "Job folder was not written",
        "The disk or the network store failed while the job folder was written.",
        "Nothing half-written was left, and an older job of that name still stands.",
        "Run the same command again; if it fails again, name a folder on another disk.");

    /// <summary>An older printable job was put aside because the new one is held.</summary>
    public static readonly FindingKind Superseded = new(
        "DW8105", Severity.Warning, "Older job put aside",
        "The new job is held back from printing, and an older printable job of the same name stood beside it. It is now named NAME.superseded.job.",
        "The older job was made from an older description. Left under its name it would be printed by mistake.",
        "Mend what holds the new job and compile again, or print the older one knowingly under its new name.");

    /// <summary>An interrupted replacement was undone.</summary>
    public static readonly FindingKind PutBack = new(
        "DW8106", Severity.Note, "Older job put back",
        "An earlier run was stopped while it replaced a job folder. The older job had been renamed to a hidden name and was put back.",
        "No job is lost when the program is stopped.",
        "Nothing to do.");

    /// <summary>A leftover could not be removed.</summary>
    public static readonly FindingKind Leftover = new(
        "DW8107", Severity.Warning, "Leftover not removed",
        "The new job folder stands complete, but a hidden folder beside it, the older job or an interrupted attempt, could not be removed.",
        "It takes room on the disk and is never read.",
        "Remove the named folder by hand.");

    /// <summary>A held job of the same name was removed.</summary>
    public static readonly FindingKind HeldRemoved = new(
        "DW8108", Severity.Note, "Held job removed",
        "The job can now be printed, so the held job that an earlier run left under the same name was removed.",
        "Its pictures and report show a unit that is no longer described.",
        "Nothing to do.");

    /// <summary>No job folder that could be printed.</summary>
    public static readonly FindingKind NoSuchJob = new(
        "DW8109", Severity.Error, "No such job",
        "A job folder is named that does not exist, is no job folder, or was held back and so has no dose tables.",
        "Its doses were to be read.",
        "Name a folder NAME.job that `dewstone compile` wrote.",
        Example: "dewstone compile wrack-block.unit.yaml --like out/wrack-blok.job -o new");

    /// <summary>A job folder that is not as it was written.</summary>
    public static readonly FindingKind Damaged = new(
        "DW8110", Severity.Error, "Job folder is damaged",
        "A file of the job folder is missing, cannot be read, or is not the one the job was compiled with: its hash differs from that in job.json.",
        "A dose table that was changed by hand or by a fault of the disk is no longer what was simulated.",
        "Compile the job again, or fetch an untouched copy.");

    /// <summary>An earlier job on another grid.</summary>
    public static readonly FindingKind OtherGrid = new(
        "DW8111", Severity.Error, "Earlier job is on another grid",
        "The job named with --like was made for needles at other places: another pitch, layer height, tip depth or origin.",
        "Its doses cannot be kept where there are no needles.",
        "Leave --like out, or name the printer the earlier job was made for.");

    /// <summary>All of them, by code.</summary>
    public static IReadOnlyList<FindingKind> All =>
        [CannotCreate, NotAJobFolder, DiskFull, StoreFault, Superseded, PutBack, Leftover, HeldRemoved, NoSuchJob, Damaged, OtherGrid];
}
