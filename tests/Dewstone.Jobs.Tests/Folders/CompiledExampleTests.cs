using System.Globalization;
using System.Runtime.CompilerServices;
using System.Security.Cryptography;
using System.Text.Json;
using Dewstone.Compute.Numerics;
using Dewstone.Jobs.Compilation;
using Dewstone.Jobs.Emission;
using Dewstone.Jobs.Emission.Surfaces;
using Dewstone.Jobs.Folders;
using Dewstone.Jobs.Tests.Emission;
using Dewstone.Jobs.Tests.Emission.Surfaces;
using Dewstone.Model.Results;
using Dewstone.Reading;
using Dewstone.Reading.Job;
using Dewstone.Tests;

namespace Dewstone.Jobs.Tests.Folders;

/// <summary>A described unit compiled and written to disk, then looked at with nothing but what stands in the folder.</summary>
public sealed class CompiledExampleTests : IDisposable
{
    // Both tests look at the same job; compiling is what takes the time.
    private static readonly Lazy<(CompiledJob Job, IReadOnlyList<EmittedFile> Files)> WithTwoThreads = new(() => Compile(threads: 2));

    private readonly TemporaryFolder folder = new();

    public void Dispose() => folder.Dispose();

    [Fact]
    public void Job_folder_tells_one_story()
    {
        (CompiledJob job, IReadOnlyList<EmittedFile> files) = WithTwoThreads.Value;
        JobFolderOutcome outcome = JobFolderWriter.Write(new JobFolderOrder { OutputFolder = folder.Path, Name = "oyster-step", Held = false, Files = files });
        Assert.Equal(JobFolderStatus.Written, outcome.Status);
        JsonElement manifest = Parse(outcome.Path, "manifest.json"), estimate = Parse(outcome.Path, "estimate.json");

        // Every file is listed with its hash, and nothing else is there.
        Dictionary<string, string> listed = manifest.GetProperty("files").EnumerateArray()
            .ToDictionary(file => file.GetProperty("path").GetString()!, file => file.GetProperty("sha256").GetString()!);
        Assert.Equal(
            Directory.EnumerateFiles(outcome.Path, "*", SearchOption.AllDirectories).Select(file => Path.GetRelativePath(outcome.Path, file)).Order(StringComparer.Ordinal),
            listed.Keys.Append("manifest.json").Order(StringComparer.Ordinal));
        foreach ((string path, string hash) in listed)
        {
            Assert.Equal(hash, Convert.ToHexStringLower(SHA256.HashData(File.ReadAllBytes(Path.Combine(outcome.Path, path)))));
        }

        // The core is read back, names the tables that are there, and its fingerprint is the manifest's.
        byte[] coreBytes = File.ReadAllBytes(Path.Combine(outcome.Path, "job.json"));
        Assert.True(JobCoreReader.TryRead(coreBytes, out JobCore? core, out string fault), fault);
        Assert.Equal(Fingerprint.Of(coreBytes).ToString(), manifest.GetProperty("job_fingerprint").GetString());
        Assert.Equal(JobCoreEmitter.DesignOf(core!.Description.Unit).ToString(), manifest.GetProperty("design_fingerprint").GetString());
        Assert.All(core.DoseTables, table => Assert.Equal(table.Sha256, listed[table.Path]));
        Assert.Equal(listed.Keys.Count(path => path.StartsWith("doses/", StringComparison.Ordinal)), core.DoseTables.Count);

        // Water: tables = sequence = manifest = field, the last to the half step of 0.0001 in which it is written.
        decimal tables = core.DoseTables.Sum(table => Column(outcome.Path, table.Path, "dose_ml"));
        string[][] sequence = Rows(outcome.Path, "sequence.csv");
        Assert.True(tables > 1000m);
        Assert.Equal(tables, manifest.GetProperty("totals").GetProperty("water_ml").GetDecimal());
        Assert.Equal(tables, sequence.Where(row => row[3] == "dose").Sum(row => Decimal(row[8])));
        Assert.True(VtiReader.TryRead(File.ReadAllBytes(Path.Combine(outcome.Path, "predicted.vti")), out FieldImage? image, out fault), fault);
        double field = image!.Find<ushort>("water_cement")!.Sum(step => (double)step) * 0.0001 * job.Moisture.BinderKilogramsPerCubicMetre
            / job.Moisture.LiquidKilogramsPerCubicMetre * core.Cells.CellCubicMetres * 1e6;
        double halfSteps = image.Find<ushort>("water_cement")!.Count(step => step > 0) * 0.00005 * 0.425 * core.Cells.CellCubicMetres * 1e6;
        Assert.InRange((double)tables - manifest.GetProperty("totals").GetProperty("refused_ml").GetDouble() - field, -halfSteps, halfSteps);

        // Time: sequence = manifest = estimate.
        decimal seconds = sequence.Sum(row => Decimal(row[7]));
        Assert.Equal(seconds, manifest.GetProperty("totals").GetProperty("printing_s").GetDecimal());
        Assert.Equal(seconds, estimate.GetProperty("time_s").GetProperty("printing").GetDecimal());
        Assert.Equal(seconds, estimate.GetProperty("time_s").GetProperty("by_action").EnumerateArray().Sum(action => action.GetProperty("seconds").GetDecimal()));
    }

