using System.Text.Json;
using Dewstone.Model.Quantities;

namespace Dewstone.Reading.Job;

/// <summary>A value of a JSON document with its path, so that whatever is wrong with it can be named. Unknown members are ignored.</summary>
/// <param name="Element">The value.</param>
/// <param name="Path">Member names joined by dots, items in brackets from 0.</param>
internal readonly record struct JsonPlace(JsonElement Element, string Path)
{
    /// <summary>Whether a member is there and not null.</summary>
    public bool Has(string name) =>
        Kind(JsonValueKind.Object, "an object").TryGetProperty(name, out JsonElement member) && member.ValueKind != JsonValueKind.Null;

    /// <summary>A member, which must be there.</summary>
    public JsonPlace this[string name] =>
        Kind(JsonValueKind.Object, "an object").TryGetProperty(name, out JsonElement member)
            ? new JsonPlace(member, Path.Length == 0 ? name : $"{Path}.{name}")
            : throw new InvalidDataException($"{(Path.Length == 0 ? "the file" : Path)} has no {name}");

    /// <summary>A number; finite by the rules of JSON and of double precision.</summary>
    public double Number(string name) => this[name].AsNumber();

    /// <summary>A number, or null.</summary>
    public double? OptionalNumber(string name) => this[name].Element.ValueKind == JsonValueKind.Null ? null : Number(name);

    /// <summary>A whole number of 32 bits.</summary>
    public int Whole(string name) =>
        this[name] is var place && place.Element.ValueKind == JsonValueKind.Number && place.Element.TryGetInt32(out int value)
            ? value : throw place.Wrong("a whole number");

    /// <summary>A whole number of 64 bits.</summary>
    public long Long(string name) =>
        this[name] is var place && place.Element.ValueKind == JsonValueKind.Number && place.Element.TryGetInt64(out long value)
            ? value : throw place.Wrong("a whole number");

    /// <summary>A seed.</summary>
    public ulong Seed(string name) =>
        this[name] is var place && place.Element.ValueKind == JsonValueKind.Number && place.Element.TryGetUInt64(out ulong value)
            ? value : throw place.Wrong("a whole number from 0");

    /// <summary>True or false.</summary>
    public bool Flag(string name) => this[name] is var place && place.Element.ValueKind is JsonValueKind.True or JsonValueKind.False
        ? place.Element.GetBoolean() : throw place.Wrong("true or false");

    /// <summary>A text.</summary>
    public string Text(string name) => this[name].AsText();

    /// <summary>A text of any characters, such as the name of a file.</summary>
    public string AnyText(string name) => this[name].Kind(JsonValueKind.String, "a text").GetString()!;

    /// <summary>One of certain words.</summary>
    public T Word<T>(string name, params ReadOnlySpan<(string Word, T Value)> words)
    {
        JsonPlace place = this[name];
        string text = place.AsText();
        foreach ((string word, T value) in words)
        {
            if (word == text)
            {
                return value;
            }
        }

        throw place.Wrong("one of the words known here");
    }

    /// <summary>Items of an array.</summary>
    public IReadOnlyList<T> Items<T>(string name, Func<JsonPlace, T> read)
    {
        JsonPlace place = this[name];
        return [.. place.Kind(JsonValueKind.Array, "a list").EnumerateArray().Select((item, i) => read(new JsonPlace(item, $"{place.Path}[{i}]")))];
    }

    /// <summary>All members of an object, in their order.</summary>
    public IEnumerable<JsonProperty> Members() => Kind(JsonValueKind.Object, "an object").EnumerateObject();

    /// <summary>An object, or null.</summary>
    public T? Optional<T>(string name, Func<JsonPlace, T> read)
        where T : class => this[name] is var place && place.Element.ValueKind == JsonValueKind.Null ? null : read(place);

    /// <summary>A certain number of numbers.</summary>
    public double[] Numbers(string name, int count) => this[name].AsNumbers(count);

    /// <summary>A point, metres.</summary>
    public Point3 Point(string name) => this[name].AsPoint();

    /// <summary>A box, metres.</summary>
    public Size3 Size(string name) => Numbers(name, 3) is var size ? new Size3(size[0], size[1], size[2]) : default;

    /// <summary>A length given in metres.</summary>
    public Length Length(string name) => new(Number(name));

    /// <summary>A length given in metres, or null.</summary>
    public Length? OptionalLength(string name) => OptionalNumber(name) is { } metres ? new Length(metres) : null;

    /// <summary>This as a point, metres.</summary>
    public Point3 AsPoint() => AsNumbers(3) is var point ? new Point3(point[0], point[1], point[2]) : default;

    /// <summary>This as a text; nothing in it may move a terminal's cursor.</summary>
    public string AsText() => Kind(JsonValueKind.String, "a text").GetString()! is var text && text.Any(char.IsControl) ? throw Wrong("a text in one line") : text!;

    private double[] AsNumbers(int count)
    {
        string path = Path;
        double[] numbers = [.. Kind(JsonValueKind.Array, "a list").EnumerateArray().Select(item => new JsonPlace(item, path).AsNumber())];
        return numbers.Length == count ? numbers : throw Wrong($"{count} numbers");
    }

    private double AsNumber() => Kind(JsonValueKind.Number, "a number").TryGetDouble(out double value) && double.IsFinite(value) ? value : throw Wrong("a finite number");

    private JsonElement Kind(JsonValueKind kind, string what) => Element.ValueKind == kind ? Element : throw Wrong(what);

    private InvalidDataException Wrong(string wanted) => new($"{(Path.Length == 0 ? "the file" : Path)} is not {wanted}");
}
