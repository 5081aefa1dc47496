using System.Text.Json;
using Dewstone.Jobs.Emission.Json;

namespace Dewstone.Jobs.Emission.Surfaces;

/// <summary>Writes the JSON of a binary glTF 2.0 with one mesh: what lies where in its binary part.</summary>
internal static class GlbText
{
    /// <summary>glTF's codes of types of numbers (glTF 2.0 specification, section 3.6.2.2, and 3.6.1.2 for what a view is for; from memory).</summary>
    public const int Byte = 5121, Short = 5123, Int = 5125, Float = 5126;

    private const int OfCorners = 34962, OfTriangles = 34963;

    /// <summary>The text.</summary>
    /// <param name="generator">Program and version.</param>
    /// <param name="corners">Corners.</param>
    /// <param name="attributes">What is told of them, each in a stretch of its own in this order; the first is where they lie.</param>
    /// <param name="runs">Runs of triangles, each in a stretch of its own behind those of the corners.</param>
    /// <param name="bounds">Lowest and highest corner of each run, x y z.</param>
    /// <returns>UTF-8.</returns>
    public static byte[] Of(string generator, int corners, IReadOnlyList<GlbAttribute> attributes, IReadOnlyList<GlbRun> runs, IReadOnlyList<(float[] Low, float[] High)> bounds) =>
        CanonicalJson.Compact(json =>
        {
            json.Object("asset", () =>
            {
                json.WriteString("version", "2.0");
                json.WriteString("generator", generator);
            });
            json.WriteNumber("scene", 0);
            if (runs.Count == 0)
            {
                json.Objects("scenes", ["unit"], name => json.WriteString("name", name));
                return;
            }

            json.Objects("scenes", ["unit"], name =>
            {
                json.WriteString("name", name);
                json.Numbers("nodes", 0);
            });
            json.Objects("nodes", ["predicted"], name =>
            {
                json.WriteString("name", name);
                json.WriteNumber("mesh", 0);
            });
            json.Objects("materials", ["deviation"], name =>
            {
                json.WriteString("name", name);
                json.Object("pbrMetallicRoughness", () => json.WriteNumber("metallicFactor", 0));
            });
            json.Objects("meshes", ["predicted surface"], name =>
            {
                json.WriteString("name", name);
                json.Objects("primitives", Enumerable.Range(0, runs.Count), run =>
                {
                    int first = run * (attributes.Count + 1);
                    json.Object("attributes", () =>
                    {
                        for (int i = 0; i < attributes.Count; i++)
                        {
                            json.WriteNumber(attributes[i].Name, first + i);
                        }
                    });
                    json.WriteNumber("indices", first + attributes.Count);
                    json.WriteNumber("material", 0);
                });
            });
            Accessors(json, attributes, runs, bounds);
            Views(json, corners, attributes, runs);
        });

    private static void Accessors(Utf8JsonWriter json, IReadOnlyList<GlbAttribute> attributes, IReadOnlyList<GlbRun> runs, IReadOnlyList<(float[] Low, float[] High)> bounds)
    {
        json.WriteStartArray("accessors");
        for (int run = 0; run < runs.Count; run++)
        {
            for (int i = 0; i < attributes.Count; i++)
            {
                json.WriteStartObject();
                json.WriteNumber("bufferView", i);
                json.WriteNumber("byteOffset", runs[run].FirstCorner * attributes[i].Bytes);
                json.WriteNumber("componentType", attributes[i].Number);
                json.WriteNumber("count", runs[run].Corners);
                json.WriteString("type", attributes[i].Form);
                if (attributes[i].Number == Byte)
                {
                    json.WriteBoolean("normalized", true);
                }

                if (i == 0)
                {
                    Floats(json, "min", bounds[run].Low);
                    Floats(json, "max", bounds[run].High);
                }

                json.WriteEndObject();
            }

            json.WriteStartObject();
            json.WriteNumber("bufferView", attributes.Count + run);
            json.WriteNumber("componentType", runs[run].IsShort ? Short : Int);
            json.WriteNumber("count", 3 * runs[run].Triangles);
            json.WriteString("type", "SCALAR");
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void Views(Utf8JsonWriter json, int corners, IReadOnlyList<GlbAttribute> attributes, IReadOnlyList<GlbRun> runs)
    {
        int offset = 0;
        json.WriteStartArray("bufferViews");
        foreach (GlbAttribute attribute in attributes)
        {
            View(attribute.Bytes * corners, OfCorners, attribute.Bytes);
        }

        foreach (GlbRun run in runs)
        {
            View(run.NumberBytes, OfTriangles, 0);
            offset = (offset + 3) / 4 * 4;
        }

        json.WriteEndArray();
        json.Objects("buffers", [offset], bytes => json.WriteNumber("byteLength", bytes));

        void View(int bytes, int use, int stride)
        {
            json.WriteStartObject();
            json.WriteNumber("buffer", 0);
            json.WriteNumber("byteOffset", offset);
            json.WriteNumber("byteLength", bytes);
            if (stride > 0)
            {
                json.WriteNumber("byteStride", stride);
            }

            json.WriteNumber("target", use);
            json.WriteEndObject();
            offset += bytes;
        }
    }

    private static void Floats(Utf8JsonWriter json, string name, float[] values)
    {
        json.WriteStartArray(name);
        foreach (float value in values)
        {
            json.WriteNumberValue(value);
        }

        json.WriteEndArray();
    }
}
