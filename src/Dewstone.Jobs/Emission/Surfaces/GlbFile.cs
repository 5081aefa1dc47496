using System.Numerics;
using System.Runtime.InteropServices;
using SharpGLTF.Memory;
using SharpGLTF.Schema2;
using SharpGLTF.Validation;
using SixLabors.ImageSharp.PixelFormats;

namespace Dewstone.Jobs.Emission.Surfaces;

/// <summary>
/// Writes the predicted surface as binary glTF 2.0: metres, y up (unit x, z, minus y), the deviation as vertex colour and, in mm, as
/// <c>_DEVIATION_MM</c>, the water/cement behind the surface as <c>_WATER_CEMENT</c>. Corners are written once; the triangles come in runs
/// that number their corners in 16 bits.
/// </summary>
internal static class GlbFile
{
    /// <summary>Attribute of the deviation, mm.</summary>
    public const string Deviation = "_DEVIATION_MM";

    /// <summary>Attribute of the water/cement.</summary>
    public const string WaterCement = "_WATER_CEMENT";

    /// <summary>Writes.</summary>
    /// <param name="predicted">The surface; without triangles the scene is empty, since glTF knows no mesh without.</param>
    /// <param name="generator">Program and version.</param>
    /// <returns>The file's content.</returns>
    public static ReadOnlyMemory<byte> Write(PredictedSurface predicted, string generator)
    {
        ModelRoot model = ModelRoot.CreateModel();
        model.Asset.Generator = generator;
        model.Asset.Copyright = null;
        Scene scene = model.UseScene("unit");
        if (predicted.Surface.Triangles.Length > 0)
        {
            AddMesh(model, scene, predicted);
        }

        return model.WriteGLB(new WriteSettings { MergeBuffers = true, Validation = ValidationMode.Skip });
    }

    private static void AddMesh(ModelRoot model, Scene scene, PredictedSurface predicted)
    {
        Material material = model.CreateMaterial("deviation");
        material.InitializePBRMetallicRoughness();
        material.FindChannel("MetallicRoughness")!.Value.SetFactor("MetallicFactor", 0f);
        Mesh mesh = model.CreateMesh("predicted surface");
        scene.CreateNode("predicted").Mesh = mesh;
        float[] positions = predicted.Surface.Positions;
        (string Name, BufferView View, AttributeFormat Format)[] attributes =
        [
            Vertices(model, "POSITION", Upright(MemoryMarshal.Cast<float, Vector3>(positions)), AttributeFormat.Float3),
            Vertices(model, "NORMAL", Upright(predicted.Normals), AttributeFormat.Float3),
            Vertices(model, "COLOR_0", Colours(predicted.DeviationMillimetres), new AttributeFormat(DimensionType.VEC4, EncodingType.UNSIGNED_BYTE, true)),
            Vertices(model, Deviation, predicted.DeviationMillimetres, AttributeFormat.Float1),
            .. predicted.WaterCement.Length == 0
                ? Array.Empty<(string, BufferView, AttributeFormat)>()
                : [Vertices(model, WaterCement, predicted.WaterCement, AttributeFormat.Float1)],
        ];
        foreach (GlbRun run in GlbRun.Of(predicted.Surface.Triangles))
        {
            MeshPrimitive primitive = mesh.CreatePrimitive();
            primitive.Material = material;
            foreach ((string name, BufferView view, AttributeFormat format) in attributes)
            {
                Accessor accessor = model.CreateAccessor(name);
                accessor.SetVertexData(view, run.FirstCorner * format.ByteSize, run.Corners, format);
                primitive.SetVertexAccessor(name, accessor);
            }

            byte[] numbers = Numbers(predicted.Surface.Triangles.AsSpan(3 * run.FirstTriangle, 3 * run.Triangles), run);
            Accessor indices = model.CreateAccessor("triangles");
            indices.SetIndexData(
                model.UseBufferView(numbers, 0, null, 0, BufferMode.ELEMENT_ARRAY_BUFFER), 0, 3 * run.Triangles,
                run.IsShort ? IndexEncodingType.UNSIGNED_SHORT : IndexEncodingType.UNSIGNED_INT);
            primitive.SetIndexAccessor(indices);
        }
    }

    private static (string Name, BufferView View, AttributeFormat Format) Vertices<T>(ModelRoot model, string name, T[] values, AttributeFormat format)
        where T : unmanaged
    {
        byte[] bytes = MemoryMarshal.AsBytes(values.AsSpan()).ToArray();
        return (name, model.UseBufferView(bytes, 0, null, format.ByteSize, BufferMode.ARRAY_BUFFER), format);
    }

    private static Vector3[] Upright(ReadOnlySpan<Vector3> unit)
    {
        var turned = new Vector3[unit.Length];
        for (int i = 0; i < turned.Length; i++)
        {
            turned[i] = new Vector3(unit[i].X, unit[i].Z, -unit[i].Y);
        }

        return turned;
    }

    private static Rgba32[] Colours(float[] millimetres)
    {
        var colours = new Rgba32[millimetres.Length];
        for (int i = 0; i < colours.Length; i++)
        {
            colours[i] = DeviationTones.LinearOf(millimetres[i]);
        }

        return colours;
    }

    private static byte[] Numbers(ReadOnlySpan<int> triangles, GlbRun run)
    {
        byte[] bytes = new byte[triangles.Length * (run.IsShort ? sizeof(ushort) : sizeof(uint))];
        Span<ushort> narrow = MemoryMarshal.Cast<byte, ushort>(bytes.AsSpan());
        Span<uint> wide = MemoryMarshal.Cast<byte, uint>(bytes.AsSpan());
        for (int i = 0; i < triangles.Length; i++)
        {
            if (run.IsShort)
            {
                narrow[i] = (ushort)(triangles[i] - run.FirstCorner);
            }
            else
            {
                wide[i] = (uint)(triangles[i] - run.FirstCorner);
            }
        }

        return bytes;
    }
}
