namespace Dewstone.Orders.Scheduling;

/// <summary>When a bin is printed and dug out, minutes.</summary>
/// <param name="Printer">Printer, from 0.</param>
/// <param name="Start">Begin of setting up.</param>
/// <param name="PrintEnd">End of printing.</param>
/// <param name="DigStart">Begin of digging out.</param>
/// <param name="DigEnd">End of digging out.</param>
public readonly record struct TaskTimes(int Printer, int Start, int PrintEnd, int DigStart, int DigEnd);
