using System.Text.Json;
using Dewstone.Jobs.Emission.Json;
using Dewstone.Model.Description;
using Dewstone.Model.Lattices;
using Dewstone.Model.Results;

namespace Dewstone.Jobs.Emission;

/// <summary>
/// Writes <c>job.json</c>, the core of a job: all that decides the solid, in SI, so that anyone can simulate it again from this file and the
/// dose tables. Its fingerprint is that of the job.
/// </summary>
public static class JobCoreEmitter
{
    /// <summary>Path in the job folder.</summary>
    public const string Path = "job.json";

    /// <summary>Name of the format.</summary>
    public const string Format = "dewstone-job";

    /// <summary>Version of the format; rises when a field goes or changes its meaning.</summary>
    public const int Version = 1;

    /// <summary>The core of a job.</summary>
    /// <param name="job">The compiled job.</param>
    /// <param name="wetting">Constants of the wetting.</param>
    /// <param name="tables">Dose tables and sequence, whose hashes stand in the core, also of a held job that does not hold them.</param>
    /// <returns>The file.</returns>
    public static EmittedFile Emit(CompiledJob job, WettingConstants wetting, JobTables tables)
    {
        ArgumentNullException.ThrowIfNull(job);
        ArgumentNullException.ThrowIfNull(wetting);
        ArgumentNullException.ThrowIfNull(tables);
        byte[] bytes = CanonicalJson.Compact(json =>
        {
            json.WriteString("format", Format);
            json.WriteNumber("version", Version);
            json.Object("description", () => Write(json, job.Description));
            json.Object("placement", () => PlacementJson.Write(json, job.Placement));
            json.Object("lattice", () => Write(json, job.Lattice));
            json.Object("cells", () => Write(json, job.Moisture.Grid));
            json.Object("model", () => Write(json, job, wetting));
            json.Objects("timeline", job.Timeline.Steps, step => Write(json, step));
            json.Objects("dose_tables", tables.Doses, table => Write(json, table));
            json.Object("sequence", () => Write(json, tables.Sequence));
            if (job.Description.Stop is { } stop)
            {
                json.Objects("delivered_tables", tables.Delivered, table => Write(json, table));
                json.Object(StopJson.Name, () =>
                {
                    StopJson.Write(json, stop);
                    PrinterJson.Write(json, "needles", stop.NeedlesBefore);
                });
            }
        });
        return new EmittedFile(Path, bytes);
    }

    /// <summary>The fingerprint of the design: the unit's own description and what it requires, whatever mix, printer, site or night.</summary>
    /// <param name="unit">The unit.</param>
    /// <returns>Fingerprint of its canonical JSON.</returns>
    public static Fingerprint DesignOf(ReefUnit unit) => Fingerprint.Of(CanonicalJson.Compact(json => UnitJson.Write(json, unit)));

    /// <summary>The fingerprint of what a job prints: of its one unit's design, or of the designs of all units of a bin, wherever they stand.</summary>
    /// <param name="description">What was asked for.</param>
    /// <returns>Fingerprint of their canonical JSON.</returns>
    public static Fingerprint DesignOf(JobDescription description)
    {
        ArgumentNullException.ThrowIfNull(description);
        return description.Bin.Count == 0
            ? DesignOf(description.Unit)
            : Fingerprint.Of(CanonicalJson.Compact(json => json.Objects("bin", description.Bin, unit => UnitJson.Write(json, unit.Unit))));
    }

    /// <summary>The fingerprint of all but the shape that decides doses: mix, printer, needles, the night, and the band of water/cement.</summary>
    /// <param name="description">What was asked for.</param>
    /// <returns>Fingerprint of their canonical JSON.</returns>
    internal static Fingerprint ConditionsOf(JobDescription description) => Fingerprint.Of(CanonicalJson.Compact(json =>
    {
        json.Object("mix", () => MixJson.Write(json, description.Mix));
        json.Object("printer", () => PrinterJson.Write(json, description.Printer));
        PrinterJson.Write(json, "needles", description.Needles);
        json.ObjectOrNull("tonight", description.Tonight, tonight => MixJson.Write(json, tonight));
        json.Number("least_water_cement", description.Unit.Require.WaterCement?.Min);
        json.Number("most_water_cement", description.Unit.Require.WaterCement?.Max);
    }));

