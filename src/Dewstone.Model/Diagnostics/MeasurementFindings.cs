namespace Dewstone.Model.Diagnostics;

/// <summary>Findings DW832x and DW833x: tables of measurements that the calibrations read and write.</summary>
public static class MeasurementFindings
{
    /// <summary>First line of a table of measurements.</summary>
    public static FindingKind Header { get; } = new(
        "DW8320", Severity.Error, "First line of a table of measurements",
        "The first line does not name the columns of any table of measurements, or names one that is not known. Every name carries its unit.",
        "A column of grams read as one of millilitres would spoil every figure fitted from it, and a figure without its unit may be either.",
        "Needles: column,row,asked_ml,weighed_g,water_temperature_c,air_pressure_hpa and, if wanted, board,channel,run. Mix: specimen,time_s,uptake_g,area_cm2 or "
            + "dose_ml,diameter_x_mm,diameter_y_mm,diameter_z_mm,wet_mass_g,dry_mass_g,bed_temperature_c or dose_ml,spacing_mm,length_mm,waist_mm,bed_temperature_c "
            + "or container_ml,mass_g. The order of the columns does not matter.",
        "column,row,asked,weighed_g,water_temperature_c,air_pressure_hpa");

    /// <summary>Row too short or too long.</summary>
    public static FindingKind RowLength { get; } = new(
        "DW8321", Severity.Error, "Row of measurements too short or too long",
        "A row has another number of cells than the first line.",
        "Its cells cannot be told apart with certainty; a decimal comma makes two cells of one number.",
        "Give each row as many cells as the first line, with decimal points and with commas between cells only.",
        "1,1,20,19,93,20.5,1013   (for 19.93)");

    /// <summary>Cell not readable.</summary>
    public static FindingKind Cell { get; } = new(
        "DW8322", Severity.Error, "Measurement not readable",
        "A cell does not hold a plain number, or one outside what its column can be.",
        "Figures are fitted from every row; one that is misread moves them all.",
        "Write the plain number, with a decimal point and without its unit: the first line names it.",
        "1,1,20 mL,19.93,20.5,1013");

    /// <summary>Cell empty.</summary>
    public static FindingKind Empty { get; } = new(
        "DW8323", Severity.Error, "Measurement missing",
        "A cell of a row is empty.",
        "A row with a gap is no measurement, and guessing the gap would make one up.",
        "Fill the cell in from the yard's sheet, or take the row out.",
        "1,1,20,,20.5,1013");

    /// <summary>Table without rows.</summary>
    public static FindingKind NoRows { get; } = new(
        "DW8324", Severity.Error, "No measurements",
        "The table has a first line but no rows below it.",
        "There is nothing to fit.",
        "Name the file that holds the readings.",
        "column,row,asked_ml,weighed_g,water_temperature_c,air_pressure_hpa");

    /// <summary>Row that contradicts itself.</summary>
    public static FindingKind Contradiction { get; } = new(
        "DW8325", Severity.Error, "Measurement contradicts itself",
        "The figures of a row cannot all be right: a ball dry heavier than wet, a pair shorter than its spacing or with a waist wider than long, diameters "
            + "of one ball that differ by more than half, loose mix denser than its grains, or correlations that no figures can have together.",
        "One of the figures was misread or stands in the wrong column.",
        "Check the row against the yard's sheet.",
        "20,62,61,60,190,233,20   (wet and dry mass exchanged)");

    /// <summary>Outlier.</summary>
    public static FindingKind Outlier { get; } = new(
        "DW8326", Severity.Warning, "Outlier left out",
        "A weighing lies farther from the line of its needle than Grubbs' two-sided test allows at a level of 1 % a needle. It was left out of the fit.",
        "A drop on the rim or a slip of the pen must not decide the doses; a true fault of the needle may. On the residuals of a line the test is approximate, "
            + "and of a hundred good needles about one is named by chance.",
        "Weigh this needle again. If the new readings agree with the outlier, the needle is not repeatable and should be cleaned.",
        "",
        "Grubbs 1969, Technometrics 11:1; on residuals: common practice, no source");

    /// <summary>The output is an input.</summary>
    public static FindingKind WouldOverwrite { get; } = new(
        "DW8327", Severity.Error, "Output would overwrite an input",
        "The file named with -o is one of the files that are read.",
        "Measurements and the older figures are never changed; they are the only proof of where the new ones come from.",
        "Name a new file with -o.",
        "dewstone calibrate needles checks.csv -o checks.csv");

    /// <summary>Output not written.</summary>
    public static FindingKind NotWritten { get; } = new(
        "DW8328", Severity.Error, "Output was not written",
        "The file named with -o could not be made: no permission, a folder that does not exist, or a full disk.",
        "Nothing half-written was left, and an older file of that name still stands.",
        "Name a file you may write, in a folder that exists.",
        "dewstone calibrate needles checks.csv -o no/such/folder/needles.csv");

    /// <summary>All of them, by code.</summary>
    public static IReadOnlyList<FindingKind> All { get; } =
        [Header, RowLength, Cell, Empty, NoRows, Contradiction, Outlier, WouldOverwrite, NotWritten];
}
