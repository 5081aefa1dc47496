using System.Buffers;
using System.Diagnostics.CodeAnalysis;
using System.Text.Encodings.Web;
using System.Text.Json;
using Dewstone.Model.Quantities;

namespace Dewstone.Jobs.Emission.Json;

/// <summary>
/// JSON whose bytes depend on the values alone: keys in the order they are written, shortest numbers that read back the same, LF at the end.
/// </summary>
public static class CanonicalJson
{
    /// <summary>Bytes of a document without white space.</summary>
    /// <param name="body">Writes the members of the outermost object.</param>
    public static byte[] Compact(Action<Utf8JsonWriter> body) => Bytes(body, indented: false);

    /// <summary>Bytes of a document indented by two spaces, for people.</summary>
    /// <param name="body">Writes the members of the outermost object.</param>
    public static byte[] Indented(Action<Utf8JsonWriter> body) => Bytes(body, indented: true);

    /// <summary>Writes a nested object.</summary>
    [SuppressMessage("Naming", "CA1720:Identifier contains type name", Justification = "An object of JSON.")]
    public static void Object(this Utf8JsonWriter json, string name, Action body)
    {
        json.WriteStartObject(name);
        body();
        json.WriteEndObject();
    }

    /// <summary>Writes a nested object, or null when there is no value for it.</summary>
    public static void ObjectOrNull<T>(this Utf8JsonWriter json, string name, T? value, Action<T> body)
        where T : class
    {
        if (value is null)
        {
            json.WriteNull(name);
            return;
        }

        json.Object(name, () => body(value));
    }

    /// <summary>Writes an array of objects.</summary>
    public static void Objects<T>(this Utf8JsonWriter json, string name, IEnumerable<T> items, Action<T> body)
    {
        json.WriteStartArray(name);
        foreach (T item in items)
        {
            json.WriteStartObject();
            body(item);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    /// <summary>Writes an array of strings.</summary>
    public static void Strings(this Utf8JsonWriter json, string name, IEnumerable<string> items)
    {
        json.WriteStartArray(name);
        foreach (string item in items)
        {
            json.WriteStringValue(item);
        }

        json.WriteEndArray();
    }

    /// <summary>Writes a number as it is; null for none.</summary>
    public static void Number(this Utf8JsonWriter json, string name, double? value)
    {
        if (value is null)
        {
            json.WriteNull(name);
            return;
        }

        json.WriteNumber(name, Plain(value.Value));
    }

    /// <summary>Writes numbers as they are.</summary>
    public static void Numbers(this Utf8JsonWriter json, string name, params ReadOnlySpan<double> values)
    {
        json.WriteStartArray(name);
        foreach (double value in values)
        {
            json.WriteNumberValue(Plain(value));
        }

        json.WriteEndArray();
    }

    /// <summary>Writes a point or vector, metres.</summary>
    public static void Point(this Utf8JsonWriter json, string name, Point3 point) => json.Numbers(name, point.X, point.Y, point.Z);

    /// <summary>Writes a box, metres.</summary>
    public static void Size(this Utf8JsonWriter json, string name, Size3 size) => json.Numbers(name, size.X, size.Y, size.Z);

    /// <summary>
    /// Writes a figure rounded to six significant digits, null for none: figures may come from library functions whose last bits
    /// change with the processor.
    /// </summary>
    public static void Figure(this Utf8JsonWriter json, string name, double? value) =>
        json.Number(name, value is null ? null : SignificantFigures.Six(value.Value));

    private static byte[] Bytes(Action<Utf8JsonWriter> body, bool indented)
    {
        ArrayBufferWriter<byte> buffer = new();
        JsonWriterOptions options = new()
        {
            Indented = indented,
            NewLine = "\n",
            Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
        };
        using (Utf8JsonWriter json = new(buffer, options))
        {
            json.WriteStartObject();
            body(json);
            json.WriteEndObject();
        }

        buffer.Write("\n"u8);
        return buffer.WrittenSpan.ToArray();
    }

    /// <summary>Minus zero is written as zero; what is not a number is refused.</summary>
    private static double Plain(double value) =>
        double.IsFinite(value) ? value + 0.0 : throw new ArgumentOutOfRangeException(nameof(value), value, "A file holds finite numbers only.");
}
