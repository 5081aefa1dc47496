using Dewstone.Jobs.Emission;
using Dewstone.Jobs.Emission.Tables;

namespace Dewstone.Orders.SitePlans;

/// <summary>Writes <c>deployment.csv</c>: where each unit is set down, row by row.</summary>
public static class DeploymentTable
{
    /// <summary>Path in the order's folder.</summary>
    public const string Path = "deployment.csv";

    /// <summary>The list.</summary>
    /// <param name="standing">Where the units stand.</param>
    /// <param name="loads">What carries them; null when the order names no transport.</param>
    /// <returns>The file.</returns>
    public static EmittedFile Emit(IReadOnlyList<StandingUnit> standing, BargeLoads? loads)
    {
        ArgumentNullException.ThrowIfNull(standing);
        Dictionary<string, (int Trip, DeckedUnit Unit)> carried =
            (loads?.Trips ?? []).SelectMany(trip => trip.Units.Select(unit => (trip.Number, unit))).ToDictionary(pair => pair.unit.Unit.Mark, StringComparer.Ordinal);
        CsvText table = new("mark,unit,row,place,latitude_deg,longitude_deg,east_m,north_m,heading_deg,lift_kg,submerged_kg,lifting,water_over_m,trip,deck_place");
        foreach (StandingUnit at in standing)
        {
            table.Text(at.Unit.Mark).Text(at.Unit.Name).Whole(at.Row).Whole(at.Place);
            Degrees(table, at.Position.LatitudeDegrees);
            Degrees(table, at.Position.LongitudeDegrees);
            Hundredths(table, at.Middle.EastMetres);
            Hundredths(table, at.Middle.NorthMetres);
            table.Figure(at.HeadingDegrees).Figure(at.Unit.LiftKilograms).Figure(at.Unit.SubmergedKilograms).Text(LiftingWords.Of(at.Unit.Lifting));
            if (SiteCheck.WaterOver(at) is { } over)
            {
                Hundredths(table, over);
            }
            else
            {
                table.Empty();
            }

            if (carried.TryGetValue(at.Unit.Mark, out (int Trip, DeckedUnit Unit) deck))
            {
                table.Whole(deck.Trip).Whole(deck.Unit.DeckPlace);
            }
            else
            {
                table.Empty().Empty();
            }

            table.EndRow();
        }

        return new EmittedFile(Path, table.ToBytes());
    }

    private static void Degrees(CsvText table, double degrees) => table.Text(degrees.ToString("0.00000000"));

    private static void Hundredths(CsvText table, double metres) => table.Fixed(CsvText.Rounded(metres * 100.0), 2);
}
