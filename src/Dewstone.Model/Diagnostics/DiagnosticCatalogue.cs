namespace Dewstone.Model.Diagnostics;

/// <summary>Every code there is, in order of code.</summary>
public static class DiagnosticCatalogue
{
    /// <summary>All kinds of finding.</summary>
    public static IReadOnlyList<FindingKind> All { get; } =
    [
        .. ProgramFindings.All,
        .. DescriptionFindings.All,
        .. NeedleFindings.All,
        .. ShapeFindings.All,
        .. WettingFindings.All,
        .. InspectionFindings.All,
        .. LimitFindings.All,
        .. JointFindings.All,
        .. CalibrationFindings.All,
        .. SurveyFindings.All,
        .. PrinterFindings.All,
        .. StrengthFindings.All,
        .. SeaFindings.All,
        .. HabitatFindings.All,
        .. OrderFindings.All,
        .. BinFindings.All,
        .. BatchFindings.All,
        .. YardFindings.All,
        .. FileFindings.All,
        .. JobFolderFindings.All,
        .. VerifyFindings.All,
        .. RunLogFindings.All,
        .. MeasurementFindings.All,
        .. SurveyFileFindings.All,
    ];

    /// <summary>The kind with a code, or null.</summary>
    /// <param name="code">Code such as <c>DW1001</c>, any case.</param>
    /// <returns>The entry, or null when there is none.</returns>
    public static FindingKind? Find(string code) => All.FirstOrDefault(k => string.Equals(k.Code, code, StringComparison.OrdinalIgnoreCase));
}
