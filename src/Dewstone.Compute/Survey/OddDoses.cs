using Dewstone.Model.Diagnostics;

namespace Dewstone.Compute.Survey;

/// <summary>Doses that are missing, too small, too large, given twice or not planned, as far as no greater fault has explained them; by needle.</summary>
internal static class OddDoses
{
    /// <summary>Findings of a kind told in full; the rest is counted.</summary>
    private const int Told = 20;

    private const int PlacesTold = 6;

    private static readonly FindingKind[] Kinds =
    [
        SurveyFindings.DoseMissing, SurveyFindings.DoseShort, SurveyFindings.DoseLarge, SurveyFindings.DoseTwice, SurveyFindings.DoseUnplanned, SurveyFindings.DoseBeyond,
    ];

    /// <summary>Checks.</summary>
    /// <param name="book">The log.</param>
    /// <returns>DW3069 to DW3074, one a needle and kind, the largest differences of a kind first.</returns>
    public static IReadOnlyList<Diagnostic> Check(RunLogBook book)
    {
        List<Diagnostic> found = [];
        ILookup<string, LoggedPosition> odd = book.All.Where(p => !p.IsExplained && KindOf(p) is not null).ToLookup(p => KindOf(p)!.Code);
        foreach (FindingKind kind in Kinds)
        {
            LoggedPosition[][] needles =
            [
                .. odd[kind.Code].GroupBy(p => p.Place.Needle).Select(n => n.ToArray())
                    .OrderByDescending(n => n.Sum(p => Math.Abs(p.Delivered - p.Planned))).ThenBy(n => n[0].Place.Needle),
            ];
            found.AddRange(needles.Take(Told).Select(needle => Tell(book, kind, needle)));
            if (needles.Length > Told)
            {
                found.Add(book.Find(
                    kind, needles[Told][0], FormattableString.Invariant($"{needles.Length - Told} more needles likewise, {needles[Told..].Sum(n => n.Length)} doses"), "see the run log"));
            }
        }

        return found;
    }

    private static FindingKind? KindOf(LoggedPosition p) => p switch
    {
        { Planned: 0, Delivered: 0 } => null,
        { Planned: 0, Index: < 0 } => SurveyFindings.DoseBeyond,
        { Planned: 0 } => SurveyFindings.DoseUnplanned,
        { Delivered: 0 } => SurveyFindings.DoseMissing,
        _ when p.Doses > 1 && p.Delivered > p.Planned + p.Allowance => SurveyFindings.DoseTwice,
        _ when p.Delivered < p.Planned - p.Allowance => SurveyFindings.DoseShort,
        _ when p.Delivered > p.Planned + p.Allowance => SurveyFindings.DoseLarge,
        _ => null,
    };

    private static Diagnostic Tell(RunLogBook book, FindingKind kind, LoggedPosition[] doses)
    {
        string places = string.Join("; ", doses.Take(PlacesTold).Select(p => doses.Length == 1 ? RunLogBook.Say(p.Place) : $"layer {p.Place.Layer}, station {p.Place.Station}"));
        string more = doses.Length > PlacesTold ? $" and {doses.Length - PlacesTold} more" : "";
        string who = doses.Length == 1 ? "" : $"needle {doses[0].Place.Column},{doses[0].Place.Row}, {doses.Length} doses: ";
        string volumes = FormattableString.Invariant($"{doses.Sum(p => p.Delivered) / 100.0:0.0#} mL delivered, {doses.Sum(p => p.Planned) / 100.0:0.0#} mL planned");
        return book.Find(kind, doses[0], $"{who}{places}{more}: {volumes}", "see whether the unit can bear it by the verdict, and check the needle");
    }
}
