using Dewstone.Jobs.Emission.Json;
using Dewstone.Model.Description;
using Dewstone.Model.Results;

namespace Dewstone.Jobs.Emission.Report;

/// <summary>Why the unit stands where it stands on the needle grid, and which places were tried.</summary>
internal static class RegistrationTable
{
    /// <summary>Writes a sentence, and a table where more than one place was tried.</summary>
    /// <param name="html">The page.</param>
    /// <param name="registration">The registration.</param>
    public static void Write(HtmlWriter html, Registration registration)
    {
        IReadOnlyList<string> reasons = RegistrationJson.Reasons(registration);
        string why = (registration.Fixed, reasons.Count) switch
        {
            (true, _) => "its place was fixed beforehand",
            (_, 0) => "in the middle, nothing being gained elsewhere",
            _ => string.Join(", ", reasons),
        };
        string blocked = registration.Blocked is { Needles: > 0 } solid
            ? $" {ReportFigures.Litres(solid.Litres / 1000.0)} of the wanted solid lie under {solid.Needles} blocked needles{Centred(registration)}."
            : "";
        html.Add($"<p>On the needle grid: {Place(registration.Wish)}; {why}.{blocked}</p>");
        if (registration.Trials.Count > 0)
        {
            ReportTable.Write(
                html, "Places tried on the needle grid", ["place", "#misfit with its price on water", "#computations", "#layers"],
                registration.Trials.Select(trial => (string[])
                [
                    Place(trial.Wish), ReportFigures.Litres(trial.ObjectiveLitres / 1000.0), $"{trial.Solves}", $"{trial.Layers}",
                ]));
        }
    }

    private static string Centred(Registration registration) =>
        registration.BlockedCentred is { } centred ? $", against {ReportFigures.Litres(centred.Litres / 1000.0)} in the middle" : "";

    private static string Place(PlacementWish wish)
    {
        string shift = wish.Shift is { } by ? $"moved by {ReportFigures.Place(by)}" : "not moved";
        return $"turned {90 * (wish.QuarterTurns ?? 0)}°, {shift}, layers {(wish.ShiftedLayers == true ? "shifted" : "straight")}";
    }
}
