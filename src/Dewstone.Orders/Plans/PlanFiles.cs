using Dewstone.Jobs.Emission;
using Dewstone.Reading;

namespace Dewstone.Orders.Plans;

/// <summary>The files of a plan, in the order's folder.</summary>
public static class PlanFiles
{
    /// <summary>Makes them.</summary>
    /// <param name="reading">The order.</param>
    /// <param name="result">Its plan; there is one.</param>
    /// <returns><c>plan.json</c> last: when it stands, the others do.</returns>
    /// <exception cref="ArgumentException">There is no plan.</exception>
    public static IReadOnlyList<EmittedFile> Emit(OrderReading reading, PlanningResult result)
    {
        ArgumentNullException.ThrowIfNull(reading);
        ArgumentNullException.ThrowIfNull(result);
        OrderPlan plan = result.Plan ?? throw new ArgumentException("There is no plan.", nameof(result));
        return
        [
            PlanTable.Emit(reading, result),
            MaterialsTable.Emit(reading.Order!, result),
            PlanChart.Emit(reading, result),
            .. plan.Bins.Select(bin => BinDrawing.Emit(reading, result, bin)),
            CrewCalendar.Emit(plan),
            new EmittedFile(PlanJson.FileName, PlanJson.Write(plan, result.Figures)),
        ];
    }
}
