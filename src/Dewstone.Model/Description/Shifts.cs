namespace Dewstone.Model.Description;

/// <summary>When the printers are attended.</summary>
/// <param name="Days">Days of the week on which a shift begins.</param>
/// <param name="From">Begin.</param>
/// <param name="To">End; on the next day when not after the begin.</param>
public sealed record Shifts(IReadOnlyList<DayOfWeek> Days, TimeOnly From, TimeOnly To);
