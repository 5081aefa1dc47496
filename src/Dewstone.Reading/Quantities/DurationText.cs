using Dewstone.Model.Quantities;

namespace Dewstone.Reading.Quantities;

/// <summary>Reads a span of time as the description files write it: <c>25 min</c>, <c>0 s</c>.</summary>
public static class DurationText
{
    /// <summary>Reads it.</summary>
    /// <param name="text">Number and unit of measure.</param>
    /// <param name="duration">The span.</param>
    /// <param name="fault">What is wrong and what would do, one line; empty when it was read.</param>
    /// <returns>False when it is no span of time or is below 0.</returns>
    public static bool TryRead(string text, out Duration duration, out string fault)
    {
        ArgumentNullException.ThrowIfNull(text);
        TextFault? found = QuantityReader.Read(text, QuantityKinds.Time, out double seconds);
        duration = new Duration(seconds);
        fault = found is not null ? $"{found.Message}; {found.Remedy}" : seconds < 0.0 ? $"`{text}` is below 0 s" : "";
        return fault.Length == 0;
    }
}
