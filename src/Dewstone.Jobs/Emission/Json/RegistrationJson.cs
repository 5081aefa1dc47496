using System.Text.Json;
using Dewstone.Model.Description;
using Dewstone.Model.Quantities;
using Dewstone.Model.Results;

namespace Dewstone.Jobs.Emission.Json;

/// <summary>Why a unit stands where it stands on the needle grid.</summary>
public static class RegistrationJson
{
    private static readonly (RegistrationReasons Reason, string Word)[] Words =
    [
        (RegistrationReasons.TurnedToFit, "turned to fit"),
        (RegistrationReasons.AvoidsNeedles, "avoids blocked needles"),
        (RegistrationReasons.ShiftMatchesBetter, "shift matches better"),
        (RegistrationReasons.ShiftedLayersMatchBetter, "shifted layers match better"),
    ];

    /// <summary>Writes the members into the object that is open.</summary>
    /// <param name="json">Where to.</param>
    /// <param name="registration">The registration.</param>
    public static void Write(Utf8JsonWriter json, Registration registration)
    {
        ArgumentNullException.ThrowIfNull(json);
        ArgumentNullException.ThrowIfNull(registration);
        json.WriteBoolean("fixed", registration.Fixed);
        Write(json, registration.Wish);
        json.Strings("reasons", Reasons(registration));
        json.Figure("blocked_l", registration.Blocked?.Litres);
        json.Figure("blocked_centred_l", registration.BlockedCentred?.Litres);
        json.WriteNumber("solves", registration.Solves);
        json.Objects("trials", registration.Trials, trial =>
        {
            Write(json, trial.Wish);
            json.Figure("misfit_l", trial.ObjectiveLitres);
            json.WriteNumber("solves", trial.Solves);
            json.WriteNumber("layers", trial.Layers);
        });
    }

    /// <summary>The reasons in words; none for a unit in the middle.</summary>
    /// <param name="registration">The registration.</param>
    /// <returns>Phrases, in a fixed order.</returns>
    public static IReadOnlyList<string> Reasons(Registration registration)
    {
        ArgumentNullException.ThrowIfNull(registration);
        return [.. Words.Where(w => registration.Reasons.HasFlag(w.Reason)).Select(w => w.Word)];
    }

    private static void Write(Utf8JsonWriter json, PlacementWish wish)
    {
        Point3 shift = wish.Shift ?? default;
        json.WriteNumber("quarter_turns", wish.QuarterTurns ?? 0);
        json.Point("shift_m", shift);
        json.WriteBoolean("shifted_layers", wish.ShiftedLayers ?? false);
    }
}