    [Fact]
    public void Job_files_are_valid_by_the_stored_schemas_and_the_same_with_one_thread_and_two()
    {
        IReadOnlyList<EmittedFile> one = Compile(threads: 1).Files, two = WithTwoThreads.Value.Files;

        Assert.Equal(one.Select(file => file.RelativePath), two.Select(file => file.RelativePath));
        Assert.All(one.Zip(two), pair => Assert.True(pair.First.Bytes.Span.SequenceEqual(pair.Second.Bytes.Span), pair.First.RelativePath));
        foreach (string name in (string[])["job", "manifest", "estimate"])
        {
            SchemaTests.AssertValid(name, one.Single(file => file.RelativePath == $"{name}.json"));
        }
    }

    [Fact]
    public void Surfaces_are_closed_and_enclose_the_solid_of_the_cells()
    {
        (CompiledJob job, IReadOnlyList<EmittedFile> files) = WithTwoThreads.Value;
        StlMesh predicted = new(files.Single(file => file.RelativePath == "predicted.stl")), target = new(files.Single(file => file.RelativePath == "target.stl"));
        GridShape shape = new(job.Moisture.Grid.Nx, job.Moisture.Grid.Ny, job.Moisture.Grid.Nz);

        predicted.AssertClosed();
        target.AssertClosed();

        // A surface has twice the Euler number of the solid it bounds (pieces - tunnels + hollows). Two loose cells across a cube of eight are kept
        // apart by the surface, but hang together, as a tunnel, when only set cells need a common face.
        long cells = EulerNumber.Of(job.Moisture.Hardened, shape, Connectivity.Faces) + LonePairsAcrossCubes(job.Moisture.Hardened, shape);
        Assert.Equal(2 * cells, predicted.Euler);
        Assert.Equal(1.0, target.CubicMetres / job.Target.CubicMetres, 0.005);

    }

    // One definition of where the solid ends: the mesh as written, the volume that mass goes by, surface_m3 of the figures, and the mass itself less its
    // water agree within 1 % on every example. Cells counted whole are no measure of it (see HardenedSurface).
    [Theory]
    [InlineData("oyster-step", 4)]
    [InlineData("tide-sill", 4)]
    [InlineData("wrack-block", 4)]
    [InlineData("oyster-step", 8)]
    public void Mesh_mass_and_figures_have_one_volume(string unit, int cells) => AssertOneVolume(unit, cells);

    [Theory]
    [Trait("Category", "Soak")]
    [InlineData("tide-sill", 8)]
    [InlineData("wrack-block", 8)]
    public void Mesh_mass_and_figures_have_one_volume_at_8_cells(string unit, int cells) => AssertOneVolume(unit, cells);

