using System.Buffers.Binary;
using System.Numerics;
using Dewstone.Jobs.Emission;
using Dewstone.Jobs.Emission.Surfaces;
using Dewstone.Jobs.Tests.Emission.Pictures;
using Dewstone.Model.Quantities;
using Dewstone.Model.Results;
using SharpGLTF.Schema2;
using SharpGLTF.Validation;

namespace Dewstone.Jobs.Tests.Emission.Surfaces;

public sealed class GlbFileTests
{
    [Fact]
    public void Container_is_glb_version_2_with_a_json_and_a_binary_chunk()
    {
        // glTF 2.0 specification, section 4.4 (binary glTF layout), from memory: magic "glTF", version, length; chunks of whole words.
        ReadOnlySpan<byte> bytes = Emit(BallJob.Make(0.07)).Bytes.Span;
        int json = BinaryPrimitives.ReadInt32LittleEndian(bytes[12..]);

        Assert.Equal("glTF"u8, bytes[..4]);
        Assert.Equal(2, BinaryPrimitives.ReadInt32LittleEndian(bytes[4..]));
        Assert.Equal(bytes.Length, BinaryPrimitives.ReadInt32LittleEndian(bytes[8..]));
        Assert.Equal("JSON"u8, bytes[16..20]);
        Assert.Equal(0, json % 4);
        Assert.Equal("BIN\0"u8, bytes[(24 + json)..(28 + json)]);
        Assert.Equal(bytes.Length - 28 - json, BinaryPrimitives.ReadInt32LittleEndian(bytes[(20 + json)..]));
    }

    [Fact]
    public void Surface_read_back_is_the_stl_turned_upright()
    {
        CompiledJob job = BallJob.Make(0.065, new Point3(0.004, -0.002, -0.003), quarterTurns: 1);
        StlMesh stl = new(SurfaceSet.Emit(job, SampleJob.Surface(job), new Parallelism(2), TestContext.Current.CancellationToken)[1]);

        MeshPrimitive primitive = Assert.Single(Assert.Single(Read(Emit(job)).LogicalMeshes).Primitives);
        IList<Vector3> positions = primitive.GetVertexAccessor("POSITION").AsVector3Array();
        int[] triangles = [.. primitive.GetTriangleIndices().SelectMany(t => new[] { t.A, t.B, t.C })];

        Assert.Equal(stl.Triangles.Length, triangles.Length);
        for (int i = 0; i < triangles.Length; i++)
        {
            Vector3 upright = positions[triangles[i]], corner = stl.Corners[stl.Triangles[i]];
            Assert.True((new Vector3(upright.X, -upright.Z, upright.Y) * 1000f - corner).Length() < 1e-3f);
        }
    }

    [Theory]
    [InlineData(0.07, -5.0)]
    [InlineData(0.065, -10.0)]
    [InlineData(0.06, -15.0)]
    public void Vertices_carry_deviation_its_tone_and_outward_normals(double radius, double millimetres)
    {
        // Two balls about one middle: the deviation is the difference of the radii, all over.
        MeshPrimitive primitive = Read(Emit(BallJob.Make(radius))).LogicalMeshes[0].Primitives[0];
        IList<float> deviations = primitive.GetVertexAccessor("_DEVIATION_MM").AsScalarArray();
        IList<Vector4> colours = primitive.GetVertexAccessor("COLOR_0").AsVector4Array();
        IList<Vector3> positions = primitive.GetVertexAccessor("POSITION").AsVector3Array(), normals = primitive.GetVertexAccessor("NORMAL").AsVector3Array();

        for (int i = 0; i < deviations.Count; i++)
        {
            Assert.InRange(deviations[i], millimetres - 0.15, millimetres + 0.05);
            var tone = DeviationTones.LinearOf(deviations[i]);
            Assert.True((colours[i] * 255f - new Vector4(tone.R, tone.G, tone.B, 255f)).Length() < 0.01f);
            Vector3 outward = Vector3.Normalize(positions[i] - new Vector3(0.075f, 0.075f, -0.075f));
            Assert.InRange(Vector3.Dot(normals[i], outward), 0.98f, 1.001f);
        }
    }

