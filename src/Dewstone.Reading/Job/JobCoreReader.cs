using System.Text.Json;
using Dewstone.Model.Description;
using Dewstone.Model.Lattices;
using Dewstone.Model.Quantities;
using Dewstone.Model.Results;

namespace Dewstone.Reading.Job;

/// <summary>Reads <c>job.json</c> of a job folder. Members it does not know are ignored; another format or version is refused.</summary>
public static class JobCoreReader
{
    private const string Format = "dewstone-job";
    private const int Version = 1;
    private const double MostPauseSeconds = 1e9;

    /// <summary>Reads a job core.</summary>
    /// <param name="file">Its bytes.</param>
    /// <param name="core">The core.</param>
    /// <param name="fault">What is wrong with it, one line; empty when it was read.</param>
    /// <returns>False when it is no job core of this version or is damaged.</returns>
    public static bool TryRead(ReadOnlyMemory<byte> file, out JobCore? core, out string fault)
    {
        core = null;
        fault = "";
        try
        {
            using JsonDocument document = SoundJson.Parse(file);
            JsonPlace root = new(document.RootElement, "");
            if (!root.Has("format") || root.Text("format") != Format)
            {
                throw new InvalidDataException($"it is not of the format {Format}");
            }

            if (root.Whole("version") != Version)
            {
                throw new InvalidDataException($"its version is {root.Whole("version")}, and this program reads version {Version}");
            }

            JobCore read = Read(root);
            JobCoreCheck.Check(read);
            core = read;
            return true;
        }
        catch (Exception damage) when (damage is InvalidDataException or JsonException)
        {
            fault = damage.Message.ReplaceLineEndings(" ");
            return false;
        }
    }

    private static JobCore Read(JsonPlace root)
    {
        JsonPlace description = root["description"], model = root["model"];
        return new JobCore
        {
            Description = new JobDescription
            {
                Unit = UnitJsonReader.Unit(description["unit"]),
                Bin = description.Has("bin") ? description.Items("bin", Binned) : [],
                Mix = MixJsonReader.Mix(description["mix"]),
                Printer = PrinterJsonReader.Printer(description["printer"]),
                Needles = PrinterJsonReader.Needles(description, "needles"),
                Site = description.Optional("site", SiteJsonReader.Site),
                Tonight = description.Optional("tonight", MixJsonReader.Tonight),
                Stop = root.Has("resumed_from") ? Stop(root["resumed_from"]) : null,
            },
            Placement = Placement(root["placement"]),
            Lattice = Lattice(root["lattice"]),
            Cells = Cells(root["cells"]),
            Timeline = Timeline(root),
            WindowSeconds = model.Number("window_s"),
            Porosity = model.Number("porosity"),
            ThresholdContent = model.Number("threshold_content"),
            DoseTables = root.Items("dose_tables", File),
            DeliveredTables = root.Has("delivered_tables") ? root.Items("delivered_tables", File) : [],
            Sequence = File(root["sequence"]),
        };
    }

    private static (string Path, string Sha256) File(JsonPlace json) => (json.Text("path"), json.Text("sha256"));

    private static BinnedUnit Binned(JsonPlace json) => new()
    {
        Mark = json.Text("mark"),
        Unit = UnitJsonReader.Unit(json["unit"]),
        Placement = Placement(json["placement"]),
    };

    private static PrintStop Stop(JsonPlace json) => new()
    {
        JobFingerprint = json.Text("job_fingerprint"),
        AfterLayer = json.Whole("after_layer"),
        Station = json.Whole("station"),
        PauseMilliseconds = (long)Math.Round(Math.Clamp(json.Number("pause_s"), 0.0, MostPauseSeconds) * 1000.0),
        NeedlesBefore = PrinterJsonReader.Needles(json, "needles"),
    };

    private static UnitPlacement Placement(JsonPlace json) => new()
    {
        QuarterTurns = json.Whole("quarter_turns"),
        Corner = json.Point("corner_m"),
        UnitBox = json.Size("unit_box_m"),
        ShiftedLayers = json.Flag("shifted_layers"),
    };

    private static Lattice Lattice(JsonPlace json)
    {
        double[] origin = json.Numbers("origin_m", 2), bin = json.Numbers("bin_m", 2);
        return new Lattice
        {
            Columns = json.Whole("columns"),
            Rows = json.Whole("rows"),
            Layers = json.Whole("layers"),
            FirstColumn = json.Whole("first_column"),
            FirstRow = json.Whole("first_row"),
            UnderLayers = json.Whole("under_layers"),
            ShiftedLayers = json.Flag("shifted_layers"),
            PitchMetres = json.Number("pitch_m"),
            LayerMetres = json.Number("layer_m"),
            OriginXMetres = origin[0],
            OriginYMetres = origin[1],
            TipDepthMetres = json.Number("tip_depth_m"),
            BinXMetres = bin[0],
            BinYMetres = bin[1],
        };
    }

    private static CellGrid Cells(JsonPlace json)
    {
        double[] cell = json.Numbers("cell_m", 3);
        Point3 origin = json.Point("origin_m");
        return new CellGrid
        {
            Nx = json.Whole("nx"),
            Ny = json.Whole("ny"),
            Nz = json.Whole("nz"),
            CellsPerPitch = json.Whole("per_pitch"),
            CellsPerLayer = json.Whole("per_layer"),
            Origin = origin,
            CellMetres = cell[0],
            CellHeightMetres = cell[2],
        };
    }

    private static Timeline Timeline(JsonPlace root)
    {
        int number = 0;
        return new Timeline
        {
            Steps = root.Items("timeline", step => new MachineStep
            {
                Number = ++number,
                Layer = step.Whole("layer"),
                Station = step.Whole("station"),
                Action = step.Word(
                    "action",
                    ("spread", MachineAction.Spread), ("move", MachineAction.Move), ("plunge", MachineAction.Plunge), ("dose", MachineAction.Dose),
                    ("hold", MachineAction.Hold), ("withdraw", MachineAction.Withdraw), ("flush", MachineAction.Flush), ("pause", MachineAction.Pause)),
                StartMilliseconds = step.Long("start_ms"),
                Milliseconds = step.Long("ms"),
            }),
        };
    }
}
