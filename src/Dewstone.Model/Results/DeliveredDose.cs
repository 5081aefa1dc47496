namespace Dewstone.Model.Results;

/// <summary>What one needle really delivered at one place, as a machine's run log says.</summary>
/// <param name="Layer">Layer, from 1.</param>
/// <param name="Station">Station, from 1.</param>
/// <param name="Column">Column of the needle in the head, from 1.</param>
/// <param name="Row">Row of the needle in the head, from 1.</param>
/// <param name="CentiMillilitres">Volume, hundredths of a millilitre, rounded half away from zero.</param>
/// <param name="Line">Line of the log.</param>
public readonly record struct DeliveredDose(int Layer, int Station, int Column, int Row, int CentiMillilitres, int Line);