    [Fact]
    public void Deviation_of_a_ball_moved_aside_is_too_much_on_one_side_and_missing_on_the_other()
    {
        // Radii 70 and 75 mm, middles 10 mm apart: from 70 + 10 - 75 = 5 to 70 - 10 - 75 = -15 mm.
        MeshPrimitive primitive = Read(Emit(BallJob.Make(0.07, new Point3(0.01, 0.0, 0.0)))).LogicalMeshes[0].Primitives[0];
        IList<float> deviations = primitive.GetVertexAccessor("_DEVIATION_MM").AsScalarArray();

        Assert.Equal(5.0, deviations.Max(), 0.15);
        Assert.Equal(-15.0, deviations.Min(), 0.15);
        Assert.True(primitive.GetVertexAccessor("POSITION").AsVector3Array()[deviations.IndexOf(deviations.Max())].X > 0.15f);
    }

    [Fact]
    public void Water_cement_is_that_of_the_mix_ten_millimetres_in()
    {
        // (content / threshold)^3 = 1 + depth / 6 mm, so w/c = 0.22 (1 + 10 / 6)^(1/3) = 0.3051.
        MeshPrimitive primitive = Read(Emit(BallJob.Make(0.07))).LogicalMeshes[0].Primitives[0];

        Assert.All(primitive.GetVertexAccessor("_WATER_CEMENT").AsScalarArray(), value => Assert.Equal(0.3051, value, 0.005));
    }

    [Fact]
    public void Tones_are_white_as_drawn_blue_for_missing_orange_for_too_much_and_stop_at_25_mm()
    {
        Assert.Equal((255, 255, 255), (DeviationTones.Of(0f).R, DeviationTones.Of(0f).G, DeviationTones.Of(0f).B));
        Assert.True(DeviationTones.Of(-25f).B > DeviationTones.Of(-25f).R + 100);
        Assert.True(DeviationTones.Of(25f).R > DeviationTones.Of(25f).B + 100);
        Assert.Equal(DeviationTones.Of(25f), DeviationTones.Of(300f));
        Assert.Equal(DeviationTones.Of(-25f), DeviationTones.Of(-300f));
        Assert.NotEqual(DeviationTones.Of(20f), DeviationTones.Of(25f));
        Assert.Equal(255, DeviationTones.LinearOf(0f).R);

        // sRGB 170 is linear ((170/255 + 0.055) / 1.055)^2.4 = 0.4020 (IEC 61966-2-1; from memory): 102 or 103 of 255.
        Assert.Equal(170, DeviationTones.Of(-25f).B);
        Assert.InRange(DeviationTones.LinearOf(-25f).B, 102, 103);
    }

    [Fact]
    public void Runs_hold_every_triangle_once_and_fit_in_16_bits()
    {
        // A strip over 200,000 corners, each triangle across three in a row.
        int[] triangles = [.. Enumerable.Range(0, 199_998).SelectMany(i => new[] { i, i + 1, i + 2 })];

        IReadOnlyList<GlbRun> runs = GlbRun.Of(triangles);

        Assert.Equal(4, runs.Count);
        int next = 0;
        foreach (GlbRun run in runs)
        {
            Assert.Equal(next, run.FirstTriangle);
            Assert.True(run.IsShort);
            Assert.All(
                triangles[(3 * run.FirstTriangle)..(3 * (run.FirstTriangle + run.Triangles))],
                corner => Assert.InRange(corner - run.FirstCorner, 0, Math.Min(run.Corners, 65_535) - 1));
            next += run.Triangles;
        }

        Assert.Equal(199_998, next);
    }

    [Fact]
    public void Run_of_a_triangle_across_too_many_corners_is_not_short()
    {
        IReadOnlyList<GlbRun> runs = GlbRun.Of([0, 1, 2, 5, 70_000, 6]);

        Assert.Equal([new GlbRun(0, 1, 0, 3), new GlbRun(1, 1, 5, 69_996)], runs);
        Assert.Equal([true, false], runs.Select(run => run.IsShort));
        Assert.Empty(GlbRun.Of([]));
    }

    /// <summary>A GLB read by the library with its strictest checks.</summary>
    internal static ModelRoot Read(EmittedFile file) =>
        ModelRoot.ParseGLB(file.Bytes.ToArray(), new ReadSettings { Validation = ValidationMode.Strict });

    private static EmittedFile Emit(CompiledJob job) =>
        SurfaceSet.Emit(job, SampleJob.Surface(job), new Parallelism(2), TestContext.Current.CancellationToken).Single(file => file.RelativePath == "predicted.glb");
}
