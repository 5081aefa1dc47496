using System.Security.Cryptography;
using System.Text;
using System.Text.Json;
using Dewstone.Jobs.Emission;
using Dewstone.Model.Description;
using Dewstone.Model.Quantities;
using Dewstone.Model.Results;

namespace Dewstone.Jobs.Tests.Emission;

public sealed class JobDataTests
{
    [Fact]
    public void Emit_twice_and_with_two_threads_gives_the_same_bytes()
    {
        EmissionSettings raw = Samples.Settings with { RawField = true };
        JobData first = JobDataEmitter.Emit(Samples.Job(), raw);
        JobData second = JobDataEmitter.Emit(Samples.Job(), raw with { Parallelism = new Parallelism(2) });

        Assert.Equal(
            ["job.json", "doses/layer-002.csv", "doses/layer-003.csv", "sequence.csv", "estimate.json", "findings.sarif", "predicted.vti", "predicted-field.vti"],
            first.Files.Select(file => file.RelativePath));
        Assert.Equal(first.Files.Select(Hash), second.Files.Select(Hash));
        Assert.Equal(first.Job, second.Job);
    }

    [Fact]
    public void Held_job_has_neither_dose_tables_nor_sequence_but_the_same_core()
    {
        JobData held = JobDataEmitter.Emit(Samples.HeldJob(), Samples.Settings);

        Assert.DoesNotContain(held.Files, file => file.RelativePath.StartsWith("doses/", StringComparison.Ordinal) || file.RelativePath == "sequence.csv");
        Assert.Equal(JobDataEmitter.Emit(Samples.Job(), Samples.Settings).Job, held.Job);
    }

    [Fact]
    public void Core_holds_the_hashes_of_the_tables_and_ends_with_a_line_feed()
    {
        JobData data = JobDataEmitter.Emit(Samples.Job(), Samples.Settings);
        byte[] core = data.Files[0].Bytes.ToArray();
        JsonElement root = Parse(data.Files[0]);

        Assert.Equal((byte)'\n', core[^1]);
        Assert.DoesNotContain((byte)'\r', core);
        Assert.Equal(
            data.Files.Skip(1).Take(2).Select(file => $"{file.RelativePath} {Hash(file)}"),
            root.GetProperty("dose_tables").EnumerateArray().Select(table => $"{table.GetProperty("path").GetString()} {table.GetProperty("sha256").GetString()}"));
        Assert.Equal(Hash(data.Files[3]), root.GetProperty("sequence").GetProperty("sha256").GetString());
        Assert.Equal(data.Job, Fingerprint.Of(core));
    }

    [Fact]
    public void Core_holds_the_model_in_SI()
    {
        JsonElement root = Parse(JobDataEmitter.Emit(Samples.Job(), Samples.Settings).Files[0]);
        JsonElement model = root.GetProperty("model");

        Assert.Equal("dewstone-job", root.GetProperty("format").GetString());
        Assert.Equal(425.0, model.GetProperty("binder_kg_m3").GetDouble());
        Assert.Equal(3.2e-6, model.GetProperty("diffusivity_m2_s").GetDouble());
        Assert.Equal(600.0, model.GetProperty("window_s").GetDouble());
        Assert.Equal("power", model.GetProperty("law").GetString());
        Assert.Equal(Samples.Mix.Porosity(Samples.Mix.LooseDensity), model.GetProperty("porosity").GetDouble());
        Assert.Equal([0.0125, 0.0125, 0.0125], root.GetProperty("cells").GetProperty("cell_m").EnumerateArray().Select(value => value.GetDouble()));
        Assert.Equal(14, root.GetProperty("timeline").GetArrayLength());
        Assert.Equal(44e-6, root.GetProperty("description").GetProperty("printer").GetProperty("needle").GetProperty("most_m3").GetDouble());
    }

    [Fact]
    public void Core_holds_no_file_name_and_no_inputs()
    {
        string core = Encoding.UTF8.GetString(JobDataEmitter.Emit(Samples.HeldJob(), Samples.Settings).Files[0].Bytes.Span);

        Assert.DoesNotContain("yaml", core, StringComparison.Ordinal);
        Assert.DoesNotContain("/yard", core, StringComparison.Ordinal);
    }

    [Fact]
    public void Calibrated_mix_keeps_its_origin_but_not_the_file()
    {
        CompiledJob job = Samples.Job();
        DryMix calibrated = Samples.Mix with { Origin = new MixOrigin(MixOriginKind.Calibration, "../fits/june.yaml") };
        job = job with { Description = job.Description with { Mix = calibrated } };

        JsonElement origin = Parse(JobDataEmitter.Emit(job, Samples.Settings).Files[0]).GetProperty("description").GetProperty("mix").GetProperty("origin");

        Assert.Equal("""{"kind":"calibration","title":""}""", origin.GetRawText());
    }

