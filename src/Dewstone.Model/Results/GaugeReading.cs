namespace Dewstone.Model.Results;

/// <summary>One reading of a gauge ball or a caliper.</summary>
/// <param name="Name">Tunnel or cavity of the unit; empty for the least wall anywhere.</param>
/// <param name="Kind">What was gauged.</param>
/// <param name="Metres">Reading, m.</param>
/// <param name="Line">Line of the file.</param>
public readonly record struct GaugeReading(string Name, GaugeKind Kind, double Metres, int Line);