    /// <summary>Writes the members of a description into the object that is open.</summary>
    public static void Write(Utf8JsonWriter json, JobDescription description)
    {
        json.Object("unit", () => UnitJson.Write(json, description.Unit));
        if (description.Bin.Count > 0)
        {
            json.Objects("bin", description.Bin, unit =>
            {
                json.WriteString("mark", unit.Mark);
                json.Object("unit", () => UnitJson.Write(json, unit.Unit));
                json.Object("placement", () => PlacementJson.Write(json, unit.Placement));
            });
        }

        json.Object("mix", () => MixJson.Write(json, description.Mix));
        json.Object("printer", () => PrinterJson.Write(json, description.Printer));
        PrinterJson.Write(json, "needles", description.Needles);
        json.ObjectOrNull("site", description.Site, site => SiteJson.Write(json, site));
        json.ObjectOrNull("tonight", description.Tonight, tonight => MixJson.Write(json, tonight));
    }

    private static void Write(Utf8JsonWriter json, Lattice lattice)
    {
        LatticeJson.WriteCounts(json, lattice);
        json.Number("pitch_m", lattice.PitchMetres);
        json.Number("layer_m", lattice.LayerMetres);
        json.Numbers("origin_m", lattice.OriginXMetres, lattice.OriginYMetres);
        json.Number("tip_depth_m", lattice.TipDepthMetres);
        json.Numbers("bin_m", lattice.BinXMetres, lattice.BinYMetres);
    }

    private static void Write(Utf8JsonWriter json, CellGrid grid)
    {
        json.WriteNumber("nx", grid.Nx);
        json.WriteNumber("ny", grid.Ny);
        json.WriteNumber("nz", grid.Nz);
        json.WriteNumber("per_pitch", grid.CellsPerPitch);
        json.WriteNumber("per_layer", grid.CellsPerLayer);
        json.Point("origin_m", grid.Origin);
        json.Numbers("cell_m", grid.CellMetres, grid.CellMetres, grid.CellHeightMetres);
    }

    private static void Write(Utf8JsonWriter json, CompiledJob job, WettingConstants wetting)
    {
        WettingLaw law = job.Description.Mix.Wetting;
        json.Number("loose_density_kg_m3", job.Description.LooseDensity.KilogramsPerCubicMetre);
        json.Number("binder_kg_m3", job.Moisture.BinderKilogramsPerCubicMetre);
        json.Number("liquid_kg_m3", job.Moisture.LiquidKilogramsPerCubicMetre);
        json.Number("porosity", job.Moisture.Porosity);
        json.Number("residual", law.Residual);
        json.Number("threshold_content", job.Moisture.ThresholdContent);
        json.Number("bed_temperature_degc", job.Description.BedTemperature.Celsius);
        json.Number("curing_temperature_degc", job.Description.CuringTemperature.Celsius);
        json.Number("window_s", wetting.WindowSeconds);
        json.WriteString("law", MixJson.LawName(law));
        json.Number("diffusivity_m2_s", law.AtSaturation.SquareMetresPerSecond);
        json.WriteNumber("exponent", law.Exponent);
        json.WriteNumber("shots_per_dose", wetting.ShotsPerDose);
        json.Number("step_share", wetting.StepShare);
        json.WriteNumber("steps_per_setting", wetting.StepsPerSetting);
        json.Number("last_step_stretch", wetting.LastStepStretch);
    }

    private static void Write(Utf8JsonWriter json, MachineStep step)
    {
        json.WriteNumber("layer", step.Layer);
        json.WriteNumber("station", step.Station);
        json.WriteString("action", SequenceEmitter.ActionName(step.Action));
        json.WriteNumber("start_ms", step.StartMilliseconds);
        json.WriteNumber("ms", step.Milliseconds);
    }

    private static void Write(Utf8JsonWriter json, EmittedFile file)
    {
        json.WriteString("path", file.RelativePath);
        json.WriteString("sha256", Sha256Text.Of(file.Bytes.Span));
    }
}