    [Fact]
    public void Design_fingerprint_follows_the_unit_and_nothing_else()
    {
        CompiledJob job = Samples.Job();
        JobData plain = JobDataEmitter.Emit(job, Samples.Settings);
        JobData warm = JobDataEmitter.Emit(
            job with { Description = job.Description with { Tonight = new Tonight { BedTemperature = new Temperature(26.0) } } }, Samples.Settings);
        JobData lighter = JobDataEmitter.Emit(
            job with { Description = job.Description with { Unit = Samples.Unit with { Require = Samples.Unit.Require with { MaxMass = new Mass(1.9) } } } },
            Samples.Settings);

        Assert.Equal(plain.Design, warm.Design);
        Assert.NotEqual(plain.Job, warm.Job);
        Assert.NotEqual(plain.Design, lighter.Design);
    }

    [Theory]
    [MemberData(nameof(UnitChanges))]
    public void Design_fingerprint_sees_every_part_of_the_unit(string part, ReefUnit changed)
    {
        Assert.True(JobCoreEmitter.DesignOf(Samples.Unit) != JobCoreEmitter.DesignOf(changed), $"a change of {part} is not seen");
    }

    public static TheoryData<string, ReefUnit> UnitChanges()
    {
        ReefUnit unit = Samples.Unit;
        ScatteredCavities niches = (ScatteredCavities)unit.Cavities[0];
        FormedCavity room = (FormedCavity)unit.Cavities[1];
        AxisTunnel straight = (AxisTunnel)unit.Tunnels[0];
        PathTunnel bend = (PathTunnel)unit.Tunnels[1];
        ReefUnit Niches(ScatteredCavities other) => unit with { Cavities = [other, room] };
        ReefUnit Straight(AxisTunnel other) => unit with { Tunnels = [other, bend] };
        return new TheoryData<string, ReefUnit>
        {
            { "name", unit with { Name = "Cobble" } },
            { "box", unit with { OuterBox = new Size3(0.1, 0.05, 0.11) } },
            { "rounding", unit with { Rounding = new Length(0.011) } },
            { "blend", unit with { Blend = new Length(0.006) } },
            { "relief", unit with { Relief = null } },
            { "relief seed", unit with { Relief = unit.Relief! with { Seed = 8 } } },
            { "relief faces", unit with { Relief = unit.Relief! with { Faces = FaceSet.Sides } } },
            { "relief length", unit with { Relief = unit.Relief! with { LongestLength = new Length(0.07) } } },
            { "tunnel axis", Straight(straight with { Along = Axis.Y }) },
            { "tunnel place", Straight(straight with { At = new Point3(0.0, 0.025, 0.031) }) },
            { "tunnel section", Straight(straight with { Section = new RoundSection(new Length(0.02)) }) },
            { "tunnel section rounding", Straight(straight with { Section = new RectangularSection(new Length(0.02), new Length(0.02), new Length(0.003)) }) },
            { "tunnel clear", Straight(straight with { Clear = new Length(0.016) }) },
            { "tunnel path", unit with { Tunnels = [straight, bend with { Path = [.. bend.Path, new Point3(0.1, 0.03, 0.06)] }] } },
            { "scatter count", Niches(niches with { Count = 4 }) },
            { "scatter diameter", Niches(niches with { GreatestDiameter = new Length(0.021) }) },
            { "scatter gap", Niches(niches with { Gap = new Length(0.011) }) },
            { "scatter faces", Niches(niches with { Faces = FaceSet.East }) },
            { "scatter inside", Niches(niches with { Inside = true }) },
            { "scatter band", Niches(niches with { BandZ = null }) },
            { "scatter seed", Niches(niches with { Seed = 12 }) },
            { "form", unit with { Cavities = [niches, room with { Form = new SphereForm { Centre = room.Form.Centre, Diameter = new Length(0.02) } }] } },
            { "keep", unit with { Keep = [] } },
            { "lifting", unit with { Lifting = null } },
            { "strap", unit with { Lifting = new StrapLifting { Lines = [new StrapLine(Axis.X, new Length(0.03)), new StrapLine(Axis.Y, new Length(0.07))] } } },
            { "sling", unit with { Lifting = unit.Lifting! with { SlingAngle = new Angle(45.0) } } },
            { "require wall", unit with { Require = unit.Require with { MinWall = new Length(0.01) } } },
            { "require band", unit with { Require = unit.Require with { WaterCement = new WaterCementBand(0.25, 0.6, 0.96) } } },
            { "require pieces", unit with { Require = unit.Require with { MaxLoosePieces = 0 } } },
            { "require trapped", unit with { Require = unit.Require with { MaxTrappedMix = new Mass(0.1) } } },
            { "place", unit with { Place = new PlacementWish { QuarterTurns = 1 } } },
        };
    }

    private static JsonElement Parse(EmittedFile file) => JsonDocument.Parse(file.Bytes).RootElement;

    private static string Hash(EmittedFile file) => Convert.ToHexStringLower(SHA256.HashData(file.Bytes.Span));
}
