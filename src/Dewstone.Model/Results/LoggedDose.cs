namespace Dewstone.Model.Results;

/// <summary>One row of a machine's full run log: what a needle gave at one place, and when.</summary>
/// <param name="Layer">Layer, from 1.</param>
/// <param name="Station">Station, from 1.</param>
/// <param name="Column">Column of the needle in the head, from 1.</param>
/// <param name="Row">Row of the needle in the head, from 1.</param>
/// <param name="CentiMillilitres">Volume, hundredths of a millilitre, rounded half away from zero.</param>
/// <param name="PumpSeconds">How long the pump ran, s; null when not logged.</param>
/// <param name="State">What the machine says of it.</param>
/// <param name="StartedSeconds">When the pump started, s on the machine's clock, whose zero is anywhere; null when not logged.</param>
/// <param name="Line">Line of the log.</param>
public readonly record struct LoggedDose(
    int Layer, int Station, int Column, int Row, int CentiMillilitres, double? PumpSeconds, RunState State, double? StartedSeconds, int Line);