    private static void AssertOneVolume(string unit, int cells)
    {
        CompiledJob job = CompileJob(unit, cells, new Parallelism(2)).Job;
        IReadOnlyList<EmittedFile> surfaces = SurfaceSet.Emit(
            job, HardenedSurface.Of(job.Moisture, job.Description.Mix.Wetting, new Parallelism(2)), new Parallelism(2), TestContext.Current.CancellationToken);
        StlMesh predicted = new(surfaces.Single(file => file.RelativePath == SurfaceSet.PredictedStl));
        predicted.AssertClosed();

        Assert.Equal(1.0, predicted.CubicMetres / job.Solid.HardenedCubicMetres, 0.01);
        Assert.Equal(1.0, job.Inspection!.ShapeMatch.SurfaceCubicMetres / job.Solid.HardenedCubicMetres, 0.01);
        double water = job.Solid.WaterInHardenedCubicMetres * job.Description.Mix.Liquid.Density.KilogramsPerCubicMetre;
        double byMass = (job.Estimate.FreshKilograms - water) / job.Description.LooseDensity.KilogramsPerCubicMetre;
        Assert.Equal(1.0, predicted.CubicMetres / byMass, 0.01);
    }

    private static int LonePairsAcrossCubes(byte[] set, GridShape shape)
    {
        int pairs = 0;
        for (int z = 0; z + 1 < shape.Nz; z++)
        {
            for (int y = 0; y + 1 < shape.Ny; y++)
            {
                for (int x = 0; x + 1 < shape.Nx; x++)
                {
                    int[] loose = [.. Enumerable.Range(0, 8).Where(c => set[shape.Index(x + (c & 1), y + ((c >> 1) & 1), z + (c >> 2))] == 0)];
                    pairs += loose.Length == 2 && loose[0] + loose[1] == 7 ? 1 : 0;
                }
            }
        }

        return pairs;
    }

    // Whoever goes through the files as they are made gets the same ones, and may stop half-way.
    [Fact]
    public void Files_as_made_are_the_files_with_the_manifest_last()
    {
        CompiledJob job = WithTwoThreads.Value.Job;
        IReadOnlyList<EmittedFile> files = JobFiles.Of(job, Path.GetFileName!, rawField: false, new Parallelism(2), CancellationToken.None);
        using FilesInMaking making = new(new Parallelism(2), CancellationToken.None);
        making.Begin(job);
        List<EmittedFile> made = [.. making.AsMade(job, Path.GetFileName!, rawField: false)];

        Assert.Equal(ManifestEmitter.Path, made[^1].RelativePath);
        Assert.Equal(files.Count, made.Count);
        Assert.All(files, file => Assert.True(file.Bytes.Span.SequenceEqual(made.Single(other => other.RelativePath == file.RelativePath).Bytes.Span)));
        using FilesInMaking half = new(new Parallelism(2), CancellationToken.None);
        Assert.Equal(2, half.AsMade(job, Path.GetFileName!, rawField: false).Take(2).Count());
    }

    private static (CompiledJob Job, IReadOnlyList<EmittedFile> Files) Compile(int threads)
    {
        Parallelism parallelism = new(threads);
        (CompiledJob job, ReadResult read) = CompileJob("oyster-step", 4, parallelism);
        return (job, JobFiles.Of(job, read.Sources.BelowRoot, rawField: false, parallelism, CancellationToken.None));
    }

    private static (CompiledJob Job, ReadResult Read) CompileJob(string unit, int cells, Parallelism parallelism, [CallerFilePath] string here = "")
    {
        string path = Path.GetFullPath(Path.Combine(Path.GetDirectoryName(here)!, $"../../../examples/wrackline-bay/units/{unit}.unit.yaml"));
        ReadResult read = DescriptionReader.ReadJob(path);
        CompileResult compiled = JobCompiler.Compile(
            read, new CompileOptions { CellsPerVoxel = cells, ToolVersion = "0.1.0" }, parallelism, progress: null, CancellationToken.None);
        return (compiled.Job ?? throw new InvalidOperationException(string.Join(' ', compiled.Findings.Select(finding => finding.Message))), read);
    }

    private static JsonElement Parse(string job, string file) => JsonDocument.Parse(File.ReadAllBytes(Path.Combine(job, file))).RootElement;

    private static string[][] Rows(string job, string file) => [.. File.ReadAllLines(Path.Combine(job, file)).Skip(1).Select(line => line.Split(','))];

    private static decimal Column(string job, string file, string name)
    {
        int column = Array.IndexOf(File.ReadLines(Path.Combine(job, file)).First().Split(','), name);
        return Rows(job, file).Sum(row => Decimal(row[column]));
    }

    private static decimal Decimal(string text) => decimal.Parse(text, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture);
}
