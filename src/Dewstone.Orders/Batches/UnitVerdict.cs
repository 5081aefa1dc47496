using Dewstone.Model.Diagnostics;
using Dewstone.Orders.Listing;
using Dewstone.Reading;

namespace Dewstone.Orders.Batches;

/// <summary>What there is to say of a unit's draws, at its line of the order.</summary>
public static class UnitVerdict
{
    /// <summary>Says it.</summary>
    /// <param name="record">The unit's record.</param>
    /// <param name="reading">The order.</param>
    /// <returns>DW7033 when it failed, DW7034 when it was drawn again; null when its first draw passed.</returns>
    public static Diagnostic? Of(UnitRecord record, OrderReading reading)
    {
        ArgumentNullException.ThrowIfNull(record);
        ArgumentNullException.ThrowIfNull(reading);
        if (record is { State: UnitState.Solved, Draws.Count: 1 })
        {
            return null;
        }

        int line = OrderListing.Of(reading.Order!).First(unit => unit.Mark == record.Mark).Line;
        KeyPath key = new(DescriptionKind.Order, $"units[{line}]");
        IReadOnlyList<Diagnostic> errors = record.State == UnitState.Failed ? record.Draws[^1].Errors : record.Draws[0].Errors;
        string why = errors.Count == 0 ? "no reason kept" : $"{errors[0].Code}: {errors[0].Message}{(errors.Count > 1 ? $", and {errors.Count - 1} more" : "")}";
        return reading.Place(record.State == UnitState.Failed
            ? BatchFindings.UnitFailed.At(
                record.Draws.Count == 1 ? $"{record.Mark} cannot be made ({why})" : $"{record.Mark}: none of its {record.Draws.Count} draws can be made (the last: {why})",
                $"see {record.Mark}.json in units/, mend `{Path.GetFileName(record.File)}` or allow more draws", key)
            : BatchFindings.Redrawn.At($"{record.Mark} took draw {record.Draws.Count} (the first: {why})", "nothing to do", key));
    }
}
