using System.Text.Json;

namespace Dewstone.Jobs.Emission.Json;

/// <summary>One thing that is different tonight.</summary>
/// <param name="What">Its key.</param>
/// <param name="Unit">Unit of the numbers; empty for a text.</param>
/// <param name="Text">The text; null when it is a number.</param>
/// <param name="Value">The number; null when it is a text.</param>
/// <param name="Usual">What is taken without a measurement; null when there is nothing.</param>
internal sealed record NightCondition(string What, string Unit, string? Text, double? Value, double? Usual)
{
    /// <summary>Writes its members into the object that is open.</summary>
    public void Write(Utf8JsonWriter json)
    {
        json.WriteString("what", What);
        json.WriteString("unit", Unit);
        if (Text is not null)
        {
            json.WriteString("value", Text);
        }
        else
        {
            json.Number("value", Value);
        }

        json.Number("usual", Usual);
    }
}
