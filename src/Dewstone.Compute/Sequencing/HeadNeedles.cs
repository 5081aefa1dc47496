using Dewstone.Model.Description;

namespace Dewstone.Compute.Sequencing;

/// <summary>The needles of a head with their calibration; those the table does not name are sound and give what they are asked for.</summary>
public sealed class HeadNeedles
{
    private readonly NeedleState?[] states;
    private readonly double commonFlow;

    private HeadNeedles(Head head, double commonFlow)
    {
        Columns = head.Columns;
        Rows = head.Rows;
        this.commonFlow = commonFlow;
        states = new NeedleState?[head.Columns * head.Rows];
    }

    /// <summary>Needles along x.</summary>
    public int Columns { get; }

    /// <summary>Needles along y.</summary>
    public int Rows { get; }

    /// <summary>The needles of a printer. Rows of the table off the head are passed over; of two rows for one needle the first holds.</summary>
    /// <param name="printer">The printer.</param>
    /// <param name="table">The calibration; null for none.</param>
    /// <returns>Its needles.</returns>
    public static HeadNeedles Of(Printer printer, NeedleTable? table)
    {
        ArgumentNullException.ThrowIfNull(printer);
        var needles = new HeadNeedles(printer.Head, printer.Needle.Flow.MillilitresPerSecond);
        foreach (NeedleState state in table?.Needles ?? [])
        {
            if (needles.Holds(state.Column, state.Row))
            {
                needles.states[needles.Slot(state.Column, state.Row)] ??= state;
            }
        }

        return needles;
    }

    /// <summary>Whether the head has such a needle.</summary>
    /// <param name="column">Column, from 1.</param>
    /// <param name="row">Row, from 1.</param>
    /// <returns>True when it has.</returns>
    public bool Holds(int column, int row) => column >= 1 && column <= Columns && row >= 1 && row <= Rows;

    /// <summary>A needle's calibration.</summary>
    /// <param name="column">Column, from 1.</param>
    /// <param name="row">Row, from 1.</param>
    /// <returns>Its row of the table; null when the table does not name it.</returns>
    public NeedleState? State(int column, int row) => states[Slot(column, row)];

    /// <summary>Whether a needle gives no water.</summary>
    /// <param name="column">Column, from 1.</param>
    /// <param name="row">Row, from 1.</param>
    /// <returns>True when blocked.</returns>
    public bool IsBlocked(int column, int row) => State(column, row)?.Condition == NeedleCondition.Blocked;

    /// <summary>Flow of a needle while it doses, mL/s.</summary>
    /// <param name="column">Column, from 1.</param>
    /// <param name="row">Row, from 1.</param>
    /// <returns>Its own flow where the table gives one, else the printer's.</returns>
    public double FlowMillilitresPerSecond(int column, int row) => State(column, row)?.Flow?.MillilitresPerSecond ?? commonFlow;

    private int Slot(int column, int row) => (row - 1) * Columns + column - 1;
}
