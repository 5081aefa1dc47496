using Dewstone.Jobs.Emission;
using Dewstone.Jobs.Emission.Tables;

namespace Dewstone.Orders.SitePlans;

/// <summary>Writes <c>loads.csv</c>: what the barge carries, trip by trip.</summary>
public static class LoadTable
{
    /// <summary>Path in the order's folder.</summary>
    public const string Path = "loads.csv";

    /// <summary>The list.</summary>
    /// <param name="loads">The trips.</param>
    /// <param name="standing">Where the units stand; empty without a site plan.</param>
    /// <returns>The file.</returns>
    public static EmittedFile Emit(BargeLoads loads, IReadOnlyList<StandingUnit> standing)
    {
        ArgumentNullException.ThrowIfNull(loads);
        ArgumentNullException.ThrowIfNull(standing);
        Dictionary<string, StandingUnit> places = standing.ToDictionary(at => at.Unit.Mark, StringComparer.Ordinal);
        CsvText table = new("trip,deck_place,level,mark,unit,lift_kg,submerged_kg,lifting,heading_deg,row,place");
        foreach (BargeTrip trip in loads.Trips)
        {
            foreach (DeckedUnit on in trip.Units)
            {
                table.Whole(trip.Number).Whole(on.DeckPlace).Whole(on.Level).Text(on.Unit.Mark).Text(on.Unit.Name)
                    .Figure(on.Unit.LiftKilograms).Figure(on.Unit.SubmergedKilograms).Text(LiftingWords.Of(on.Unit.Lifting));
                if (places.TryGetValue(on.Unit.Mark, out StandingUnit? at))
                {
                    table.Figure(at.HeadingDegrees).Whole(at.Row).Whole(at.Place);
                }
                else
                {
                    table.Empty().Empty().Empty();
                }

                table.EndRow();
            }
        }

        return new EmittedFile(Path, table.ToBytes());
    }
}
