using System.Text.Json;
using Dewstone.Model.Diagnostics;
using Dewstone.Reading.Yaml;

namespace Dewstone.Reading.Binding;

/// <summary>
/// What a value may look like. One form reads the value, describes it in messages, writes its JSON Schema and gives an example, so that
/// the four cannot drift apart.
/// </summary>
internal abstract class Form
{
    /// <summary>What is due, with its article: <c>a length from 1 mm to 20 m</c>.</summary>
    public abstract string InWords { get; }

    /// <summary>A good value as YAML in one line.</summary>
    public abstract string Example { get; }

    /// <summary>Binds a value without knowing its type.</summary>
    /// <param name="spot">Value.</param>
    /// <param name="value">What it means.</param>
    /// <returns>False when it is at fault, with a finding.</returns>
    public abstract bool TryBindObject(Spot spot, out object? value);

    /// <summary>Writes the members of the JSON Schema of the value; the object is opened and closed by the caller.</summary>
    /// <param name="json">Writer.</param>
    public abstract void WriteSchema(Utf8JsonWriter json);

    /// <summary>The forms of the values inside this one, for tests and documents.</summary>
    public virtual IEnumerable<Form> Inner => [];

    /// <summary>Says that another sort of value stands there than is due.</summary>
    /// <param name="spot">Value.</param>
    protected void ReportWrongType(Spot spot)
    {
        if (spot.Node is YamlScalar { IsNothing: true })
        {
            spot.Report(DescriptionFindings.MissingKey, $"nothing stands here; {InWords} is due",
                $"write it as `{Example}`, or delete the key");
        }
        else
        {
            spot.Report(DescriptionFindings.WrongType, $"{spot.Node.InWords} stands here; {InWords} is due", $"write it as `{Example}`");
        }
    }
}
